import { orderFreeShares } from '../../src/calc/formulas/sharing.ts';
import { type PublishedRow, row } from './row.ts';

/** What every group of so many players is worth; bit i of its place: player i is in it. */
const worthOf = (players: number, worth: (members: readonly number[]) => number): number[] =>
  Array.from({ length: 1 << players }, (_, group) =>
    worth(Array.from({ length: players }, (_, at) => at).filter((at) => (group >> at) & 1)),
  );

/** A runway is as dear as the longest that any of its aircraft needs. */
const runway = (costs: readonly number[]) =>
  worthOf(costs.length, (members) => Math.max(0, ...members.map((at) => costs[at]!)));

/** Pairs that can be made of the gloves of a group; the players before `lefts` hold a left one each. */
const pairsOfGloves = (players: number, lefts: number) =>
  worthOf(players, (members) => {
    const left = members.filter((at) => at < lefts).length;
    return Math.min(left, members.length - left);
  });

interface Game {
  readonly what: string;
  readonly source: PublishedRow['source'];
  readonly values: readonly number[];
  /** By player, as printed. */
  readonly printed: readonly string[];
}

const airport = {
  ref: 'Littlechild and Owen, A simple expression for the Shapley value in a special case, Management Science 20(3), 1973',
};
const library = { ref: 'CoopGame 0.2.2, tests of the Shapley value' };

const games: readonly Game[] = [
  {
    what: 'runway for four aircraft that need 8, 11, 13 and 18',
    source: { ...airport, at: 'as worked in the encyclopaedia article “Airport problem”, table of costs' },
    values: runway([8, 11, 13, 18]),
    printed: ['2', '3', '4', '9'],
  },
  {
    what: 'runway for three airlines that need 1,500, 2,200 and 3,000',
    source: { ...airport, at: 'as worked at thoughtfulexaminations.com, case 1' },
    values: runway([1500, 2200, 3000]),
    printed: ['500', '850', '1650'],
  },
  {
    what: 'three players whose groups are worth 2, 4, 5, 18, 14, 9 and 24',
    source: { ...library, at: 'check 15.1' },
    values: [0, 2, 4, 18, 5, 14, 9, 24],
    printed: ['9.5', '8.0', '6.5'],
  },
  {
    what: 'two left gloves and a right one',
    source: {
      ref: 'Wiese, Kooperative Spieltheorie, page 65',
      at: 'as CoopGame 0.2.2 quotes it, 1/6, 1/6, 2/3',
    },
    values: pairsOfGloves(3, 2),
    printed: ['0.1666667', '0.1666667', '0.6666667'],
  },
];

export const sharingRows: readonly PublishedRow[] = games.flatMap(({ what, source, values, printed }) =>
  printed.map((figure, player) =>
    row(orderFreeShares, {
      what: `${what}: share of number ${player + 1}`,
      source,
      provenance: 'seen',
      inputs: { values },
      as: (shares) => shares[player]!,
      printed: figure,
      unit: '1',
    }),
  ),
);
