import { compile, type State, type Test } from '../choices/state.ts';
import type { Task } from '../core/task.ts';
import { rules, taskIndex, tasks } from '../trade.ts';

interface Edges {
  readonly always: readonly string[];
  readonly sometimes: readonly { readonly when: Test; readonly after: readonly string[] }[];
}

/** What gates and orders in the rules ask of a task. */
function edgesFromRules(task: Task): Edges['sometimes'] {
  return rules.flatMap((rule) =>
    rule.then.flatMap((effect) => {
      if (effect.kind === 'gate' && effect.before.includes(task.id)) {
        return [{ when: compile(rule.when), after: effect.of }];
      }
      const place = effect.kind === 'orders' ? effect.tasks.indexOf(task.id) : -1;
      if (effect.kind !== 'orders' || place < 1) return [];
      return [{ when: compile(rule.when), after: [effect.tasks[place - 1]!] }];
    }),
  );
}

const edges: readonly Edges[] = tasks.map((task) => ({
  always: task.after,
  sometimes: [
    ...(task.afterWhen ?? []).map(({ when, after }) => ({ when: compile(when), after })),
    ...edgesFromRules(task),
  ],
}));

function position(id: string): number {
  const at = taskIndex.get(id);
  if (at === undefined) throw new Error(`no task has the id ${id}`);
  return at;
}

/** Ids that come first for a task on this path, in the plan or not. */
const asksFor = (at: number, state: State): string[] => [
  ...edges[at]!.always,
  ...edges[at]!.sometimes.filter(({ when }) => when(state)).flatMap(({ after }) => after),
];

/**
 * Prerequisites of each task of the plan, by id. A prerequisite that is not in the plan is stepped over to its own.
 */
export function prerequisites(inPlan: ReadonlySet<string>, state: State): Map<string, string[]> {
  const stepped = new Map<string, Set<string>>();
  const through = (id: string, seen: ReadonlySet<string>): Set<string> => {
    if (inPlan.has(id)) return new Set([id]);
    const known = stepped.get(id);
    if (known || seen.has(id)) return known ?? new Set();
    const within = new Set([...seen, id]);
    const found = new Set(asksFor(position(id), state).flatMap((before) => [...through(before, within)]));
    stepped.set(id, found);
    return found;
  };
  return new Map(
    [...inPlan].map((id) => [
      id,
      [
        ...new Set(asksFor(position(id), state).flatMap((before) => [...through(before, new Set([id]))])),
      ].filter((before) => before !== id),
    ]),
  );
}

/**
 * An order in which every task follows its prerequisites; among those that are free the trade's own order decides.
 * Throws where the prerequisites run in a circle, an author's mistake that a test looks for on thousands of paths.
 */
export function orderOf(before: ReadonlyMap<string, readonly string[]>): string[] {
  const ids = [...before.keys()].sort((a, b) => rank(a) - rank(b));
  const waitsFor = ids.map((id) => new Set(before.get(id)));
  const left = Int32Array.from(waitsFor, (first) => first.size);
  const ordered: string[] = [];
  for (let next = left.indexOf(0); next >= 0; next = left.indexOf(0)) {
    const id = ids[next]!;
    ordered.push(id);
    left[next] = -1;
    for (let at = 0; at < ids.length; at += 1) if (waitsFor[at]!.has(id)) left[at]! -= 1;
  }
  if (ordered.length === ids.length) return ordered;
  const waiting = ids.filter((_, at) => left[at]! > 0);
  throw new Error(`tasks wait for each other: ${waiting.join(', ')}`);
}

export const stageOrder = [
  'decide',
  'design-and-order',
  'make-first',
  'bench-electrics',
  'carriage-stage',
  'cross-stage',
  'spindle-stage',
  'machine-wiring',
  'commission',
  'prove',
] as const;

export const stageNumber = (task: Task): number => stageOrder.indexOf(task.stage);

const ranks = tasks.map((task, at) => stageNumber(task) * 1000 + at);

const rank = (id: string): number => ranks[position(id)]!;
