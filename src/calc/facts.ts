import type { Machine, SizeClass } from './core/machine.ts';
import { answered, assumed, type Quantity, type Unit } from './core/quantity.ts';
import { latheFacts } from './facts-lathe.ts';
import { ownFacts } from './facts-own.ts';
import { slideFacts } from './facts-slides.ts';
import { turningFacts } from './facts-turning.ts';
import { workFacts } from './facts-work.ts';
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
  | 'pitch'
  | 'feed'
  | 'slide-speed'
  | 'acceleration'
  | 'force'
  | 'torque'
  | 'small-current'
  | 'voltage'
  | 'inductance'
  | 'resistance'
  | 'surface-speed'
  | 'ratio'
  | 'rate';

/**
 * A figure that the owner can measure or read: of the lathe, the workshop, the work to be done on it (`work`), or one
 * that overrides what the design would take from its own tables (`own`: nothing stands there until the owner types it).
 */
export interface Fact {
  readonly id: string;
  readonly group: 'lathe' | 'workshop' | 'work' | 'own';
  readonly name: string;
  /** What it is, in plain words. */
  readonly means: string;
  readonly unit: Unit;
  readonly show: Show;
  /** Lowest and highest value that makes sense for a lathe of this kind, SI. */
  readonly sense: readonly [low: number, high: number];
  /** Of the three sizes; missing where only the owner can say. */
  readonly typical?: Readonly<Record<SizeClass, number>>;
  /** Tool, where to put it, what to write down. */
  readonly howToMeasure: string;
}

export const facts: readonly Fact[] = [
  ...latheFacts,
  ...workshopFacts,
  ...workFacts,
  ...ownFacts,
  ...slideFacts,
  ...turningFacts,
];

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
  const sized = sizeClassOf(size, given);
  const figures: Record<string, Quantity> = {};
  for (const fact of facts) {
    const quantity = quantityOf(fact, given[fact.id], sized);
    if (quantity) figures[fact.id] = quantity;
  }
  return { size: sized, facts: figures };
}

function quantityOf(fact: Fact, value: number | undefined, size: SizeClass): Quantity | undefined {
  const of = { fact: fact.id };
  if (value !== undefined && makesSense(fact, value)) return { ...answered(value, fact.unit), of };
  const why = `typical of a ${sizeNames[size]} lathe`;
  return fact.typical && { ...assumed(fact.typical[size], fact.unit, why), of };
}

/** The size whose typical figures count: that of the swing where one is given that makes sense. */
export function sizeClassOf(size: SizeClass, { swing }: Readonly<Record<string, number>>): SizeClass {
  return swing !== undefined && usable('swing', swing) ? sizeOfSwing(swing) : size;
}

/** Small to 220 mm swing, medium to 280 mm, large above. Common practice, no source. */
function sizeOfSwing(swing: number): SizeClass {
  if (swing <= 0.22) return 'small';
  return swing <= 0.28 ? 'medium' : 'large';
}

function usable(id: string, value: number): boolean {
  const fact = byId.get(id);
  return fact !== undefined && makesSense(fact, value);
}
