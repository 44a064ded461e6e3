import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, chosen, type Quantity } from '../../core/quantity.ts';
import { differenceOf, productOf } from '../../core/steps.ts';
import { encoderEdgeRate } from '../../formulas/spindle.ts';
import { threadDepth, threadFeed, threadInfeed, threadRunUp } from '../../formulas/thread.ts';
import { threadLeadError, threadLeadErrorTracked } from '../../formulas/thread-error.ts';

/** Whether threads are cut with the help of the control. */
export const cutsThreads = (look: Look): boolean =>
  look.figure('sensor-lines') !== undefined &&
  (look.chosen('purpose', 'thread-cutting') ||
    look.chosen('control', 'thread-synchroniser') ||
    look.chosen(
      'thread-kinds',
      'metric-threads',
      'inch-threads',
      'left-hand-threads',
      'internal-threads',
      'multi-start-threads',
    ));

/** Controls that follow one mark a turn however many lines the sensor has, until their manual says more. */
export const followsMark = (look: Look): boolean =>
  look.chosen('spindle-sensor', 'one-mark-a-turn') ||
  look.chosen('control', 'desktop-with-controller', 'small-board');

const onlyIf = (
  when: (look: Look) => boolean,
  of: (look: Look) => Quantity | undefined,
): ((look: Look) => Quantity | undefined) => {
  return (look) => (when(look) ? of(look) : undefined);
};

const threaded = (of: (look: Look) => Quantity | undefined) => onlyIf(cutsThreads, of);

/** Share by which the spindle slows in a threading cut; from memory of the trade. */
const sags: Readonly<Record<string, number>> = {
  'keep-speed-knob': 0.1,
  'keep-single-phase': 0.04,
  'three-phase-drive': 0.03,
  'doubler-drive': 0.03,
  'brushless-kit': 0.02,
  'servo-spindle': 0.002,
};

function sag(look: Look): Quantity | undefined {
  const measured = look.measured('spindle-sag');
  if (measured) return measured;
  const motor = look.option('spindle-motor') ?? '';
  const share = sags[motor];
  return share === undefined
    ? undefined
    : chosen(share, '1', 'spindle-motor', motor, 'from memory of the trade: measure it under a light cut');
}

const leadError = (length: string) => (look: Look) =>
  derive(threadLeadError, { length: look.fact(length), sag: look.figure('spindle-sag') });

const tracked = (look: Look): Quantity | undefined =>
  followsMark(look)
    ? undefined
    : derive(threadLeadErrorTracked, {
        pitch: look.fact('coarsest-thread'),
        lines: look.figure('sensor-lines'),
      });

const runUp = (look: Look, spare: number, speed = look.fact('thread-spindle-speed')) =>
  derive(threadRunUp, {
    pitch: look.fact('coarsest-thread'),
    speed,
    acceleration: look.fact('slide-acceleration'),
    sparePitches: assumed(spare, '1', 'spare turns to fall into step; common practice'),
  });

const pitches = (look: Look, count: number): Quantity | undefined =>
  productOf('m', {
    pitch: look.fact('coarsest-thread'),
    count: assumed(count, '1', 'spare turns to fall into step; common practice'),
  });

/** How much later the carriage starts to follow when the spindle turns 5 % faster than in the pass before. */
const phaseShift = (look: Look): Quantity | undefined =>
  differenceOf(
    runUp(
      look,
      2,
      productOf('rev/s', {
        speed: look.fact('thread-spindle-speed'),
        faster: assumed(1.05, '1', 'the spindle turns 5 % faster in one pass than in another'),
      }),
    ),
    runUp(look, 2),
  );

const depth = (look: Look): Quantity | undefined =>
  derive(threadDepth, { pitch: look.fact('coarsest-thread'), side: 'outside' });

/** Passes for a pitch, the finest first; makers of inserts give about as many. */
const passTable: readonly (readonly [upToPitch: number, passes: number])[] = [
  [0.001, 6],
  [0.0015, 8],
  [0.002, 12],
  [0.0025, 14],
  [0.003, 16],
];

function passes(look: Look): Quantity | undefined {
  const pitch = look.fact('coarsest-thread')?.value;
  if (pitch === undefined) return undefined;
  const count = passTable.find(([upTo]) => pitch <= upTo + 1e-9)?.[1] ?? 20;
  return assumed(count, '1', 'as many as makers of inserts give for the pitch; light lathes take more');
}

const infeed = (look: Look, pick: (each: readonly number[]) => number): Quantity | undefined =>
  derive(threadInfeed, { depth: look.figure('thread-depth'), passes: look.figure('thread-passes') }, pick);

/** How far to feed in for each pass of the coarsest thread, m, first pass first. Spring passes come after. */
export function infeedList(look: Look): Quantity[] {
  const count = look.figure('thread-passes')?.value ?? 0;
  return Array.from({ length: count }, (_, at) => infeed(look, (each) => each[at]!)).filter(
    (each) => each !== undefined,
  );
}

const edges = (look: Look): Quantity | undefined =>
  derive(encoderEdgeRate, {
    lines: look.figure('sensor-lines'),
    speed: look.fact('thread-spindle-speed'),
  });

/** Cutting threads: speeds, room, errors and infeed. */
export const threadFigures: readonly Figure[] = [
  {
    id: 'thread-feed',
    label: 'Carriage speed in the coarsest thread',
    of: threaded((look) =>
      derive(threadFeed, {
        pitch: look.fact('coarsest-thread'),
        speed: look.fact('thread-spindle-speed'),
      }),
    ),
  },
  {
    id: 'thread-run-up-ramp',
    label: 'Way to reach the speed of the thread',
    of: threaded((look) => differenceOf(runUp(look, 2), pitches(look, 2))),
  },
  {
    id: 'thread-run-up',
    label: 'Room in front of a thread (run-up)',
    of: threaded((look) => runUp(look, 2)),
  },
  { id: 'thread-run-out', label: 'Room behind a thread (run-out)', of: threaded((look) => runUp(look, 1)) },
  {
    id: 'thread-phase-shift',
    label: 'Shift of a thread when the spindle turns 5 % faster in one pass',
    of: onlyIf((look) => cutsThreads(look) && followsMark(look), phaseShift),
  },
  { id: 'spindle-sag', label: 'How much the spindle slows in a threading cut', of: threaded(sag) },
  {
    id: 'thread-error-each-turn',
    label: 'Lead error with one mark a turn, put right every turn',
    of: threaded(leadError('coarsest-thread')),
  },
  {
    id: 'thread-error-whole',
    label: 'Lead error over a thread that nothing puts right',
    of: threaded(leadError('thread-length')),
  },
  {
    id: 'thread-error-tracked',
    label: 'Lead error when the carriage follows the spindle’s angle',
    of: threaded(tracked),
  },
  { id: 'thread-depth', label: 'Depth of the coarsest thread, on one side', of: threaded(depth) },
  { id: 'thread-passes', label: 'Passes for the coarsest thread', of: threaded(passes) },
  {
    id: 'thread-first-infeed',
    label: 'Infeed of the first threading pass',
    of: threaded((look) => infeed(look, (each) => each[0]!)),
  },
  {
    id: 'thread-last-infeed',
    label: 'Infeed of the last threading pass',
    of: threaded((look) => infeed(look, (each) => each.at(-1)!)),
  },
  {
    id: 'encoder-edges-threading',
    label: 'Edges a second from the spindle sensor while threading',
    of: threaded(edges),
  },
];
