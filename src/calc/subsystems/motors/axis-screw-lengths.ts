import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import type { Quantity } from '../../core/quantity.ts';
import { differenceOf, largestOf, productOf, sumOf } from '../../core/steps.ts';
import { screwLengthBudget, screwThreadLength } from '../../formulas/screw-shape.ts';
import { figuresFor, type Slide, usual } from './axis.ts';

/** What lies along a screw beside travel and nut, all m. Gaps run from the thread to the middle of a bearing. */
export interface Layout {
  readonly runOff: number;
  /** Squeezed covers, both sides together, where they are not bellows. */
  readonly covers: number;
  readonly gapFixed: number;
  readonly gapFar: number;
  readonly fixedJournal: number;
  readonly driveStub: number;
  readonly floatingJournal: number;
}

const why = 'usual for a screw of this size; your drawing decides';
const length = (value: number): Quantity => usual(value, 'm', why);

/** What the squeezed covers take of the thread: a pack of bellows grows with the travel. */
function coversOf(look: Look, slide: Slide, { covers }: Layout): Quantity | undefined {
  if (!look.chosen('way-covers', 'bellows')) return length(covers);
  const travel = look.fact(`${slide}-travel`);
  const sixth = usual(1 / 6, '1', 'bellows fold to about a sixth of the travel; common practice');
  return largestOf({ usual: length(covers), folded: productOf('m', { travel, sixth }) });
}

/** What may whip or bend. */
function freeLengthFigures(slide: Slide, layout: Layout): readonly Figure[] {
  const { of, figure } = figuresFor(slide);
  const gap = length(layout.gapFixed);
  const half = usual(0.5, '1', 'half of the squeezed covers lie on this side');
  return [
    figure('whirl-length', 'Screw between its bearings, or to its free end', (look) =>
      sumOf({ gap, thread: of(look)('screw-thread'), far: length(layout.gapFar) }),
    ),
    figure('buckling-length', 'Screw that is pushed, at most', (look) =>
      sumOf({
        gap,
        runOff: length(layout.runOff),
        cover: productOf('m', { covers: coversOf(look, slide, layout), half }),
        travel: look.fact(`${slide}-travel`),
        nut: of(look)('nut-length'),
      }),
    ),
  ];
}

/** Lengths along the screw: thread, whole, between bearings, and the part that is pushed. */
export function screwLengthFigures(slide: Slide, layout: Layout): readonly Figure[] {
  const { of, figure } = figuresFor(slide);
  const onThread = (look: Look) => ({
    travel: look.fact(`${slide}-travel`),
    nut: of(look)('nut-length'),
    runOff: length(layout.runOff),
    covers: coversOf(look, slide, layout),
  });
  const ends = {
    fixedJournal: length(layout.fixedJournal),
    driveStub: length(layout.driveStub),
    floatingJournal: length(layout.floatingJournal),
  };
  return [
    figure('screw-thread', 'Threaded length of the screw', (look) =>
      derive(screwThreadLength, onThread(look)),
    ),
    figure('screw-length', 'Whole length of the screw', (look) =>
      derive(screwLengthBudget, { ...onThread(look), ...ends }),
    ),
    figure('screw-cut-off', 'To saw off at the floating end', (look) =>
      differenceOf(look.measured(`${slide}-screw-bought`), of(look)('screw-length')),
    ),
    ...freeLengthFigures(slide, layout),
  ];
}
