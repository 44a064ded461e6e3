import type { Machine, SizeClass } from './core/machine.ts';
import { answered, assumed, type Quantity, type Unit } from './core/quantity.ts';
import { latheFacts } from './facts-lathe.ts';
import { workshopFacts } from './facts-workshop.ts';

/** How a figure is typed and shown; the model itself keeps SI. */
export type Show =
  | 'length'
  | 'mass'
  | 'power'
  | 'speed'
  | 'current'
  | 'frequency'
  | 'hours'
  | 'share'
  | 'count'
  | 'pitch';

/** A figure of the lathe or the workshop that the owner can measure. */
export interface Fact {
  readonly id: string;
  readonly group: 'lathe' | 'workshop';
  readonly name: string;
  /** What it is, in plain words. */
  readonly means: string;
  readonly unit: Unit;
  readonly show: Show;
  /** Lowest and highest value that makes sense for a lathe of this kind, SI. */
  readonly sense: readonly [low: number, high: number];
  readonly typical: Readonly<Record<SizeClass, number>>;
  /** Tool, where to put it, what to write down. */
  readonly howToMeasure: string;
}

export const facts: readonly Fact[] = [...latheFacts, ...workshopFacts];

const byId = new Map(facts.map((fact) => [fact.id, fact]));

export const factById = (id: string): Fact | undefined => byId.get(id);

export const sizeNames: Readonly<Record<SizeClass, string>> = {
  small: 'small',
  medium: 'medium',
  large: 'large',
};

/** Whether a value lies inside what makes sense; a value that does not is kept and asked about. */
export function makesSense(fact: Fact, value: number): boolean {
  return Number.isFinite(value) && value >= fact.sense[0] && value <= fact.sense[1];
}

/**
 * Every figure of the machine: the owner's where it was given and makes sense, else the typical one of the class.
 * Swing decides the class when it was measured, because prices and tunnels follow the real lathe.
 */
export function machineOf(size: SizeClass, given: Readonly<Record<string, number>>): Machine {
  const swing = given.swing;
  const sized = swing !== undefined && usable('swing', swing) ? sizeOfSwing(swing) : size;
  const figures: Record<string, Quantity> = {};
  for (const fact of facts) {
    const value = given[fact.id];
    figures[fact.id] =
      value !== undefined && makesSense(fact, value)
        ? answered(value, fact.unit)
        : assumed(fact.typical[sized], fact.unit, `typical of a ${sizeNames[sized]} lathe`);
  }
  return { size: sized, facts: figures };
}

/** Small to 220 mm swing, medium to 280 mm, large above. Common practice, no source. */
export function sizeOfSwing(swing: number): SizeClass {
  if (swing <= 0.22) return 'small';
  return swing <= 0.28 ? 'medium' : 'large';
}

function usable(id: string, value: number): boolean {
  const fact = byId.get(id);
  return fact !== undefined && makesSense(fact, value);
}
