import type { Decision, Option } from '../../core/decision.ts';

const holders: readonly Option[] = [
  {
    id: 'jaw-chuck',
    label: 'The chuck it has, jaws by key',
    means: 'The three-jaw or four-jaw chuck of the lathe, tightened by hand.',
    gains: 'Nothing to buy, and it holds nearly anything.',
    wrong:
      'Each part is loaded by hand. Jaws are the first thing that a wrong program hits, and a key left in the chuck at cycle start is the commonest bad start.',
    skill: 1,
  },
  {
    id: 'spring-collets',
    label: 'Spring collets in a small chuck',
    means:
      'A compact chuck on the spindle nose that closes a slit sleeve (collet) round the bar; one collet for each size.',
    gains: 'Small work runs truer and faster with no jaws to fly past your hands.',
    wrong:
      'It sticks out 40 to 60 mm, which costs bed length. Work out of size or a chip in the taper shows as run-out at the tip.',
    skill: 2,
    needs: 'A back plate turned to fit your own spindle nose.',
  },
  {
    id: 'lever-collets',
    label: 'Collets closed by a lever',
    means:
      'A lever at the back of the headstock pulls a tube through the spindle that closes the collet, even while it turns.',
    gains: 'Two seconds a part: the old way to make hundreds of small pieces.',
    wrong:
      'It fills the back of the spindle, just where a spindle sensor wants to sit, and its bracket must be made. Wrong tension shows as bar pushed back into the collet.',
    skill: 4,
    needs: 'Room and a bracket behind the headstock.',
  },
  {
    id: 'power-chuck',
    label: 'Chuck worked by air or oil',
    means: 'Jaws or a collet that close on command from the control.',
    gains: 'Bar work that goes on by itself.',
    wrong:
      'If the air goes, so does the grip, with the spindle turning. A pressure switch has to stop the spindle, and the stop circuit has to be watched.',
    skill: 5,
    needs: 'Compressed air, interlocks, and a stop circuit that is watched.',
  },
];

const feeding: readonly Option[] = [
  {
    id: 'cut-blanks',
    label: 'Blanks sawn to length',
    means: 'Each part starts as its own short piece, loaded one at a time.',
    gains: 'Nothing turns behind the headstock, and there is little to buy or get wrong.',
    wrong: 'Sawing takes a minute or two a part, and each blank has to be faced.',
    skill: 1,
  },
  {
    id: 'bar-against-stop',
    label: 'Bar pushed by hand against a stop',
    means:
      'Long bar lies through the spindle in a tube; you open the chuck, push the bar to a stop, and close.',
    gains: 'One saw cut for twenty parts, and every part starts at the same place.',
    wrong:
      'Bar that sticks out of the back can bend and strike at speed. It shows as a hum that grows; by then stand away and stop.',
    skill: 2,
    needs: 'A fixed tube behind the spindle, and a barrier.',
  },
  {
    id: 'bar-puller',
    label: 'Gripper in the post pulls the bar',
    means: 'A spring gripper in the tool post takes hold of the bar and the carriage pulls it out to length.',
    gains: 'Several parts from one bar with nobody touching it, once the chuck opens on command.',
    wrong: 'It slips on oily or burred bar. It shows as short parts, so the program has to allow for one.',
    skill: 3,
    needs: 'The tube behind the spindle, and collets that open easily.',
  },
];

const drilling: readonly Option[] = [
  {
    id: 'tailstock-by-hand',
    label: 'Drill by hand from the tailstock',
    means: 'As today: the program waits while you wind in the drill.',
    gains: 'Strong, known, and no load on the carriage motor.',
    wrong: 'Each part waits for you, and the depth is what you make it.',
    skill: 1,
  },
  {
    id: 'drill-in-tool-post',
    label: 'Drill held in the tool post',
    means: 'A sleeve in the tool post holds the drill on the centre line; the carriage pushes it in.',
    gains: 'Holes become part of the program, depth and pecking included.',
    wrong:
      'All the push comes from the carriage motor. Too large a drill stalls it in the hole; more than 0.05 mm off centre shows as a wandering or oversize hole.',
    skill: 2,
    needs: 'A holder set to height and angle, and the push checked for your largest drill.',
  },
  {
    id: 'motor-tailstock',
    label: 'Tailstock with its own motor',
    means: 'A third motor drives the quill of the tailstock.',
    gains: 'Deep holes by program, with the tool post free.',
    wrong:
      'A third axis to build, wire and lock, and one more thing to run into. A quill that is not locked shows as a hole that drifts.',
    skill: 4,
    needs: 'A control with a third axis.',
  },
];

export const workDecisions: Readonly<Record<'holding' | 'barFeed' | 'holes', Decision>> = {
  holding: {
    id: 'work-holding',
    subsystem: 'tooling',
    place: 'guide',
    name: 'Work holding',
    ask: 'What holds the work?',
    why: 'A chuck worked by hand means one part at a time with you beside it. It also decides what can hang out of the spindle.',
    thumb: 'Collets for bar under 16 to 25 mm if you make batches; otherwise keep the three-jaw chuck.',
    findOut:
      'Measure the diameter of your last twenty parts. Write down how many are under 16 mm and made from bar.',
    assume: ['jaw-chuck', 'spring-collets', 'lever-collets', 'power-chuck'],
    assumeWhy: 'Until you choose we plan with the chuck that the lathe has.',
    open: 'options',
    options: holders,
  },
  barFeed: {
    id: 'bar-feed',
    subsystem: 'tooling',
    place: 'guide',
    name: 'Feeding the stock',
    ask: 'How does the stock get into the chuck?',
    why: 'Long bar through the spindle saves time and can kill. It needs a tube, a stop and a barrier that belong in the plan.',
    thumb:
      'Nothing turns outside the headstock unless it is shorter than three diameters or runs in a fixed tube.',
    assume: ['cut-blanks', 'bar-against-stop', 'bar-puller'],
    assumeWhy: 'Until you choose we plan with sawn blanks: nothing turns behind the headstock.',
    open: 'options',
    options: feeding,
  },
  holes: {
    id: 'holes',
    subsystem: 'tooling',
    place: 'guide',
    name: 'Holes',
    ask: 'How are holes made?',
    why: 'A drill in the tool post puts its whole push on the carriage motor. That can size the motor for you.',
    thumb:
      'A 10 mm drill in mild steel at 0.15 mm a turn pushes back with about 1.8 kN if split-point, 2.5 ordinary, 3.3 worn: more than many small carriages can give.',
    findOut:
      'Write down the largest hole you drill from solid and in what. A pilot as wide as the web of the drill halves the push.',
    assume: ['tailstock-by-hand', 'drill-in-tool-post', 'motor-tailstock'],
    assumeWhy: 'Until you choose we plan with the tailstock by hand, which changes nothing.',
    open: 'options',
    options: drilling,
  },
};
