import type { SizeClass } from '../calc/core/machine.ts';
import type { Path } from '../calc/core/path.ts';

/** A path worked right through, for the method page, the tests and comparison. Not a recommendation. */
export interface NamedPath {
  readonly id: string;
  readonly name: string;
  readonly story: string;
  readonly path: Path;
}

const EDITION = '2026-12';

type Said = Readonly<Record<string, string | readonly string[]>>;

/** Reference answers to every question of the guide that the reference path asks. */
const reference: Said = {
  purpose: 'repeat-batches',
  'thread-kinds': 'metric-threads',
  'which-lathe': 'only-lathe',
  condition: 'measured-good',
  'hand-use': 'electronic-handwheels',
  'driven-axes': 'both-slides',
  'order-of-work': 'all-at-once',
  brackets: 'made-on-this-lathe',
  buying: 'mixed-sellers',
  stand: 'existing-bench',
  'shop-tools': 'have-shop-tools',
  'old-parts': 'keep-old-parts',
  'carriage-drive': 'ball-screw-front',
  'carriage-nut': 'rolled-single-nut',
  'carriage-screw-ends': 'bought-end-blocks',
  'carriage-screw-machining': 'seller-pattern-ends',
  'carriage-coupling': 'carriage-belt-2-1',
  apron: 'strip-apron',
  'old-feeds': 'remove-old-feeds',
  'power-off-hold': 'slide-may-creep',
  'cross-screw': 'ball-screw-12',
  'cross-nut': 'cross-oversize-balls',
  'cross-motor-place': 'front-belt',
  'cross-screw-hold': 'bought-cross-block',
  compound: 'riser-block',
  'tool-holding': 'quick-change-post',
  'work-holding': 'jaw-chuck',
  'bar-feed': 'cut-blanks',
  holes: 'tailstock-by-hand',
  'tool-offsets': 'cut-and-measure',
  'axis-motor': 'closed-loop-stepper',
  'motor-size': 'face-57-both',
  drives: 'separate-drives',
  'motor-supply': 'enclosed-supply',
  control: 'motion-card-pc',
  'operator-panel': 'pendant-and-buttons',
  'program-making': 'fill-in-forms',
  'machines-served': 'one-machine',
  'spindle-motor': 'three-phase-drive',
  'speed-command': 'speed-by-voltage',
  reversing: 'forward-and-reverse',
  'spindle-sensor': 'encoder-1000-up',
  'sensor-place': 'spindle-belt',
  'stop-circuit': 'cuts-power',
  'spindle-stop': 'ramp-then-cut',
  'chuck-guard': 'shield-with-switch',
  watchdog: 'heartbeat-relay',
  'old-switchgear': 'replace-switchgear',
  'home-limits': 'home-switches',
  cable: 'screened-cable',
  housing: 'steel-cabinet',
  'supply-circuit': 'existing-outlet',
  'chips-and-coolant': 'dry-or-brushed',
  'way-covers': 'bellows',
  lubrication: 'oil-can',
};

/** A path from the reference answers with some of them changed; `null` leaves a question unanswered. */
export function pathOf(
  changes: Readonly<Record<string, string | readonly string[] | null>>,
  size: SizeClass = 'medium',
  rest: Partial<Path> = {},
): Path {
  const said = Object.entries({ ...reference, ...changes }).filter(([, answer]) => answer !== null);
  const answers = Object.fromEntries(
    said.map(([id, answer]) => [id, typeof answer === 'string' ? [answer] : answer!]),
  );
  return { edition: EDITION, size, facts: {}, answers, owned: [], ...rest };
}

export const referencePaths: readonly NamedPath[] = [
  {
    id: 'reference',
    name: 'Reference path',
    story:
      'Ball screws on both slides, closed-loop steppers, a PC with a motion card, a three-phase spindle motor on a drive.',
    path: pathOf({}),
  },
  {
    id: 'thread-synchroniser-with-cross-feed',
    name: 'Thread synchroniser with power cross feed',
    story:
      'Motors on the lead screw and the cross slide, hand cranks kept, threads of any pitch, no programs.',
    path: pathOf({
      purpose: 'thread-cutting',
      'thread-kinds': ['metric-threads', 'inch-threads'],
      'hand-use': 'hand-cranks',
      'carriage-drive': 'original-lead-screw',
      'carriage-coupling': 'carriage-direct',
      apron: 'keep-apron',
      'old-feeds': 'disable-old-feeds',
      'cross-screw': 'original-cross-screw',
      'cross-nut': null,
      'cross-motor-place': 'front-direct',
      'cross-screw-hold': 'original-bracket',
      compound: 'keep-compound',
      'tool-holding': 'four-way-block',
      'axis-motor': 'open-loop-stepper',
      control: 'thread-synchroniser',
      'spindle-motor': 'keep-single-phase',
      'speed-command': 'speed-by-knob',
      reversing: 'forward-only',
      'spindle-stop': 'coast-to-stop',
      'home-limits': 'no-homing',
      housing: 'plastic-box',
    }),
  },
  {
    id: 'frugal',
    name: 'Frugal',
    story:
      'Open-loop steppers, an old PC with a parallel port, the speed-knob motor it came with, a slotted disc for threads.',
    path: pathOf({
      'carriage-coupling': 'carriage-belt-1-1',
      compound: 'keep-compound',
      'axis-motor': 'open-loop-stepper',
      control: 'parallel-port-pc',
      'spindle-motor': 'keep-speed-knob',
      reversing: 'forward-only',
      'spindle-sensor': 'slotted-disc',
      housing: 'plastic-box',
    }),
  },
  {
    id: 'standalone',
    name: 'Standalone control',
    story: 'A lathe control with its own panel instead of a PC, and a brushless spindle motor.',
    path: pathOf({ control: 'standalone-control', 'spindle-motor': 'brushless-kit' }),
  },
  {
    id: 'stiff-small-batch',
    name: 'Stiff small-batch machine',
    story:
      'Preloaded nuts in made bearing blocks, gang tools on a slotted slide, collets, mains servos, a watched stop circuit.',
    path: pathOf({
      'carriage-nut': 'rolled-preloaded-nut',
      'carriage-screw-ends': 'made-angular-block',
      'cross-screw-hold': 'made-cross-block',
      compound: 'slotted-slide-plate',
      'tool-holding': 'gang-tools',
      'work-holding': 'spring-collets',
      holes: 'drill-in-tool-post',
      'axis-motor': 'mains-servo',
      'motor-supply': 'mains-direct',
      'operator-panel': 'handwheel-panel',
      'spindle-motor': 'servo-spindle',
      'home-limits': 'home-and-motor-mark',
      'stop-circuit': 'cuts-power-watched',
      brackets: 'ordered-to-drawing',
      lubrication: 'one-shot-oiler',
      'supply-circuit': 'new-circuit',
    }),
  },
];
