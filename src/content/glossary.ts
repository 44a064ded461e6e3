/** A word of the trade in plain words; `also` are other names for the same thing, American and British. */
export interface Word {
  readonly word: string;
  readonly also?: readonly string[];
  readonly means: string;
}

const machine: readonly Word[] = [
  {
    word: 'apron',
    means: 'The casting on the front of the carriage, with the handwheel and the half-nut in it.',
  },
  {
    word: 'back gear',
    means:
      'Gears that let the spindle turn slowly with full force. Electronics can slow a motor down, but do not add force as gears do.',
  },
  {
    word: 'bed',
    also: ['ways'],
    means: 'The long casting that everything slides on. Its guiding faces are the ways.',
  },
  { word: 'carriage', means: 'The part that slides along the bed. Its direction is called Z.' },
  {
    word: 'centre height',
    means: 'The height of the spindle’s axis. The tip of every turning tool stands at it.',
  },
  { word: 'change gears', means: 'Loose gears that set which thread the lathe cuts.' },
  {
    word: 'compound slide',
    also: ['top slide'],
    means: 'The small slide on top that swivels. Under program it is seldom needed.',
  },
  {
    word: 'cross slide',
    means: 'The part that moves the tool in and out, across the bed. Its direction is called X.',
  },
  { word: 'gib', also: ['jib'], means: 'An adjustable strip that sets how snugly a slide fits.' },
  {
    word: 'half-nut',
    also: ['split nut'],
    means: 'A nut in two halves that clamps on the lead screw to drive the carriage.',
  },
  { word: 'headstock', means: 'The casting on the left that carries the spindle.' },
  {
    word: 'lead screw',
    means: 'The long screw along the bed that drives the carriage when a thread is cut.',
  },
  { word: 'nose, bolted', means: 'The chuck is bolted to a flange on the spindle. It cannot unscrew.' },
  {
    word: 'nose, cam-lock',
    means: 'The chuck is held on the spindle by cams turned with a key. It cannot unscrew.',
  },
  {
    word: 'nose, screwed',
    also: ['threaded spindle'],
    means: 'The chuck screws on the spindle. In reverse or in hard braking it can come off.',
  },
  { word: 'saddle', means: 'The part of the carriage that lies across the bed and carries the cross slide.' },
  { word: 'swing', means: 'The largest diameter that turns clear of the bed.' },
  {
    word: 'tailstock',
    means: 'The part at the right end of the bed. It holds a drill or steadies long work.',
  },
  { word: 'travel', means: 'How far a slide can move from end to end.' },
  {
    word: 'tunnel',
    means:
      'The space under the cross slide in which its screw and nut lie. Its height decides what nut fits.',
  },
];

const drive: readonly Word[] = [
  {
    word: 'ball screw',
    means:
      'A screw whose nut rolls on balls: little friction, little play. It does not hold still by itself.',
  },
  {
    word: 'closed-loop stepper',
    means: 'A stepper that notices when it has slipped. It stops the machine only if you wire its alarm.',
  },
  { word: 'coupling', means: 'Joins a motor’s shaft to a screw, end to end.' },
  {
    word: 'end block',
    also: ['bearing block', 'screw support'],
    means: 'Holds the end of a screw. One end takes the push; the other only keeps the screw straight.',
  },
  {
    word: 'grub screw',
    also: ['set screw'],
    means: 'A small screw without a head that clamps a hub to a shaft. On a round shaft it creeps.',
  },
  { word: 'lead', means: 'How far a nut moves for one turn of its screw.' },
  {
    word: 'microstep',
    means: 'A finer electrical division of a step. It makes a motor smoother, hardly more accurate.',
  },
  { word: 'open-loop stepper', means: 'A motor that moves in steps and does not notice when one is missed.' },
  {
    word: 'play',
    also: ['backlash', 'lash'],
    means: 'The free movement when direction is reversed, before anything moves.',
  },
  { word: 'preload', means: 'Taking play out with a spring, a second nut or slightly larger balls.' },
  {
    word: 'pulley, 1:1',
    means:
      'Two equal pulleys: both shafts turn at the same speed. A 2:1 pair halves the speed and doubles the force.',
  },
  { word: 'pull-out torque', means: 'The most a stepper can give at a speed before it slips.' },
  { word: 'servo', means: 'A motor that measures where it is and corrects itself all the time.' },
  { word: 'step and direction', means: 'Two wires that say: move one step, and this way.' },
  {
    word: 'thread synchroniser',
    also: ['electronic lead screw'],
    means:
      'A box that turns the lead screw in step with the spindle, in place of change gears. You still turn by hand.',
  },
];

