import { compile, type State } from '../choices/state.ts';
import { pertMean } from '../core/band.ts';
import type { Condition } from '../core/condition.ts';
import type { Risk } from '../core/risk.ts';
import { risks } from '../trade.ts';

/** Chances are judgement: never below one in two hundred where the cause exists, never above nine in ten. */
const FLOOR = 0.005;
const CAP = 0.9;

const compiled = risks.map((risk) => ({
  base: pertMean(risk.chance),
  when: compile(risk.when),
  levers: risk.levers.map(({ when, by, why }) => ({ when: compile(when), by, why })),
}));

/** Chance of a risk on this path, zero where its cause does not exist: the mean of the band times what raises or lowers it. */
export function chanceOf(at: number, state: State): number {
  const { base, when, levers } = compiled[at]!;
  if (!when(state)) return 0;
  let chance = base;
  for (let each = 0; each < levers.length; each += 1) {
    if (levers[each]!.when(state)) chance *= levers[each]!.by;
  }
  return Math.min(CAP, Math.max(FLOOR, chance));
}

/** What moves the chance on this path. */
export const leversOf = (at: number, state: State): { by: number; why: string }[] =>
  compiled[at]!.levers.filter(({ when }) => when(state)).map(({ by, why }) => ({ by, why }));

/** Regret, creep and stalls are choices, not costs; some troubles are counted elsewhere. */
export const isCounted = (risk: Risk): boolean => risk.countedIn === undefined;

/** Every condition that decides whether and how likely a risk is, by position. */
export const conditionsOfRisk: readonly (readonly Condition[])[] = risks.map(({ when, levers }) => [
  when,
  ...levers.map((lever) => lever.when),
]);
