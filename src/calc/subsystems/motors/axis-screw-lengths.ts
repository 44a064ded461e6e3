import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import type { Quantity } from '../../core/quantity.ts';
import { differenceOf, sumOf } from '../../core/steps.ts';
import { screwLengthBudget, screwThreadLength } from '../../formulas/screw-shape.ts';
import { figuresFor, type Slide, usual } from './axis.ts';

/** What lies along a screw beside travel and nut, all m. Gaps run from the thread to the middle of a bearing. */
export interface Layout {
  readonly runOff: number;
  /** Squeezed covers, both sides together. */
  readonly covers: number;
  readonly gapFixed: number;
  readonly gapFar: number;
  readonly fixedJournal: number;
  readonly driveStub: number;
  readonly floatingJournal: number;
}

const why = 'usual for a screw of this size; your drawing decides';
const length = (value: number): Quantity => usual(value, 'm', why);

/** What may whip or bend. */
function freeLengthFigures(slide: Slide, layout: Layout): readonly Figure[] {
  const { of, figure } = figuresFor(slide);
  const gap = length(layout.gapFixed);
  return [
    figure('whirl-length', 'Screw between its bearings, or to its free end', (look) =>
      sumOf({ gap, thread: of(look)('screw-thread'), far: length(layout.gapFar) }),
    ),
    figure('buckling-length', 'Screw that is pushed, at most', (look) =>
      sumOf({
        gap,
        runOff: length(layout.runOff),
        cover: length(layout.covers / 2),
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
    covers: length(layout.covers),
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
