import type { Path } from '../../calc/core/path.ts';
import type { AnswerName, Answers } from './answers.ts';

interface Reply {
  readonly number: number;
  readonly answer?: unknown;
  readonly fault?: string;
}

interface Waiting {
  readonly resolve: (answer: never) => void;
  readonly reject: (fault: Error) => void;
}

const waiting = new Map<number, Waiting>();
let worker: Worker | undefined;
let refused = false;
let number = 0;

function settle({ data }: MessageEvent<Reply>): void {
  const asked = waiting.get(data.number);
  waiting.delete(data.number);
  if (data.fault === undefined) asked?.resolve(data.answer as never);
  else asked?.reject(new Error(data.fault));
}

function open(): Worker | undefined {
  if (worker || refused) return worker;
  try {
    worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', settle);
    worker.addEventListener('error', () => {
      refused = true;
      worker = undefined;
      for (const { reject } of waiting.values()) reject(new Error('The worker could not be started.'));
      waiting.clear();
    });
  } catch {
    refused = true;
  }
  return worker;
}

const here = async <Name extends AnswerName>(name: Name, path: Path): Promise<Answers[Name]> =>
  (await import('./answers.ts')).answerTo(name, path);

/** Asks for an answer that takes a while; where no worker can be had it is worked out on the page. */
export async function ask<Name extends AnswerName>(name: Name, path: Path): Promise<Answers[Name]> {
  const beside = open();
  if (!beside) return here(name, path);
  number += 1;
  const mine = number;
  const answer = new Promise<Answers[Name]>((resolve, reject) => {
    waiting.set(mine, { resolve, reject });
    beside.postMessage({ number: mine, name, path });
  });
  return answer.catch((fault: unknown) => {
    if (refused) return here(name, path);
    throw fault;
  });
}
