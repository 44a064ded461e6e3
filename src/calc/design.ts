import { chosenOption, decisionPosition, maskOf, type State } from './choices/state.ts';
import type { Figure, Look } from './core/figure.ts';
import type { Quantity } from './core/quantity.ts';
import { figures } from './trade.ts';

const byId = new Map(figures.map((figure) => [figure.id, figure]));

/**
 * The design of the machine as chosen: every figure by name, worked out when first asked for. A figure that does not
 * arise on this path, or that misses something, is undefined. Throws on an unknown id, an author's mistake.
 * `onRead` hears of every question that is looked at.
 */
export function designOf(state: State, onRead: (decision: string) => void = ignore): Look {
  const known = new Map<string, Quantity | undefined>();
  const look: Look = {
    fact: (id) => state.machine.facts[id],
    measured: (id) => {
      const quantity = state.machine.facts[id];
      return quantity?.origin.kind === 'answered' ? quantity : undefined;
    },
    figure: (id) => {
      if (known.has(id)) return known.get(id);
      known.set(id, undefined);
      const value = figureById(id).of(look);
      // A figure that only passes a fact on keeps the fact's name: that is where it is changed.
      const named = value && { ...value, of: value.of ?? { figure: id } };
      known.set(id, named);
      return named;
    },
    option: (decision) => {
      onRead(decision);
      return chosenOption(state, decision);
    },
    chosen: (decision, ...options) => {
      onRead(decision);
      return (state.masks[decisionPosition(decision)]! & maskOf(decision, options)) !== 0;
    },
  };
  return look;
}

function ignore(): void {}

export function figureById(id: string): Figure {
  const figure = byId.get(id);
  if (!figure) throw new Error(`no figure of the design has the id ${id}`);
  return figure;
}

/** Every figure that arises on this path, in order of the rooms. */
export function designFigures(look: Look): { figure: Figure; value: Quantity }[] {
  return figures.flatMap((figure) => {
    const value = look.figure(figure.id);
    return value ? [{ figure, value }] : [];
  });
}
