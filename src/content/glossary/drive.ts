import type { Word } from './word.ts';

export const drive: readonly Word[] = [
  {
    word: 'ball nut',
    means: 'The nut of a ball screw. If it runs off the end of its screw, the balls fall out.',
  },
  {
    word: 'ball screw',
    means:
      'A screw whose nut rolls on balls: little friction, little play. It does not hold still by itself.',
  },
  { word: 'bearing', means: 'Carries a shaft, so that it turns easily and stays in its place.' },
  {
    word: 'bellows',
    means: 'A folded cover that keeps chips off a screw. Pressed together it still takes room.',
  },
  { word: 'bracket', means: 'A solid piece that holds a motor, a nut or the end of a screw to the lathe.' },
  {
    word: 'closed-loop stepper',
    linked: ['closed-loop stepper', 'closed-loop steppers', 'closed loop'],
    means: 'A stepper that notices when it has slipped. It stops the machine only if you wire its alarm.',
  },
  { word: 'coupling', means: 'Joins a motor’s shaft to a screw, end to end.' },
  {
    word: 'dowel',
    also: ['dowel pin'],
    means: 'A pin in a reamed hole that sets where a part sits. The screws only hold it there.',
  },
  {
    word: 'end block',
    also: ['bearing block', 'screw support'],
    linked: [
      'end block',
      'end blocks',
      'bearing block',
      'bearing blocks',
      'screw support',
      'bought blocks',
      'both blocks',
    ],
    means: 'Holds the end of a screw. One end takes the push; the other only keeps the screw straight.',
  },
  {
    word: 'end play',
    means: 'A screw that moves to and fro along its own axis. It adds to the play of the nut.',
  },
  {
    word: 'grub screw',
    also: ['set screw'],
    means: 'A small screw without a head that clamps a hub to a shaft. On a round shaft it creeps.',
  },
  {
    word: 'lead',
    linked: ["screw's (lead)", '5 mm (lead)', '(lead) of the screw', 'by the (lead)'],
    means: 'How far a nut moves for one turn of its screw.',
  },
  {
    word: 'microstep',
    means: 'A finer electrical division of a step. It makes a motor smoother, hardly more accurate.',
  },
  {
    word: 'open-loop stepper',
    linked: ['open-loop stepper', 'open-loop steppers', 'open loop', 'plain stepper', 'plain steppers'],
    means: 'A motor that moves in steps and does not notice when one is missed.',
  },
  {
    word: 'play',
    also: ['backlash', 'lash'],
    linked: ['play', 'backlash', 'lash'],
    means: 'The free movement when direction is reversed, before anything moves.',
  },
  {
    word: 'preload',
    kept: 'Said by the questions about nuts and screw ends.',
    means: 'Taking play out with a spring, a second nut or slightly larger balls.',
  },
  {
    word: 'pull-out torque',
    kept: 'What sellers print beside a stepper’s curve.',
    means: 'The most a stepper can give at a speed before it slips.',
  },
  { word: 'pulley', means: 'A wheel for a belt.' },
  {
    word: 'pulley, 1:1',
    linked: ['1:1', '2:1'],
    means:
      'Two equal pulleys: both shafts turn at the same speed. A 2:1 pair halves the speed and doubles the force.',
  },
  {
    word: 'ratio',
    linked: ['belt ratio', 'the (ratio)'],
    means: 'How many times one shaft turns while the other turns once.',
  },
  { word: 'servo', means: 'A motor that measures where it is and corrects itself all the time.' },
  {
    word: 'shim',
    means: 'A thin piece of metal that fills a gap or lifts a part by a known amount.',
  },
  {
    word: 'spring scale',
    means: 'A hook on a spring with a dial that shows the pull. It measures how hard a slide is to move.',
  },
  {
    word: 'stall',
    linked: ['stall', 'stalls', 'stalled'],
    means: 'To stop turning while told to turn, because the load is too much.',
  },
  {
    word: 'step and direction',
    kept: 'What makers call the inputs of a drive.',
    means: 'Two wires that say: move one step, and this way.',
  },
  {
    word: 'stepper',
    also: ['stepping motor'],
    means: 'A motor that moves in small fixed steps. It is strong when slow and fades with speed.',
  },
  {
    word: 'stick-slip',
    means: 'A slide that sticks, then jumps, because it takes more push to start it than to keep it moving.',
  },
  {
    word: 'thread synchroniser',
    also: ['electronic lead screw'],
    means:
      'A box that turns the lead screw in step with the spindle, in place of change gears. You still turn by hand.',
  },
  { word: 'thrust', linked: ['thrust'], means: 'Push along the line of a screw or a drill.' },
  { word: 'thrust bearing', means: 'A bearing that takes push along a shaft.' },
  {
    word: 'toothed belt',
    also: ['timing belt'],
    means: 'A belt with teeth. It cannot slip, so both pulleys keep step.',
  },
  { word: 'torque', means: 'Turning force: force times its distance from the axis, in newton-metres.' },
  { word: 'torque limit', means: 'A setting of a drive: the most its motor may turn with.' },
  {
    word: 'trapezoidal thread',
    also: ['acme thread'],
    means:
      'The usual thread of a sliding machine screw, with sloping sides and a flat top. The acme thread is its inch cousin.',
  },
  {
    word: 'whip',
    also: ['critical speed'],
    linked: ['it (whips)', '(whips) and bends', 'critical speed'],
    means: 'The speed at which a long screw begins to swing like a skipping rope.',
  },
];
