import type { Look } from '../../core/figure.ts';
import { chosen, type Quantity, type Unit } from '../../core/quantity.ts';
import { memory, type Slide, usual } from './axis.ts';

/** The end that takes the push: N it stands at rest, N/m it gives, m it shakes. From memory of the trade. */
export interface FixedEnd {
  readonly rating: number;
  readonly stiffness: number;
  readonly play: number;
}

const carriageEnds: Readonly<Record<string, FixedEnd>> = {
  'one-end-held': { rating: 5500, stiffness: 5e7, play: 10e-6 },
  'bought-end-blocks': { rating: 5500, stiffness: 5e7, play: 10e-6 },
  'made-angular-block': { rating: 6500, stiffness: 1e8, play: 3e-6 },
  'both-ends-held': { rating: 9000, stiffness: 1.5e8, play: 2e-6 },
};

const crossEnds: Readonly<Record<string, FixedEnd>> = {
  'original-bracket': { rating: 4000, stiffness: 3e7, play: 15e-6 },
  'bought-cross-block': { rating: 4500, stiffness: 4e7, play: 10e-6 },
  'made-cross-block': { rating: 5000, stiffness: 8e7, play: 3e-6 },
};

/** Thrust washers in the place of the plain collar of an old lead screw. */
const onLeadScrew: FixedEnd = { rating: 6000, stiffness: 4e7, play: 20e-6 };

/** Bearings of a large lathe have more room: 15 mm bore instead of 10 or 12. */
const largeLathe = 1.4;

const questions = {
  carriage: { decision: 'carriage-screw-ends', ends: carriageEnds },
  cross: { decision: 'cross-screw-hold', ends: crossEnds },
} as const;

/** One figure of the end that takes the push; undefined where nothing is known of it, as on a rack. */
export function fixedEnd(
  look: Look,
  slide: Slide,
  unit: Unit,
  pick: (end: FixedEnd, scale: number) => number,
): Quantity | undefined {
  const { decision, ends } = questions[slide];
  const option = look.option(decision) ?? '';
  const scale = (look.fact('swing')?.value ?? 0) > 0.28 ? largeLathe : 1;
  const end = ends[option];
  if (end) return chosen(pick(end, scale), unit, decision, option, memory);
  const kept = slide === 'carriage' && look.chosen('carriage-drive', 'original-lead-screw');
  return kept
    ? chosen(pick(onLeadScrew, scale), unit, 'carriage-drive', 'original-lead-screw', memory)
    : undefined;
}

/** Stiffness of the bracket between screw and slide, N/m; one that is only clamped gives twice as much. */
export const bracketStiffness = (look: Look): Quantity =>
  look.chosen('hand-use', 'fully-reversible')
    ? usual(4e7, 'N/m', `a clamped bracket; ${memory}`)
    : usual(8e7, 'N/m', `a bracket bolted and dowelled; ${memory}`);
