/** The nine topics of the quick sheet: each takes a few questions of the guide or facts of the lathe together. */
export interface QuickGroup {
  readonly ask: string;
  readonly why: string;
  readonly decisions: readonly string[];
}

export const nine: readonly QuickGroup[] = [
  {
    ask: 'What is it for?',
    why: 'If no work asks for a program, something smaller will do.',
    decisions: ['purpose', 'thread-kinds'],
  },
  {
    ask: 'Which lathe?',
    why: 'The only lathe in the shop has to make its own parts before it comes apart.',
    decisions: ['which-lathe'],
  },
  {
    ask: 'What condition is it in?',
    why: 'Motors follow a worn bed as faithfully as hands do.',
    decisions: ['condition'],
  },
  {
    ask: 'How much hand use must survive?',
    why: 'It decides which old parts stay and how much of the work can be taken back.',
    decisions: ['hand-use'],
  },
  {
    ask: 'What is there already?',
    why: 'Tools in the drawer cost nothing, and the outlet decides what may be plugged in.',
    decisions: ['shop-tools', 'who-wires', 'mains-supply', 'ground-fault-device'],
  },
  {
    ask: 'Which screws?',
    why: 'The screws and their fitting are the largest part of the mechanical work.',
    decisions: ['driven-axes', 'carriage-drive', 'cross-screw'],
  },
  {
    ask: 'Tools, work and holes',
    why: 'Holding can cost as much as the whole control.',
    decisions: ['tool-holding', 'work-holding', 'holes'],
  },
  { ask: 'Which control?', why: 'It decides whether threads come out, and how.', decisions: ['control'] },
  {
    ask: 'Which spindle?',
    why: 'Threads need the angle of the spindle; the motor decides wiring and noise.',
    decisions: ['spindle-motor', 'spindle-sensor'],
  },
];
