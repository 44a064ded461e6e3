import type { State } from './choices/state.ts';
import { designOf, figureById } from './design.ts';
import { figures } from './trade.ts';

/**
 * A figure of the design for the rules, SI; NaN where it does not arise, so that no comparison holds. Throws on an
 * unknown id, an author's mistake.
 */
export const measure = (state: State, id: string): number =>
  designOf(state).figure(figureById(id).id)?.value ?? Number.NaN;

export const hasMeasure = (id: string): boolean => figures.some((figure) => figure.id === id);
