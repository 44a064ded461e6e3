import type { State } from '../choices/state.ts';
import type { Path } from '../core/path.ts';
import type { Progress } from '../core/progress.ts';
import type { PlannedTask } from '../report.ts';
import type { Network } from './network.ts';
import { type ShelfLine, shelfIsGate, shelfOf } from './shelf.ts';

/** done: ticked. next: what to do now. ready: may be done as well. blocked: something comes first. */
export type Standing = 'done' | 'next' | 'ready' | 'blocked';

/** Where a task stands, and what it waits for. Plain data. */
export interface TaskStand {
  readonly id: string;
  readonly standing: Standing;
  /** Tasks that come first and are not ticked. */
  readonly tasks: readonly string[];
  /** Parts that have not come, where purchases are written down. */
  readonly parts: readonly string[];
  /** Lines of the make-first list that are still open, for a task that takes an only lathe apart. */
  readonly shelf: readonly string[];
}

/** Parts are waited for only once the owner writes purchases down; till then nobody knows what has come. */
const tracksPurchases = (path: Path): boolean => Object.keys(path.purchases ?? {}).length > 0;

function missingParts(network: Network, at: number, path: Path): string[] {
  if (!tracksPurchases(path)) return [];
  return network.waitsFor[at]!.map((number) => network.deliveries[number]!.part);
}

/** Open lines whose task leads to this one: the part is ticked as made, but not measured, spared or photographed. */
function openLines(
  task: PlannedTask,
  before: ReadonlyMap<string, readonly string[]>,
  shelf: readonly ShelfLine[],
): string[] {
  if (task.lathe !== 'out') return [];
  const first = new Set<string>();
  const waiting = [...task.after];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (first.has(id)) continue;
    first.add(id);
    waiting.push(...(before.get(id) ?? []));
  }
  return shelf.filter((line) => line.open.length > 0 && first.has(line.task)).map((line) => line.id);
}

/** Every task of the plan in the order in which one person works it. */
export function standsOf(network: Network, state: State, path: Path, progress: Progress): TaskStand[] {
  const { tasks } = network;
  const before = new Map(tasks.map((task) => [task.id, task.after]));
  const shelf = shelfIsGate(state) ? shelfOf(state, new Set(before.keys()), progress) : [];
  const isDone = (id: string): boolean => id in progress.done;
  let nextIsTaken = false;
  return tasks.map((task, at) => {
    if (isDone(task.id)) return { id: task.id, standing: 'done', tasks: [], parts: [], shelf: [] };
    const waits = {
      tasks: task.after.filter((id) => !isDone(id)),
      parts: missingParts(network, at, path),
      shelf: openLines(task, before, shelf),
    };
    const free = waits.tasks.length === 0 && waits.parts.length === 0 && waits.shelf.length === 0;
    const standing = !free ? 'blocked' : nextIsTaken ? 'ready' : 'next';
    nextIsTaken ||= free;
    return { id: task.id, standing, ...waits };
  });
}
