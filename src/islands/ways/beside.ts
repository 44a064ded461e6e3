import { atom } from 'nanostores';
import type { SearchProgress } from '../../calc/choosing.ts';
import type { Asked, JobName, Told } from './work.ts';

/** False where this browser gives no worker, so that the search runs on the page. */
export const $hasWorker = atom(true);

interface Listener {
  readonly progress: (progress: SearchProgress) => void;
  readonly told: (told: never) => void;
  readonly failed: (fault: Error) => void;
}

interface Reply {
  readonly number: number;
  readonly progress?: SearchProgress;
  readonly told?: unknown;
  readonly fault?: string;
}

interface Job extends Listener {
  readonly name: JobName;
  readonly asked: Asked[JobName];
}

const jobs = new Map<number, Job>();
let worker: Worker | undefined;
let number = 0;

function hear({ data }: MessageEvent<Reply>): void {
  const job = jobs.get(data.number);
  if (!job) return;
  if (data.progress) {
    job.progress(data.progress);
    return;
  }
  jobs.delete(data.number);
  if (data.fault === undefined) job.told(data.told as never);
  else job.failed(new Error(data.fault));
}

/** The worker could not be had: what was asked of it is done on the page instead. */
function giveUp(): void {
  worker = undefined;
  $hasWorker.set(false);
  for (const [key, job] of jobs) workHere(key, job);
}

function open(): Worker | undefined {
  if (worker || !$hasWorker.get()) return worker;
  try {
    worker = new Worker(new URL('./search-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', hear);
    worker.addEventListener('error', giveUp);
  } catch {
    giveUp();
  }
  return worker;
}

const SLICE = 12;

/** Does a job on the page in slices, so that the page still answers between them. */
async function workHere(key: number, job: Job): Promise<void> {
  try {
    const { stepsOf } = await import('./work.ts');
    const going = stepsOf(job.name, job.asked as never);
    const slice = (): void => {
      const until = performance.now() + SLICE;
      while (jobs.has(key)) {
        const step = going.next();
        if (step.done) {
          jobs.delete(key);
          job.told(step.value as never);
          return;
        }
        if (performance.now() < until) continue;
        job.progress(step.value);
        window.setTimeout(() => guarded(slice, key, job), 0);
        return;
      }
    };
    guarded(slice, key, job);
  } catch (fault) {
    fail(fault, key, job);
  }
}

function guarded(slice: () => void, key: number, job: Job): void {
  try {
    slice();
  } catch (fault) {
    fail(fault, key, job);
  }
}

function fail(fault: unknown, key: number, job: Job): void {
  jobs.delete(key);
  job.failed(fault instanceof Error ? fault : new Error(String(fault)));
}

/** Ends the worker with whatever it is at; other jobs that waited for it are asked of a new one. */
function end(key: number): void {
  jobs.delete(key);
  if (!worker) return;
  worker.terminate();
  worker = undefined;
  for (const [waiting, { name, asked }] of jobs) open()?.postMessage({ number: waiting, name, asked });
}

/** Sets a job going; what it gives back stops it, or leaves a short one to end unheard. */
export function setGoing<Name extends JobName>(
  name: Name,
  asked: Asked[Name],
  listener: {
    readonly progress?: (progress: SearchProgress) => void;
    readonly told: (told: Told[Name]) => void;
    readonly failed: (fault: Error) => void;
  },
): () => void {
  number += 1;
  const key = number;
  const job: Job = { progress: () => {}, ...listener, name, asked } as Job;
  const beside = open();
  jobs.set(key, job);
  if (beside) beside.postMessage({ number: key, name, asked });
  else void workHere(key, job);
  return () => {
    if (name === 'carried') jobs.delete(key);
    else if (jobs.has(key)) end(key);
  };
}
