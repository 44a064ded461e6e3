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
  const sum: Sum = { goods: column(), plain: column(), money: column(), hours: column(), out: column() };
  const of = (kind: Term['kind'], out?: boolean) =>
    counted
      .filter(
        ({ term, times }) => times !== 0 && term.kind === kind && (out === undefined || term.out === out),
      )
      .map(({ term, times }) => ({ column: term.column!, times }));
  addTerms(sum.goods, of('goods'));
  addTerms(sum.plain, of('plain'));
  addTerms(sum.hours, of('work'));
  addTerms(sum.out, of('work', true));
  for (const { term, times } of counted)
    if (term.kind === 'risk' && times > 0) strike(edition, term, times, sum);
  for (let build = 0; build < BUILDS; build += 1) {
    sum.money[build] = sum.goods[build]! * (1 + landed[build]!) + sum.plain[build]!;
  }
  return sum;
}
