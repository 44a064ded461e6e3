import type { Calendar } from '../calc/working.ts';

/** A task in the picture of what waits for what. Columns from the left, rows from the top, both from zero. */
export interface Box {
  readonly id: string;
  readonly name: string;
  readonly stage: string;
  readonly column: number;
  readonly row: number;
  readonly critical: boolean;
  readonly done: boolean;
}

/** A line between two boxes; what follows from other lines is left out. */
export interface Line {
  readonly from: string;
  readonly to: string;
  readonly critical: boolean;
}

/** Layout of the dependency picture. */
export interface Dependencies {
  readonly columns: number;
  readonly rows: number;
  readonly boxes: readonly Box[];
  readonly lines: readonly Line[];
  /** The same in words, a line for each task in the order of the work. */
  readonly words: readonly string[];
}

type Tasks = Calendar['tasks'];

/** How many steps lie before each task on its longest chain. */
function columnsOf(tasks: Tasks): Map<string, number> {
  const after = new Map(tasks.map((task) => [task.id, task.after]));
  const known = new Map<string, number>();
  const depth = (id: string): number => {
    const found = known.get(id) ?? Math.max(0, ...after.get(id)!.map((first) => depth(first) + 1));
    known.set(id, found);
    return found;
  };
  for (const { id } of tasks) depth(id);
  return known;
}

/** Prerequisites of each task that no other of its prerequisites already waits for. */
function nearest(tasks: Tasks): Map<string, string[]> {
  const after = new Map(tasks.map((task) => [task.id, task.after]));
  const kept = new Map<string, Set<string>>();
  const ancestors = (id: string): Set<string> => {
    const known = kept.get(id);
    if (known) return known;
    const found = new Set<string>();
    for (const first of after.get(id)!) {
      found.add(first);
      for (const before of ancestors(first)) found.add(before);
    }
    kept.set(id, found);
    return found;
  };
  return new Map(
    tasks.map(({ id, after: firsts }) => [
      id,
      firsts.filter((first) => !firsts.some((other) => other !== first && ancestors(other).has(first))),
    ]),
  );
}

/** Rows within each column, near the mean row of what comes before, so that lines cross little. */
function placed(
  tasks: Tasks,
  columns: ReadonlyMap<string, number>,
  before: ReadonlyMap<string, string[]>,
): Box[] {
  const rows = new Map<string, number>();
  const boxes: Box[] = [];
  const last = Math.max(-1, ...columns.values());
  for (let column = 0; column <= last; column += 1) {
    const pull = (id: string): number => {
      const firsts = before.get(id)!;
      return firsts.reduce((sum, first) => sum + rows.get(first)!, 0) / (firsts.length || 1);
    };
    const here = tasks
      .filter(({ id }) => columns.get(id) === column)
      .map((task, at) => ({ task, at, pull: pull(task.id) }))
      .sort((a, b) => a.pull - b.pull || a.at - b.at);
    for (const [row, { task }] of here.entries()) {
      rows.set(task.id, row);
      const { id, name, stage, critical, done } = task;
      boxes.push({ id, name, stage, column, row, critical, done });
    }
  }
  return boxes;
}

/** Pure numbers for a picture of what waits for what, and its text twin. */
export function dependenciesOf({ tasks }: Pick<Calendar, 'tasks'>): Dependencies {
  const columns = columnsOf(tasks);
  const before = nearest(tasks);
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const boxes = placed(tasks, columns, before);
  const nameOf = (id: string): string => `“${byId.get(id)!.name}”`;
  return {
    columns: Math.max(0, ...boxes.map((box) => box.column + 1)),
    rows: Math.max(0, ...boxes.map((box) => box.row + 1)),
    boxes,
    lines: tasks.flatMap(({ id, critical }) =>
      before
        .get(id)!
        .map((first) => ({ from: first, to: id, critical: critical && byId.get(first)!.critical })),
    ),
    words: tasks.map(({ id, name }) => {
      const firsts = before.get(id)!;
      return firsts.length === 0
        ? `${name}: to begin with.`
        : `${name}: after ${firsts.map(nameOf).join(' and ')}.`;
    }),
  };
}
