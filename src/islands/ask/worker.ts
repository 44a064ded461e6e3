import type { Path } from '../../calc/core/path.ts';
import { type AnswerName, answerTo, type DetailOf } from './answers.ts';

/**
 * Works answers out beside the page, one after another, so that the page stays quick under the finger. What the page no
 * longer wants is dropped before it is begun.
 */

interface Question {
  readonly number: number;
  readonly name: AnswerName;
  readonly path: Path;
  readonly detail: DetailOf<AnswerName>;
}

interface Withdrawn {
  readonly withdrawn: number;
}

let queue: readonly Question[] = [];

function answerNext(): void {
  const [first, ...others] = queue;
  queue = others;
  if (!first) return;
  const { number, name, path, detail } = first;
  try {
    self.postMessage({ number, answer: answerTo(name, path, detail) });
  } catch (fault) {
    self.postMessage({ number, fault: fault instanceof Error ? fault.message : String(fault) });
  }
}

self.addEventListener('message', ({ data }: MessageEvent<Question | Withdrawn>) => {
  if ('withdrawn' in data) {
    queue = queue.filter(({ number }) => number !== data.withdrawn);
    return;
  }
  queue = [...queue, data];
  setTimeout(answerNext);
});
