import type { Formula } from '../core/formula.ts';

const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));

const ones = (bits: number): number => {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count += 1;
  return count;
};

/**
 * What each player adds when it joins those before it, summed over all n! orders in which n players may come. `values`
 * holds what every group is worth: bit i of its place says that player i is in it. Whole numbers stay whole.
 */
export function gainsOverOrders(values: readonly number[]): number[] {
  const players = Math.round(Math.log2(values.length));
  const orders = Array.from(
    { length: players },
    (_, before) => factorial(before) * factorial(players - before - 1),
  );
  return Array.from({ length: players }, (_, player) => {
    let sum = 0;
    for (let group = 0; group < values.length; group += 1) {
      if ((group >> player) & 1) continue;
      sum += orders[ones(group)]! * (values[group | (1 << player)]! - values[group]!);
    }
    return sum;
  });
}

/**
 * Each player's share of what all are worth together: the mean of what it adds over every order in which they may come.
 * The shares add up to the worth of all less that of none.
 */
export const orderFreeShares: Formula<{ values: readonly number[] }, readonly number[]> = {
  id: 'order-free-shares',
  label: 'Shares of a difference that do not depend on the order',
  equation: 'share = mean over all orders of (worth with the answer − worth before it)',
  tex: '\\varphi_i = \\sum_{S \\subseteq N \\setminus \\{i\\}} \\frac{|S|!\\,(n - |S| - 1)!}{n!}\\,\\bigl(v(S \\cup \\{i\\}) - v(S)\\bigr)',
  inputs: { values: '1' },
  unit: '1',
  source: {
    ref: 'Shapley, A value for n-person games, Contributions to the Theory of Games II, Princeton, 1953',
    at: 'pages 307 to 317',
  },
  valid: {},
  compute: ({ values }) => {
    const orders = factorial(Math.round(Math.log2(values.length)));
    return gainsOverOrders(values).map((gain) => gain / orders);
  },
};

export const sharingFormulas = [orderFreeShares] as const;