const electrics: readonly Word[] = [
  {
    word: 'breaker',
    also: ['circuit breaker'],
    means: 'Switches a circuit off when too much current flows. It protects the cable, not you.',
  },
  {
    word: 'contactor',
    means: 'A strong switch worked by a small current. In a stop circuit it takes the power away.',
  },
  { word: 'drive', also: ['driver', 'amplifier'], means: 'The box between the control and a motor.' },
  {
    word: 'earth',
    also: ['ground'],
    means: 'The conductor that carries a fault safely away. British: earth. American: ground.',
  },
  {
    word: 'line driver',
    means:
      'An output that sends each signal on two wires, one the opposite of the other. It keeps noise out.',
  },
  {
    word: 'mains',
    also: ['line', 'utility supply'],
    means: 'The supply from the wall, 120 V or 230 V. British: mains. American: line.',
  },
  {
    word: 'no-volt release',
    also: ['no-voltage switch', 'magnetic switch'],
    means: 'Drops out when the power fails, so that the machine does not start by itself when it returns.',
  },
  {
    word: 'ramp',
    means: 'Slowing down or speeding up evenly over a set time instead of all at once.',
  },
  { word: 'relay', means: 'A switch worked by a current in a coil.' },
  {
    word: 'residual-current device',
    also: ['ground-fault device', 'RCD', 'GFCI'],
    means: 'Switches off when current leaks to earth. British: residual-current. American: ground-fault.',
  },
  {
    word: 'safe-off input',
    also: ['safe torque off', 'STO'],
    means:
      'A wired input of some drives that takes the force from the motor without a computer. It does not brake, and parts inside stay live.',
  },
  {
    word: 'screened cable',
    also: ['shielded cable'],
    means:
      'Cable wrapped in braid or foil that keeps electrical noise in or out. British: screened. American: shielded.',
  },
  {
    word: 'sinking and sourcing',
    also: ['NPN and PNP'],
    means:
      'Whether a sensor switches the return side or the supply side. The input must suit the sensor, or it never reacts.',
  },
  {
    word: 'stop by coasting',
    also: ['stop category 0'],
    means: 'Power is taken away at once and the machine runs down by itself.',
  },
  {
    word: 'stop by ramp, then power off',
    also: ['stop category 1'],
    means: 'The drive brakes first, then a timer takes the power away.',
  },
  {
    word: 'stop circuit',
    also: ['stop chain', 'emergency stop'],
    means: 'Everything that must lose power when the red button is hit.',
  },
  {
    word: 'three-phase drive',
    also: ['inverter', 'variable-frequency drive', 'VFD'],
    means: 'A box that lets a three-phase motor run at any speed from a household supply.',
  },
  { word: 'watchdog', means: 'Removes power when the computer stops sending its heartbeat.' },
];

const sensing: readonly Word[] = [
  { word: 'encoder', means: 'A sensor that counts how far and which way a shaft has turned.' },
  { word: 'home switch', means: 'The place from which the machine counts.' },
  {
    word: 'index pulse',
    also: ['one mark a turn'],
    means: 'A signal once every turn. It tells the control where a thread starts.',
  },
  { word: 'limit switch', means: 'Stops a slide before it reaches the end of its travel.' },
  { word: 'lines', means: 'Marks on an encoder. A control counts four edges for each line.' },
  { word: 'quadrature', means: 'Two counting signals a quarter apart. Together they tell direction.' },
  {
    word: 'readout',
    also: ['digital readout', 'DRO'],
    means: 'Scales on the slides with a display that shows where the tool is. Nothing is driven.',
  },
  { word: 'soft limit', means: 'A fence that the control keeps in its head once it knows where home is.' },
];

const using: readonly Word[] = [
  { word: 'air cut', means: 'Running a program with no work in the chuck, to see where the tool goes.' },
  { word: 'bar puller', means: 'A gripper in the tool post that pulls the bar out for the next part.' },
  { word: 'collet', means: 'A split sleeve that grips round stock evenly and quickly.' },
  { word: 'dead stop', means: 'A fixed stop inside the spindle that every blank is pushed against.' },
  {
    word: 'diameter mode',
    means:
      'X is written as a diameter: X10 makes a part 10 mm across, and the slide stands 5 mm from the axis.',
  },
  { word: 'feed', also: ['feed per revolution'], means: 'How far the tool moves for one turn of the work.' },
  {
    word: 'gang tools',
    means: 'Several tools bolted in a row on the cross slide. Moving the slide changes the tool.',
  },
  { word: 'nose radius', means: 'How round the tip of a tool is. It matters on tapers and curves.' },
  {
    word: 'parting',
    also: ['cutting off'],
    means: 'Cutting the finished part from the bar with a narrow blade.',
  },
  { word: 'run-out', means: 'How much something that should run true wobbles.' },
  { word: 'swarf', also: ['chips'], means: 'What is cut off. British: swarf. American: chips.' },
  { word: 'tool offset', means: 'Where the tip of one tool lies, compared with the first one.' },
  {
    word: 'tool post',
    means: 'Holds the tool on the slide. A quick-change post takes holders that keep their height.',
  },
];

const money: readonly Word[] = [
  {
    word: 'bare parts',
    means: 'What people quote when asked what it cost: parts only, without tools, freight, tax or mishaps.',
  },
  {
    word: 'build',
    means: 'One of the ways that a path could turn out. There are 20 on a rod, all equally likely.',
  },
  { word: 'duty', also: ['customs duty', 'tariff'], means: 'What your country takes on goods from abroad.' },
  { word: 'hold point', means: 'A point in the work where you go on only when everything in it is true.' },
  { word: 'landed price', means: 'What a thing costs at your door: price, freight, tax and duty.' },
  {
    word: 'likely',
    means:
      'What a careful person would expect. More than half of all lines cost more, so the total lies above the sum of them.',
  },
  {
    word: 'make-first list',
    means: 'Parts that the lathe must cut while it still can, before it is taken apart.',
  },
  { word: 'path', also: ['plan'], means: 'One whole set of answers.' },
  { word: 'reference', means: 'The set of answers that others are compared with. It is not advice.' },
  { word: 'typical', means: 'The middle of all the ways it could turn out.' },
  {
    word: 'VAT',
    also: ['value-added tax', 'sales tax'],
    means: 'Tax on what you buy. On imports it is charged on goods, freight and duty together.',
  },
];

/** The words by where they are met; each group in alphabetical order. */
export const glossary: readonly { readonly title: string; readonly words: readonly Word[] }[] = [
  { title: 'The lathe', words: machine },
  { title: 'Screws, belts and motors', words: drive },
  { title: 'Electrics and the stop circuit', words: electrics },
  { title: 'Sensors', words: sensing },
  { title: 'Turning by program', words: using },
  { title: 'Money and this site', words: money },
];
