import { any } from '../../core/condition.ts';
import type { Decision } from '../../core/decision.ts';
import { ballOnCarriage } from '../carriage/screw.ts';
import { ballOnCross } from './screw.ts';

/** Asked once the screws of both slides are chosen: it holds for either. */
export const powerOffHold: Decision = {
  id: 'power-off-hold',
  subsystem: 'cross-slide',
  place: 'guide',
  name: 'Holding with power off',
  ask: 'With the power off, what holds a slide still?',
  why: 'A ball screw turns as easily backwards as forwards. Without power a push on the slide moves it.',
  thumb:
    'A tool pressing on the work when the power goes is the case to think of. An old sliding screw holds by itself; a ball screw does not.',
  askWhen: any(ballOnCarriage, ballOnCross),
  assume: ['slide-may-creep', 'holding-brake'],
  assumeWhy: 'Until you choose we plan without brakes: on a level bed a slide left alone stays where it is.',
  open: 'options',
  options: [
    {
      id: 'slide-may-creep',
      label: 'Nothing: it may creep',
      means: 'The slide stays only as long as nobody leans on it; the strips give a little friction.',
      gains: 'Nothing to buy and nothing to wire.',
      wrong:
        'Pushed by the cut or by a hand it moves, and the position is lost: home again before the next part.',
      skill: 1,
    },
    {
      id: 'holding-brake',
      label: 'A brake that closes without power',
      means:
        'A small brake on the motor or the end of each ball screw, held open by 24 V and closed by a spring.',
      gains: 'A slide that stands where it stood, also with hand cranks and a parting tool in the work.',
      wrong:
        'It has to open before the motor moves; wired wrongly it drags, and the motor runs hot and slips.',
      skill: 3,
      needs: 'A relay that opens it together with the drives.',
    },
  ],
};
