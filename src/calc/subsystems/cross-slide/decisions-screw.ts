import type { Decision } from '../../core/decision.ts';
import { ballOnCross, crossAsked } from './screw.ts';

export const screwDecisions: readonly Decision[] = [
  {
    id: 'cross-screw',
    subsystem: 'cross-slide',
    place: 'guide',
    name: 'Cross-slide screw',
    ask: 'Which screw moves the cross slide?',
    why: 'An error here shows twice on the diameter. The space under the slide is the tightest on the machine.',
    thumb:
      'Measure the tunnel first. The nut needs the largest of its body, its flange across the flats (about 30 mm for a 12 mm screw) and its housing, plus 2 mm.',
    findOut:
      'Wind the slide back and look in from the front. Push in drill shanks or a stack of strips until one just passes, at three places. Write down the tightest height and the width between the ways on the lathe page.',
    askWhen: crossAsked,
    assume: ['ball-screw-12', 'ball-screw-8', 'sliding-cross-screw', 'original-cross-screw', 'ball-screw-16'],
    assumeWhy: 'A 12 mm ball screw is what serves most cross slides of this size.',
    open: 'options',
    options: [
      {
        id: 'ball-screw-12',
        label: '12 mm ball screw',
        means:
          'A screw whose nut rolls on balls, 12 mm thick, 4 mm a turn. The nut body is 22 to 24 mm, its flange wider.',
        gains:
          'Little play (0.02 to 0.05 mm with a single nut), little friction, plenty of push from a small motor.',
        wrong:
          'The saddle often has to be relieved by 2 to 6 mm through a hard skin, and 15 to 35 mm of travel goes to the nut.',
        skill: 4,
        needs: 'the tunnel measured; a mill, or a die grinder and patience',
      },
      {
        id: 'ball-screw-16',
        label: '16 mm ball screw',
        means: 'A stiffer ball screw with a 28 mm nut and a flange of 40 mm even when flatted.',
        gains: 'Stiff, and the same spares as the carriage screw.',
        wrong: 'Asks for a deep slot in the saddle. A thin web cracks, and nothing puts it back.',
        skill: 5,
        needs: 'a tunnel of 42 mm, or a mill and at least 5 mm of casting left below the slot',
      },
      {
        id: 'ball-screw-8',
        label: '8 to 10 mm ball screw',
        means: 'A small ball screw, 2 to 2.5 mm a turn, with a nut that fits the smallest slides.',
        gains: 'Fits without cutting the casting. The fine lead gives push from a small motor.',
        wrong:
          'Low stiffness and load. Tiny end blocks. On a heavy slide it is worked too hard: light cuts only.',
        skill: 3,
      },
      {
        id: 'original-cross-screw',
        label: 'The screw it has, with an adjustable nut',
        means:
          'Keeps the screw and bracket of the lathe. A new split nut, turned on this lathe, takes up the play.',
        gains: 'Cheap, everything goes back, and the slide stays where you leave it with the power off.',
        wrong:
          'Play of 0.03 to 0.08 mm comes back as it wears. Three times the friction. An odd lead on some lathes (metric dial, inch screw).',
        skill: 2,
        needs: 'a nut turned before the slide comes apart',
      },
      {
        id: 'sliding-cross-screw',
        label: 'A new sliding screw with twin nuts',
        means: 'A precise trapezoidal screw with two nuts set against each other.',
        gains: 'Thin enough for low tunnels, stays put with the power off, does not mind chips.',
        wrong: 'Wastes more than half of the motor torque: one motor size up. Re-set the nuts every year.',
        skill: 3,
      },
    ],
  },
  {
    id: 'cross-nut',
    subsystem: 'cross-slide',
    place: 'guide',
    name: 'Play in the cross nut',
    ask: 'How much play may the cross slide keep?',
    why: 'Play in this nut shows twice on the diameter each time the tool reverses. Money spent here does more than on the carriage.',
    thumb: 'Curves and balls want under 0.02 mm of play; plain diameters cut from one side hardly see it.',
    findOut:
      'Clamp an indicator on the slide, push and pull the nut along the still screw with about 50 N. Write down the movement.',
    askWhen: ballOnCross,
    assume: ['cross-oversize-balls', 'cross-double-nut', 'cross-single-nut'],
    assumeWhy:
      'For a little money it meets the 0.03 mm that the proof tests accept; a plain single nut often does not.',
    open: 'options',
    options: [
      {
        id: 'cross-single-nut',
        label: 'Single nut as bought',
        means: 'One nut with the clearance it came with, 0.02 to 0.05 mm.',
        gains: 'Cheapest, shortest, runs freely.',
        wrong: 'Fails the 0.03 mm acceptance about every other time, and no setting removes the play.',
        skill: 2,
      },
      {
        id: 'cross-oversize-balls',
        label: 'Single nut filled with larger balls',
        means:
          'The balls are changed for ones a few thousandths larger, which takes up the clearance (light preload).',
        gains: 'Play down to about 0.01 mm in the same length.',
        wrong:
          'Too large a ball makes the nut stiff and short-lived. Sixty to a hundred tiny balls on the bench.',
        skill: 3,
        needs: 'a tray, tweezers, balls in two or three sizes, an evening',
      },
      {
        id: 'cross-double-nut',
        label: 'Double nut, set against itself',
        means: 'Two nuts pressed apart so that neither direction has play (preloaded).',
        gains: 'No play that an indicator shows.',
        wrong: 'Costs 25 to 35 mm of travel, which a small slide may not have, and it drags a little.',
        skill: 3,
        needs: 'the travel counted again',
      },
    ],
  },
];
