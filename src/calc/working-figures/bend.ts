import { type EndFixity, screwBucklingLoad, screwShortLimit } from '../formulas/screw-limits.ts';
import { mm, newton, type Values, type WorkingFigure } from './figure.ts';
import { endCurves, lengthInput, rootInput } from './long-screw.ts';

/** Push that a screw may take, N: what bends it, or what its steel stands where it is short. */
const allowed = (rootDiameter: number, length: number, endFixity: EndFixity): number =>
  Math.min(
    screwBucklingLoad.compute({ rootDiameter, length, endFixity }),
    screwShortLimit.compute({ rootDiameter }),
  );

function answer({ root = 0, length = 0, push = 0 }: Values) {
  const [held, free] = [allowed(root, length, 'fixed-supported'), allowed(root, length, 'fixed-free')];
  return {
    say:
      push <= free
        ? 'It takes {push} however the far end is held: up to {free} with it free, {held} with it supported.'
        : push <= held
          ? 'It takes {push} only with the far end supported: then up to {held}, but free only {free}.'
          : 'It does not take {push}: with the far end supported it is good for {held}. Take a thicker screw, or turn the motor down.',
    rows: [
      { id: 'held', label: 'Far end supported', value: held, written: newton },
      { id: 'free', label: 'Far end free', value: free, written: newton },
      { id: 'push', label: 'Your push', value: push, written: newton },
    ],
    curves: endCurves(allowed, root),
    mark: [length, push],
  } as const;
}

/** How hard a screw may be pushed before it bends sideways, against its length. */
export const bend: WorkingFigure = {
  id: 'bend',
  topic: 'ball-screws',
  question: 'How hard may the screw be pushed before it bends?',
  begin: 'Set the screw and the push. Half of what bends it is kept back already.',
  inputs: [
    lengthInput({ label: 'Length from nut to fixed bearing', example: 560, own: 'carriage-buckling-length' }),
    rootInput,
    {
      id: 'push',
      label: 'Push of the slide',
      unit: 'N',
      written: newton,
      low: 100,
      high: 15000,
      step: 50,
      example: 2500,
      own: 'carriage-thrust',
    },
  ],
  across: { label: 'length from nut to fixed bearing, mm', written: mm },
  up: { label: 'push, N', written: newton },
  formulas: [screwBucklingLoad.id, screwShortLimit.id],
  answer,
};
