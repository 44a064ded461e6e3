import type { Compared } from '../../calc/core/compared.ts';
import type { Path } from '../../calc/core/path.ts';
import { sentPrices } from '../../link/prices.ts';
import { sentProgress } from '../../link/progress.ts';
import { counted, listed } from '../shared/format.ts';

/** What a link holds, in words. */

const some = (count: number, one: string, many?: string): string[] =>
  count > 0 ? [counted(count, one, many)] : [];

const size = (group: object | undefined): number => Object.keys(group ?? {}).length;

/** "64 answers, 2 of them “not sure yet”, 9 figures of the lathe and 12 parts in the drawer". */
export function saidAnswers({ answers, facts, owned }: Path): string {
  const unsure = Object.values(answers).filter((options) => options.length === 0).length;
  const all = size(answers);
  return listed([
    ...(all === 0 ? ['no answers yet'] : some(all, 'answer')),
    ...(unsure > 0 ? [`${unsure} of them “not sure yet”`] : []),
    ...some(size(facts), 'figure of the lathe', 'figures of the lathe'),
    ...some(owned.length, 'part in the drawer', 'parts in the drawer'),
  ]);
}

/** What stands beside the first path of a comparison: "2 more paths and 1 alternative"; empty where there is nothing. */
export const saidOthers = (others: readonly Compared[]): string =>
  listed([
    ...some(others.filter(({ kind }) => kind === 'path').length, 'more path'),
    ...some(others.filter(({ kind }) => kind === 'alternative').length, 'alternative'),
  ]);

/** What the ticks, readings and hours of a path come to; empty where nothing is done yet. */
export function progressHeld({ progress }: Path): string[] {
  if (!progress) return [];
  const { done, values, spent, shelf } = sentProgress(progress);
  return [
    ...some(size(done), 'tick with its day', 'ticks with their days'),
    ...some(size(values), 'reading'),
    ...some(size(spent), 'task with the hours it took', 'tasks with the hours they took'),
    ...some(size(shelf), 'line of the make-first list', 'lines of the make-first list'),
  ];
}

/** What the prices of a path come to, as the link writes them; empty where nothing is typed yet. */
export function pricesHeld(path: Path): string[] {
  const { purchases = {}, sellers = {}, currency, chances, allowance, start, families } = sentPrices(path);
  const priced = Object.values(purchases).filter(({ price }) => price !== undefined).length;
  const shops = new Set([
    ...Object.keys(sellers),
    ...Object.values(purchases).flatMap(({ seller }) => seller ?? []),
  ]);
  return [
    ...some(size(purchases), 'line of the buy list', 'lines of the buy list').map(
      (lines) => `${lines} with state, quantity and day, ${priced} with a price`,
    ),
    ...some(shops.size, 'shop', 'shops').map(
      (all) => `carriage, tax and duty of ${all}, called shop-a and so on`,
    ),
    ...(currency ? [`your currency, ${currency.code}, and its rate`] : []),
    ...some(size(chances), 'own chance of trouble', 'own chances of trouble'),
    ...(allowance === undefined ? [] : ['your flat allowance for trouble']),
    ...(start ? ['the day the work starts'] : []),
    ...some(size(families), 'kind of part', 'kinds of part').map(
      (kinds) => `pieces and times of ${kinds} that you make again and again`,
    ),
  ];
}

/** The paths of a link: the first, and those beside it. */
export const pathsIn = (first: Path, others: readonly Compared[]): Path[] => [
  first,
  ...others.flatMap((each) => (each.kind === 'path' ? [each.path] : [])),
];
