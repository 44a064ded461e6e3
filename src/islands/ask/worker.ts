import type { Path } from '../../calc/core/path.ts';
import { type AnswerName, answerTo } from './answers.ts';

/** Works answers out beside the page, so that the page stays quick under the finger. */

interface Question {
  readonly number: number;
  readonly name: AnswerName;
  readonly path: Path;
}

self.addEventListener('message', ({ data }: MessageEvent<Question>) => {
  const { number, name, path } = data;
  try {
    self.postMessage({ number, answer: answerTo(name, path) });
  } catch (fault) {
    self.postMessage({ number, fault: fault instanceof Error ? fault.message : String(fault) });
  }
});
