import { risks } from '../trade.ts';
import type { Resolved, Strike, Totals } from './builds.ts';
import type { Term } from './columns.ts';
import type { Edition } from './edition.ts';
import { mean } from './spread.ts';

/** Why one build costs more than average prices with nothing going wrong. Whole cents; below zero: it made it cheaper. */
export interface Reason {
  readonly kind: 'risk' | 'prices' | 'answers' | 'landed' | 'credits' | 'allowance';
  /** Risk id, where it is one. */
  readonly id?: string;
  readonly say: string;
  readonly cents: number;
}

/** Means that a build is held against, whole cents; they add up to the base. */
export interface Base {
  readonly goods: number;
  readonly landed: number;
  readonly credits: number;
}

export const baseOf = ({ goods, local, landed, credits }: Totals): Base => ({
  goods: Math.round(mean(goods) + mean(local)),
  landed: Math.round(mean(landed)),
  credits: Math.round(mean(credits)),
});

const percent = (share: number): string => `${Math.abs(Math.round(share * 100))} %`;

const meanOf = (terms: readonly Term[]): number =>
  terms.reduce((sum, { column, times }) => sum + times * mean(column), 0);

/** Goods of a way at the mean of every price, cents. */
const goodsOf = ({ goods, local, fixed }: Resolved): number =>
  Math.round(meanOf(goods) + meanOf(local) + fixed.goods + fixed.local);

/** What a risk costs in a build, cents; nothing where it does not strike or a spare pays for it. */
function costOf({ at, builds, spared }: Strike, edition: Edition, build: number): number {
  const { rank, money } = edition.risks[at]!;
  const place = rank[build]!;
  return place < builds && !spared ? money[place]! : 0;
}

function troubles(totals: Totals, way: Resolved, edition: Edition, build: number): Reason[] {
  if (way.allowance !== undefined) {
    const say = `the allowance for trouble, ${percent(way.allowance)} of the goods`;
    return [{ kind: 'allowance', say, cents: totals.troubleMoney[build]! }];
  }
  return way.risks.flatMap((strike): Reason[] => {
    const cents = costOf(strike, edition, build);
    const { id, name } = risks[strike.at]!;
    return cents === 0 ? [] : [{ kind: 'risk', id, say: name, cents }];
  });
}

/** Deviations of goods and of what comes on top of them, whole cents: dearer goods carry more freight and tax. */
function goodsReasons(goods: number, landed: number, usual: number, base: Base): Reason[] {
  const share = base.goods > 0 ? base.landed / base.goods : 0;
  const onTop = (cents: number): number => cents + Math.round(cents * share);
  const answers = onTop(usual - base.goods);
  const dear = usual > 0 ? (goods - usual) / usual : 0;
  const rate = goods > 0 ? landed / goods : 0;
  const atUsualShare = Math.round(goods * share);
  return [
    {
      kind: 'prices',
      say: `shop prices ${percent(dear)} ${dear < 0 ? 'below' : 'above'} the usual, with the freight and tax on them`,
      cents: goods + atUsualShare - base.goods - base.landed - answers,
    },
    {
      kind: 'answers',
      say: 'other answers to what is still open ask for other parts',
      cents: answers,
    },
    {
      kind: 'landed',
      say: `freight, tax and duty at ${percent(rate)} of the goods`,
      cents: landed - atUsualShare,
    },
  ];
}

/** Every reason of one build; together they are all that it costs above the base. */
export function reasonsOf(
  totals: Totals,
  way: Resolved,
  edition: Edition,
  base: Base,
  build: number,
): Reason[] {
  const goods = totals.goods[build]! + totals.local[build]!;
  const credits = totals.credits[build]! - base.credits;
  return [
    ...troubles(totals, way, edition, build),
    ...goodsReasons(goods, totals.landed[build]!, goodsOf(way), base),
    {
      kind: 'credits',
      say: `old parts sell for ${credits < 0 ? 'more' : 'less'} than usual`,
      cents: credits,
    },
  ];
}
