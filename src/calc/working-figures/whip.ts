import { type EndFixity, screwWhirlSpeed } from '../formulas/screw-limits.ts';
import { mm, rpm, type Values, type WorkingFigure } from './figure.ts';
import { endCurves, lengthInput, rootInput } from './long-screw.ts';

const whirl = (rootDiameter: number, length: number, endFixity: EndFixity): number =>
  screwWhirlSpeed.compute({ rootDiameter, length, endFixity });

function answer({ root = 0, length = 0, turning = 0 }: Values) {
  const [held, free] = [whirl(root, length, 'fixed-supported'), whirl(root, length, 'fixed-free')];
  return {
    say:
      turning <= free
        ? 'At {turning} it does not whip, however the far end is held: free it may turn at {free}, supported at {held}.'
        : turning <= held
          ? 'At {turning} the far end must be supported: then it may turn at {held}, but free only at {free}.'
          : 'At {turning} it whips, even with the far end supported: then it may turn at {held}. Go slower, or take a thicker screw or a longer lead.',
    rows: [
      { id: 'held', label: 'Far end supported', value: held, written: rpm },
      { id: 'free', label: 'Far end free', value: free, written: rpm },
      { id: 'turning', label: 'Your fast move', value: turning, written: rpm },
    ],
    curves: endCurves(whirl, root),
    mark: [length, turning],
  } as const;
}

/** How fast a screw may turn before it bows out, against its length. */
export const whip: WorkingFigure = {
  id: 'whip',
  topic: 'ball-screws',
  question: 'How fast may the screw turn before it whips?',
  begin: 'Set the screw, and see how soon a longer one whips.',
  inputs: [
    lengthInput({ label: 'Length between the bearings', example: 600, own: 'carriage-whirl-length' }),
    rootInput,
    {
      id: 'turning',
      label: 'Screw speed in a fast move',
      unit: 'rev/s',
      written: rpm,
      low: 50,
      high: 6000,
      step: 10,
      example: 480,
      own: 'carriage-screw-speed-rapid',
    },
  ],
  across: { label: 'length between the bearings, mm', written: mm },
  up: { label: 'screw speed, rpm', written: rpm },
  formulas: [screwWhirlSpeed.id],
  answer,
};
