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
let busy = false;

async function reply({ number, name, path, detail }: Question): Promise<void> {
  try {
    self.postMessage({ number, answer: await answerTo(name, path, detail) });
  } catch (fault) {
    self.postMessage({ number, fault: fault instanceof Error ? fault.message : String(fault) });
  }
}

/** One after another; between two of them the page may withdraw what it no longer wants. */
async function answerAll(): Promise<void> {
  if (busy) return;
  busy = true;
  for (let next = queue[0]; next; next = queue[0]) {
    queue = queue.slice(1);
    await reply(next);
    await new Promise((heard) => setTimeout(heard));
  }
  busy = false;
}

self.addEventListener('message', ({ data }: MessageEvent<Question | Withdrawn>) => {
  if ('withdrawn' in data) {
    queue = queue.filter(({ number }) => number !== data.withdrawn);
    return;
  }
  // The report goes first: every screen waits for it.
  queue = data.name === 'report' ? [data, ...queue] : [...queue, data];
  setTimeout(answerAll);
});
