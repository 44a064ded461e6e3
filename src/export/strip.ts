import type { Calendar } from '../calc/working.ts';

/** A bar on the strip; both ends as shares of its length, 0 to 1. */
export interface Bar {
  readonly id: string;
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** Typical weeks, for words. */
  readonly weeks: readonly [from: number, to: number];
}

export interface StripRow extends Bar {
  /** End of the row in a quick and a slow build, shares of the length. */
  readonly early: number;
  readonly late: number;
  readonly tasks: readonly (Bar & { readonly critical: boolean; readonly done: boolean })[];
}

/** Layout of the plan as a strip of weeks: rows of stages with their tasks, parcels on their way, the lathe out of use. */
export interface Strip {
  /** Weeks that the strip is long: the slow end of the last stage, rounded up. */
  readonly length: number;
  /** Marks along the edge, in weeks, at a round distance; never more than twelve. */
  readonly marks: readonly { readonly week: number; readonly at: number }[];
  readonly rows: readonly StripRow[];
  /** Parcels that work may wait for, from order to door, the longest on the way first. */
  readonly parcels: readonly Bar[];
  readonly out: readonly Bar[];
  /** The same in words, a line for each row. */
  readonly words: readonly string[];
}

const MOST_MARKS = 12;
const roundSteps = [1, 2, 4, 5, 10, 13, 26, 52, 104] as const;

const tidy = (share: number): number => Number(Math.min(1, Math.max(0, share)).toFixed(6));

function marksOf(length: number): Strip['marks'] {
  const step = roundSteps.find((weeks) => length / weeks <= MOST_MARKS - 1) ?? 208;
  return Array.from({ length: Math.floor(length / step) + 1 }, (_, at) => ({
    week: at * step,
    at: tidy((at * step) / length),
  }));
}

const week = (weeks: number): string => weeks.toFixed(0);
const fromTo = ({ weeks: [from, to] }: Bar): string => `week ${week(from)} to ${week(to)}`;

/** How many parcels the strip shows; the list of deliveries has them all. */
const PARCELS = 8;

function parcelsOf(
  calendar: Calendar,
  bar: (id: string, name: string, from: number, to: number) => Bar,
): Bar[] {
  return [...calendar.deliveries]
    .sort(
      (a, b) => b.arrives.p50 - b.ordered.p50 - (a.arrives.p50 - a.ordered.p50) || (a.part < b.part ? -1 : 1),
    )
    .slice(0, PARCELS)
    .map(({ part, name, ordered, arrives }) => bar(part, name, ordered.p50, arrives.p50));
}

/** Pure numbers for a drawing of the calendar, and its text twin. An empty plan is a strip of one week. */
export function stripOf(calendar: Calendar): Strip {
  const length = Math.max(1, Math.ceil(Math.max(0, ...calendar.stages.map((stage) => stage.finish.p90))));
  const bar = (id: string, name: string, from: number, to: number): Bar => ({
    id,
    name,
    from: tidy(from / length),
    to: tidy(to / length),
    weeks: [from, to],
  });
  const rows = calendar.stages.map(
    ({ id, name, start, finish }): StripRow => ({
      ...bar(id, name, start.p50, finish.p50),
      early: tidy(finish.p10 / length),
      late: tidy(finish.p90 / length),
      tasks: calendar.tasks
        .filter((task) => task.stage === id)
        .map((task) => ({
          ...bar(task.id, task.name, task.start.p50, task.finish.p50),
          critical: task.critical,
          done: task.done,
        })),
    }),
  );
  const out = calendar.out.map(({ from, to }, at) => bar(`out-${at + 1}`, 'Lathe out of use', from, to));
  const parcels = parcelsOf(calendar, bar);
  return { length, marks: marksOf(length), rows, parcels, out, words: wordsOf(rows, parcels, out) };
}

const said = (row: StripRow): string =>
  row.tasks.every(({ done }) => done) ? `${row.name}: done.` : `${row.name}: ${fromTo(row)}, typically.`;

const wordsOf = (rows: readonly StripRow[], parcels: readonly Bar[], out: readonly Bar[]): string[] => [
  ...rows.map(said),
  ...parcels.map((parcel) => `On its way: ${parcel.name}, ${fromTo(parcel)}.`),
  ...out.map((band) => `The lathe cannot be used from ${fromTo(band)}.`),
];
