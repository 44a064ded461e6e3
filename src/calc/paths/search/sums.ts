import { addTerms, type Term as Times } from '../../cost/columns.ts';
import type { Column, Edition } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import type { Term } from './terms.ts';

/**
 * What some terms add up to in every build: cents with freight, tax and duty, not rounded, and hundredths of an hour, in
 * all and out of use.
 */
export interface Sum {
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
const goods = column();

function strike(
  edition: Edition,
  { term: { risk }, times }: Counted,
  kind: 'money' | 'hours',
  to: Column,
): void {
  const { order, [kind]: size } = edition.risks[risk]!;
  for (let place = 0; place < times; place += 1) to[order[place]!]! += size[place]!;
}

const columnsOf = (counted: readonly Counted[], kind: Term['kind'], out?: boolean): Times[] =>
  counted
    .filter(({ term }) => term.kind === kind && (out === undefined || term.out === out))
    .map(({ term, times }) => ({ column: term.column!, times }));

/** Adds up counted terms; `landed` is freight, tax and duty as a share of the goods. Hours out of use only when wanted. */
export function sumOf(edition: Edition, landed: Column, counted: readonly Counted[], withOut: boolean): Sum {
  const any = (...kinds: Term['kind'][]): boolean => counted.some(({ term }) => kinds.includes(term.kind));
  const isOut = withOut && counted.some(({ term }) => term.out);
  const sum: Sum = {
    money: any('goods', 'plain', 'risk-money') ? column() : NONE,
    hours: any('work', 'risk-hours') ? column() : NONE,
    out: isOut ? column() : NONE,
  };
  if (any('plain')) addTerms(sum.money, columnsOf(counted, 'plain'));
  if (any('goods')) addGoods(sum.money, columnsOf(counted, 'goods'), landed);
  if (any('work')) addTerms(sum.hours, columnsOf(counted, 'work'));
  if (isOut) addTerms(sum.out, columnsOf(counted, 'work', true));
  for (const each of counted) {
    if (each.term.kind === 'risk-money') strike(edition, each, 'money', sum.money);
    if (each.term.kind === 'risk-hours') strike(edition, each, 'hours', sum.hours);
    if (each.term.kind === 'risk-hours' && each.term.out && isOut) strike(edition, each, 'hours', sum.out);
  }
  return sum;
}

function addGoods(money: Column, terms: readonly Times[], landed: Column): void {
  goods.fill(0);
  addTerms(goods, terms);
  for (let build = 0; build < BUILDS; build += 1) money[build]! += goods[build]! * (1 + landed[build]!);
}
