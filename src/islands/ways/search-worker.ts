import type { SearchProgress } from '../../calc/choosing.ts';
import { type Asked, type JobName, stepsOf } from './work.ts';

/** Searches beside the page. To stop, the page ends this worker. */

interface Job {
  readonly number: number;
  readonly name: JobName;
  readonly asked: Asked[JobName];
}

const OFTEN = 100;

/** Says how far it has come, at most ten times a second, and at once when there is a first way. */
function reporter(number: number): (progress: SearchProgress) => void {
  let last = 0;
  let hasWay = false;
  return (progress) => {
    const isFirst = progress.cheapest !== undefined && !hasWay;
    if (!isFirst && performance.now() - last < OFTEN) return;
    last = performance.now();
    hasWay ||= isFirst;
    self.postMessage({ number, progress });
  };
}

self.addEventListener('message', ({ data }: MessageEvent<Job>) => {
  const { number, name, asked } = data;
  const report = reporter(number);
  try {
    const going = stepsOf(name, asked as never);
    let step = going.next();
    for (; !step.done; step = going.next()) report(step.value);
    self.postMessage({ number, told: step.value });
  } catch (fault) {
    self.postMessage({ number, fault: fault instanceof Error ? fault.message : String(fault) });
  }
});
