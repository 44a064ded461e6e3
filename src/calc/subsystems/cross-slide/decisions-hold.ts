import type { Decision } from '../../core/decision.ts';
import { crossAsked } from './screw.ts';

export const holdDecisions: readonly Decision[] = [
  {
    id: 'cross-motor-place',
    subsystem: 'cross-slide',
    place: 'guide',
    name: 'Cross-slide motor place',
    ask: 'Where does the cross-slide motor sit?',
    why: 'It rides on the carriage: its weight, its reach, and what it hits at the ends of travel all count.',
    thumb:
      'A motor in front sticks out 120 to 200 mm at belly height; one behind needs as much room there and rules out a rear tool post.',
    findOut:
      'Run the carriage to both ends and the slide in and out with a box the size of the motor taped on. Note what it touches: tailstock, splash tray, wall, you.',
    askWhen: crossAsked,
    assume: ['front-belt', 'front-direct', 'rear-belt'],
    assumeWhy: 'A belt tucks the motor beside the slide and leaves the ratio open.',
    open: 'options',
    options: [
      {
        id: 'front-direct',
        label: 'In front, straight on the screw',
        means: 'The motor sits in line with the screw, where the handle was, joined by a coupling.',
        gains: 'Fewest parts and no belt to set.',
        wrong:
          'Sticks far out and catches clothing. No room for a hand crank. Must be in line within 0.05 mm.',
        skill: 2,
      },
      {
        id: 'front-belt',
        label: 'In front, tucked in beside a belt',
        means: 'The motor lies beside or below the slide and drives the screw with a toothed belt.',
        gains: 'Compact, leaves room for a crank, and you can choose the ratio.',
        wrong: 'The belt guard may hit the carriage lock or the tailstock. Check all four corners of travel.',
        skill: 3,
        needs: 'pulleys bored to their shafts',
      },
      {
        id: 'rear-belt',
        label: 'Behind the slide',
        means: 'The screw is longer and comes out at the back, where the motor sits on its own bracket.',
        gains: 'The front stays clear for the handwheel.',
        wrong:
          'Chips and coolant fall on it, the splash guard must be cut, and a rear tool post has no place.',
        skill: 3,
        needs: 'a screw 60 to 100 mm longer and a rear bracket',
      },
    ],
  },
  {
    id: 'cross-screw-hold',
    subsystem: 'cross-slide',
    place: 'guide',
    name: 'Holding the cross screw',
    ask: 'What takes the push of the cross screw?',
    why: 'The bracket that came with the lathe is plain metal with 0.03 to 0.1 mm of end play, and that play counts twice.',
    thumb:
      'This is the cheapest place on the machine to buy accuracy. Accept 0.01 mm of end play; 0.005 is good.',
    findOut: 'Indicator on the end of the screw, push and pull the slide. What moves is the end play.',
    askWhen: crossAsked,
    assume: ['bought-cross-block', 'original-bracket', 'made-cross-block'],
    assumeWhy: 'A bought block is a known part that bolts to a plate you make.',
    open: 'options',
    options: [
      {
        id: 'original-bracket',
        label: 'The bracket it has, with thrust bearings added',
        means: 'Needle thrust bearings on both sides of the collar replace plain metal on plain metal.',
        gains: 'Compact, cheap, and it all goes back.',
        wrong: 'The setting nut works loose unless it is locked with a second nut or thread lock.',
        skill: 3,
        needs: 'the bracket faced square on the lathe',
      },
      {
        id: 'bought-cross-block',
        label: 'A bought bearing block on a new plate',
        means:
          'A ready block with its bearing pair (fixed end) on a plate screwed to the front of the saddle.',
        gains: 'A known part with known bearings.',
        wrong:
          'Often too tall for the slide, so the plate stands proud. Cheap blocks hold plain bearings with end play: measure before fitting.',
        skill: 3,
      },
      {
        id: 'made-cross-block',
        label: 'A block you make, with a matched bearing pair',
        means: 'Angular-contact bearings in a block bored on your own lathe.',
        gains: 'The most stiffness in the least space, and no end play.',
        wrong: 'Bored off centre, the screw binds near the front.',
        skill: 4,
        needs: 'boring to a bearing fit before the lathe comes apart',
      },
    ],
  },
];
