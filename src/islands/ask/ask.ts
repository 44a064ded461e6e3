import type { Path } from '../../calc/core/path.ts';
import type { AnswerName, Answers, DetailOf } from './answers.ts';
import { fetched } from './fetched.ts';

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

async function here<Name extends AnswerName>(
  name: Name,
  path: Path,
  detail: DetailOf<Name>,
): Promise<Answers[Name]> {
  return (await fetched(import('./answers.ts'))).answerTo(name, path, detail);
}

/** The page no longer wants it: it is not begun, and its promise stays open for nobody. */
function withdraw(mine: number): void {
  if (waiting.delete(mine)) worker?.postMessage({ withdrawn: mine });
}

/**
 * Asks for an answer that takes a while; where no worker can be had it is worked out on the page. Once `unwanted` is
 * aborted the answer never comes.
 */
export async function ask<Name extends AnswerName>(
  name: Name,
  path: Path,
  detail: DetailOf<Name>,
  unwanted?: AbortSignal,
): Promise<Answers[Name]> {
  const beside = open();
  if (!beside) return here(name, path, detail);
  number += 1;
  const mine = number;
  const answer = new Promise<Answers[Name]>((resolve, reject) => {
    waiting.set(mine, { resolve, reject });
    beside.postMessage({ number: mine, name, path, detail });
  });
  unwanted?.addEventListener('abort', () => withdraw(mine));
  return answer.catch((fault: unknown) => {
    if (refused) return here(name, path, detail);
    throw fault;
  });
}
