import { nothingDone, type Progress, type ShelfMark } from '../calc/core/progress.ts';
import { $path, changeQuietly } from './stores.ts';

/** Ticks, readings, hours and notes of the job. Each can be changed back where it was made, so they leave no receipt. */

const now = (): Progress => $path.get().progress ?? nothingDone;

function put(progress: Progress): void {
  changeQuietly({ ...$path.get(), progress });
}

/** A group of the progress with one entry set, or taken out. */
function withEntry<Entry>(
  group: Readonly<Record<string, Entry>>,
  id: string,
  entry: Entry | undefined,
): Readonly<Record<string, Entry>> {
  const { [id]: _, ...others } = group;
  return entry === undefined ? others : { ...others, [id]: entry };
}

/** Ticks a task with the day it was done; undefined takes the tick away. */
export const tick = (task: string, day: string | undefined): void =>
  put({ ...now(), done: withEntry(now().done, task, day) });

/** Writes down what was measured, SI, in the order of the places; an empty list takes it away. */
export const setReading = (reading: string, values: readonly number[]): void =>
  put({ ...now(), values: withEntry(now().values, reading, values.length > 0 ? values : undefined) });

/** Hours spent on a task so far; undefined goes back to the estimate. */
export const setSpent = (task: string, hours: number | undefined): void =>
  put({ ...now(), spent: withEntry(now().spent, task, hours) });

/** A note on a task; empty takes it away. */
export const setNote = (task: string, note: string): void =>
  put({ ...now(), notes: withEntry(now().notes, task, note.trim() === '' ? undefined : note) });

/** Ticks one mark of a line of the make-first list, or takes the tick away. */
export function tickShelf(line: string, mark: ShelfMark, on: boolean): void {
  const others = (now().shelf[line] ?? []).filter((each) => each !== mark);
  const marks = on ? [...others, mark] : others;
  put({ ...now(), shelf: withEntry(now().shelf, line, marks.length > 0 ? marks : undefined) });
}
