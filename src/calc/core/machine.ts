import type { Quantity } from './quantity.ts';

export type SizeClass = 'small' | 'medium' | 'large';

/** Every figure of the lathe and the workshop, SI, each with its origin; keyed by fact id. */
export interface Machine {
  readonly size: SizeClass;
  readonly facts: Readonly<Record<string, Quantity>>;
}

/** A figure of the machine in SI units; throws on an id that does not exist (an author's mistake). */
export function figure(machine: Machine, fact: string): number {
  const quantity = machine.facts[fact];
  if (!quantity) throw new Error(`no such figure of the lathe: ${fact}`);
  return quantity.value;
}
