import type { Decision, Option } from '../../core/decision.ts';

const panels: readonly Option[] = [
  {
    id: 'keyboard-and-mouse',
    label: 'Keyboard and mouse only',
    means: 'What the PC came with, plus one real feed-hold button.',
    gains: 'Nearly free.',
    wrong:
      'A stuck key is a slide that does not stop, and a mouse beside a chuck is a hazard. Chips in the keys are the early sign.',
    skill: 1,
  },
  {
    id: 'pendant-and-buttons',
    label: 'Hand pendant and a few buttons',
    means: 'A small box on a cable with a clicking wheel, and real buttons for start, hold and feed.',
    gains: 'You stand where you can see the tool, with one hand free.',
    wrong: 'The cable snags. Cheap wheels lose clicks: the slide stops following in even steps.',
    skill: 2,
  },
  {
    id: 'handwheel-panel',
    label: 'Panel with two electronic handwheels',
    means: 'Two wheels that feel like the old ones but drive the motors, with switches for steps and axis.',
    gains: 'Quick jobs stay quick, and the soft limits still hold.',
    wrong: 'It takes two counters and about ten inputs. A wheel scaled wrongly feels like steering a boat.',
    skill: 3,
    needs: 'A control with the counters to spare, and a panel to cut out.',
  },
  {
    id: 'touch-screen',
    label: 'Touch screen, with a real hold button',
    means: 'A screen on an arm that you press, and one feed-hold button that you can feel.',
    gains: 'Compact; nothing on the bench.',
    wrong: 'Oily fingers, no feel, and you look at it instead of at the tool.',
    skill: 2,
  },
];

const programs: readonly Option[] = [
  {
    id: 'typed-programs',
    label: 'Programs typed by hand',
    means: 'You write each move as a line of code (G-code), from a template.',
    gains: 'You understand and control every move.',
    wrong:
      'Diameter taken for radius, and arcs that turn the wrong way, cost the first parts. A mirrored air cut is the sign.',
    skill: 2,
    needs: 'Some evenings of learning.',
  },
  {
    id: 'fill-in-forms',
    label: 'Fill-in forms on the control',
    means:
      'Screens that ask for start, end, depth and pitch, and make the moves themselves (conversational cycles).',
    gains: 'The first thread or taper in an hour.',
    wrong: 'Only the shapes that the forms know. You notice on the first curved part.',
    skill: 1,
    needs: 'A control that has them.',
  },
  {
    id: 'drawing-to-path',
    label: 'From a drawing, by a program (CAM)',
    means: 'You draw the part on a computer, and software works out the moves for your control.',
    gains: 'Any profile.',
    wrong:
      'Turning may cost a yearly fee. The translator to your control (post-processor) is often wrong for threads: read its output before the first cut.',
    skill: 3,
    needs: 'A translator set up and proved for your control.',
  },
];

export const handDecisions: readonly Decision[] = [
  {
    id: 'operator-panel',
    subsystem: 'control',
    place: 'guide',
    name: 'Operator panel',
    ask: 'What does the operator touch?',
    why: 'Turning takes two hands and both eyes. What must stop it belongs under a finger, not in a menu.',
    thumb:
      'Real buttons for emergency stop, cycle start, feed hold and feed rate, and a wheel to jog with. The rest is taste.',
    assume: ['pendant-and-buttons', 'keyboard-and-mouse', 'handwheel-panel', 'touch-screen'],
    assumeWhy: 'Until you choose we plan with a pendant and a few buttons.',
    open: 'options',
    options: panels,
  },
  {
    id: 'program-making',
    subsystem: 'control',
    place: 'guide',
    name: 'Making programs',
    ask: 'How are programs made?',
    why: 'This is the hidden cost of every week after the build. It is also what decides whether you use the machine.',
    thumb: 'Fill-in forms and a few typed lines cover about 16 of 20 jobs on a lathe.',
    assume: ['fill-in-forms', 'typed-programs', 'drawing-to-path'],
    assumeWhy: 'Until you choose we plan with fill-in forms, the shortest way to a first part.',
    open: 'options',
    options: programs,
  },
];
