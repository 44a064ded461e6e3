import { type EndFixity, screwWhirlSpeed } from '../formulas/screw-limits.ts';
import { curveOf, mm, rpm, type Values, type WorkingFigure } from './figure.ts';

const LENGTH = { low: 150, high: 1500 };

const whirl = (rootDiameter: number, length: number, endFixity: EndFixity): number =>
  screwWhirlSpeed.compute({ rootDiameter, length, endFixity });

function answer({ root = 0, length = 0, turning = 0 }: Values) {
  const [held, free] = [whirl(root, length, 'fixed-supported'), whirl(root, length, 'fixed-free')];
  const holds = (fixity: EndFixity) =>
    curveOf(LENGTH.low / 1000, LENGTH.high / 1000, (each) => whirl(root, each, fixity));
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
    curves: [
      { name: 'far end supported', points: holds('fixed-supported') },
      { name: 'far end free', points: holds('fixed-free'), broken: true },
    ],
    mark: [length, turning],
  } as const;
}

/** How fast a screw may turn before it bows out, against its length. */
export const whip: WorkingFigure = {
  id: 'whip',
  topic: 'ball-screws',
  question: 'How fast may the screw turn before it whips?',
  todo: 'Set the screw, and see how soon a longer one whips.',
  inputs: [
    {
      id: 'length',
      label: 'Length between the bearings',
      unit: 'm',
      written: mm,
      ...LENGTH,
      step: 10,
      example: 600,
      own: 'carriage-whirl-length',
    },
    {
      id: 'root',
      label: 'Root diameter of the screw',
      unit: 'm',
      written: mm,
      low: 5,
      high: 40,
      step: 0.1,
      example: 13.2,
      own: 'carriage-screw-root',
    },
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
