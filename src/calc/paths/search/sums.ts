import { addTerms } from '../../cost/columns.ts';
import type { Column, Edition } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import type { Term } from './terms.ts';

/** What some terms add up to in every build: cents of goods and of all else, hundredths of an hour, those out of use. */
export interface Sum {
  readonly goods: Column;
  readonly plain: Column;
  /** Goods with freight, tax and duty, and all else; not rounded. */
  readonly money: Column;
  readonly hours: Column;
  readonly out: Column;
}

export interface Counted {
  readonly term: Term;
  readonly times: number;
}

const column = (): Column => new Float64Array(BUILDS);
/** Shared by every sum that adds nothing of a kind, so that nothing is worked out for it. */
const NONE: Column = column();

const strike = (edition: Edition, { risk, out }: Term, builds: number, sum: Sum): void => {
  const { order, money, hours } = edition.risks[risk]!;
  for (let place = 0; place < builds; place += 1) {
    const build = order[place]!;
    sum.plain[build]! += money[place]!;
    sum.hours[build]! += hours[place]!;
    if (out) sum.out[build]! += hours[place]!;
  }
};

/** Adds up counted terms; `landed` is freight, tax and duty as a share of the goods. */
export function sumOf(edition: Edition, landed: Column, counted: readonly Counted[]): Sum {
  const of = (kind: Term['kind'], out?: boolean) =>
    counted
      .filter(({ term }) => term.kind === kind && (out === undefined || term.out === out))
      .map(({ term, times }) => ({ column: term.column!, times }));
  const struck = counted.filter(({ term, times }) => term.kind === 'risk' && times > 0);
  const isOut = counted.some(({ term }) => term.out);
  const any = (...kinds: Term['kind'][]): boolean => counted.some(({ term }) => kinds.includes(term.kind));
  const sum: Sum = {
    goods: any('goods') ? column() : NONE,
    plain: any('plain', 'risk') ? column() : NONE,
    money: any('goods', 'plain', 'risk') ? column() : NONE,
    hours: any('work', 'risk') ? column() : NONE,
    out: isOut ? column() : NONE,
  };
  if (sum.goods !== NONE) addTerms(sum.goods, of('goods'));
  if (sum.plain !== NONE) addTerms(sum.plain, of('plain'));
  if (sum.hours !== NONE) addTerms(sum.hours, of('work'));
  if (isOut) addTerms(sum.out, of('work', true));
  for (const { term, times } of struck) strike(edition, term, times, sum);
  if (sum.money !== NONE) land(sum, landed);
  return sum;
}

function land({ money, goods, plain }: Sum, landed: Column): void {
  for (let build = 0; build < BUILDS; build += 1) {
    money[build] = goods[build]! * (1 + landed[build]!) + plain[build]!;
  }
}
