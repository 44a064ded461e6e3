import type { Figure, Look } from '../../core/figure.ts';
import { assumed, type Quantity, type Unit } from '../../core/quantity.ts';

/** A slide that a motor may push; the first word of every figure of it. */
export type Slide = 'carriage' | 'cross';

export const slideWords: Readonly<Record<Slide, string>> = { carriage: 'carriage', cross: 'cross slide' };

export const memory = 'from memory of the trade: the data sheet of the part you buy decides';
export const practice = 'common practice, no source';

/** A figure that stands on practice rather than on an answer. */
export const usual = (value: number, unit: Unit, why: string = practice): Quantity =>
  assumed(value, unit, why);

export const isDriven = (look: Look, slide: Slide): boolean =>
  !look.chosen('driven-axes', slide === 'carriage' ? 'cross-slide-only' : 'carriage-only');

/** Slide, screw and mounts came with a training machine: nothing is asked about them. */
export const cameWithMachine = (look: Look): boolean => look.chosen('which-lathe', 'dead-training-machine');

/** A figure that arises only where the slide gets a motor. */
export const slideFigure = (
  slide: Slide,
  name: string,
  label: string,
  of: (look: Look) => Quantity | undefined,
): Figure => ({
  id: `${slide}-${name}`,
  label: `${label}, ${slideWords[slide]}`,
  of: (look) => (isDriven(look, slide) ? of(look) : undefined),
});

/** The figures of one slide by their short names: `of(look)('lead')`. */
export const figuresOf =
  (slide: Slide) =>
  (look: Look) =>
  (name: string): Quantity | undefined =>
    look.figure(`${slide}-${name}`);

/** Both for one slide: `of(look)('lead')` reads a figure, `figure('lead', …)` makes one. */
export const figuresFor = (slide: Slide) => ({
  of: figuresOf(slide),
  figure: (name: string, label: string, value: (look: Look) => Quantity | undefined) =>
    slideFigure(slide, name, label, value),
});
