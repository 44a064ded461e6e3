import { compile, type State } from '../choices/state.ts';
import { pertMean } from '../core/band.ts';
import type { Condition } from '../core/condition.ts';
import type { Path } from '../core/path.ts';
import type { Risk } from '../core/risk.ts';
import { parts, risks } from '../trade.ts';
import type { Wanted } from './wanted.ts';

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

/** The owner's own chance of a risk; undefined where none was given that is a chance. */
export function ownChance(at: number, chances: Path['chances']): number | undefined {
  const own = chances?.[risks[at]!.id];
  return own !== undefined && own >= 0 && own <= 1 ? own : undefined;
}

/** The chance that counts: the owner's own where the cause exists and one was given, else ours. */
export function countedChance(at: number, state: State, chances: Path['chances']): number {
  const ours = chanceOf(at, state);
  return ours === 0 || chances === undefined ? ours : (ownChance(at, chances) ?? ours);
}

const partAt = new Map(parts.map((part, at) => [part.id, at]));
/** Positions of the parts whose spare pays for a risk, by position of the risk. */
export const sparePlaces: readonly (readonly number[])[] = risks.map(({ spares = [] }) =>
  spares.map((id) => partAt.get(id)!),
);

/** Parts whose spare, bought with the list, takes the place of this risk's money. */
export const sparesHeld = (
  risk: number,
  wanted: readonly Wanted[],
  owned: readonly string[],
): readonly string[] => {
  const places = sparePlaces[risk]!;
  if (places.length === 0) return [];
  return places
    .filter((at) => isHeld(at, wanted[at]!))
    .flatMap((at) => (owned.includes(parts[at]!.id) ? [] : [parts[at]!.id]));
};

/** A part that is kept more than needed, or that is itself nothing but a spare. */
export const isHeld = (at: number, { need, keep }: Wanted): boolean =>
  keep > 0 || (need > 0 && parts[at]!.keep === undefined);

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
