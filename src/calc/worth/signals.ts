import { compile, type Test } from '../choices/state.ts';
import { all, is, not, only } from '../core/condition.ts';
import { figure } from '../core/machine.ts';
import { type Known, round } from './known.ts';
import { dollars, type Sentence, say } from './sentence.ts';

/** Something that speaks against converting, with its numbers in the sentence. */
export interface Signal {
  readonly id: string;
  /** stop: we would not. look: think again. */
  readonly level: 'stop' | 'look';
  readonly say: Sentence;
  /** Questions and figures that it rests on, by id; `PARTS` for the parts that were named. */
  readonly rests: readonly string[];
}

/** Stands among what a signal rests on for the families of parts. */
const PARTS = 'parts';

const FEW_JOBS = 5;
const FEW_EVENINGS = 2;
const LONG_YEARS = 6;

const WORN = compile(all(is('condition', 'worn-bed'), not(is('purpose', 'learning'))));
const NOBODY_WIRES = compile(is('who-wires', 'nobody-wires'));
const ONLY_WITH_PEOPLE = compile(
  all(is('which-lathe', 'only-lathe'), is('others-at-machine', 'people-i-employ')),
);
const ONLY_THREADS = compile(
  all(is('purpose', 'thread-cutting'), only('purpose', 'thread-cutting', 'one-off-repairs')),
);
const ONLY_SINGLE = compile(only('purpose', 'one-off-repairs'));
const MORE_THAN_A_MOTOR = compile(not(is('control', 'thread-synchroniser')));

type Speaks = (known: Known) => Sentence | undefined;

const when =
  (test: Test, words: string): Speaks =>
  ({ present }) =>
    test(present.planned.state) ? [words] : undefined;

function fewJobs({ families, hobby }: Known): Sentence | undefined {
  const batches = families.reduce((sum, { batchesPerYear }) => sum + batchesPerYear, 0);
  if (hobby || families.length === 0 || batches >= FEW_JOBS) return undefined;
  return say`${round(batches)} jobs a year that come back are too few: under about ${FEW_JOBS}, stops, a readout or change gears win.`;
}

function fewEvenings({ present, hours }: Known): Sentence | undefined {
  const perWeek = figure(present.machine, 'hours-per-week');
  if (perWeek >= FEW_EVENINGS) return undefined;
  return say`At ${round(perWeek)} hours a week, ${round(hours.p50)} hours of work take ${round(hours.p50 / perWeek / 52)} years; most such builds are never finished.`;
}

function savesNothing({ families, likelySaved, hobby }: Known): Sentence | undefined {
  if (hobby || families.length === 0 || likelySaved > 0) return undefined;
  return say`By your own times the parts take longer by program than by hand.`;
}

function slowReturn({ saved, hours, hobby }: Known): Sentence | undefined {
  if (hobby || !saved || saved.p50 <= 0 || hours.p50 / saved.p50 < LONG_YEARS) return undefined;
  return say`Building takes about ${round(hours.p50)} hours and saves about ${round(saved.p50)} a year: ${round(hours.p50 / saved.p50)} years until the hours alone are back.`;
}

function cheaperOutside({ families, outside, money, hobby }: Known): Sentence | undefined {
  if (hobby || families.length === 0 || outside === 0 || money.p50 / outside < LONG_YEARS) return undefined;
  return say`The same parts cost about ${dollars(outside)} a year outside; the conversion costs ${round(money.p50 / outside)} years of that.`;
}

const signals: readonly { id: string; level: Signal['level']; rests: readonly string[]; speaks: Speaks }[] = [
  {
    id: 'worn-bed',
    level: 'stop',
    rests: ['condition'],
    speaks: when(
      WORN,
      'The bed is worn by more than 0.05 mm near the chuck, or cracked: no control can set that out.',
    ),
  },
  {
    id: 'nobody-wires',
    level: 'stop',
    rests: ['who-wires'],
    speaks: when(NOBODY_WIRES, 'Nobody can do the mains wiring; that comes before any purchase.'),
  },
  {
    id: 'only-lathe-earns',
    level: 'stop',
    rests: ['which-lathe', 'others-at-machine'],
    speaks: when(
      ONLY_WITH_PEOPLE,
      'It is the only lathe and people work with it: it would stand still for months.',
    ),
  },
  {
    id: 'threads-only',
    level: 'look',
    rests: ['purpose', 'control'],
    speaks: ({ present: { planned } }) =>
      ONLY_THREADS(planned.state) && MORE_THAN_A_MOTOR(planned.state)
        ? say`Threads alone need one motor on the lead screw, or change gears.`
        : undefined,
  },
  {
    id: 'single-parts-only',
    level: 'look',
    rests: ['purpose'],
    speaks: when(ONLY_SINGLE, 'Single parts take longer to program than to turn.'),
  },
  { id: 'few-jobs', level: 'look', rests: [PARTS], speaks: fewJobs },
  { id: 'few-evenings', level: 'look', rests: ['hours-per-week'], speaks: fewEvenings },
  { id: 'saves-nothing', level: 'stop', rests: [PARTS], speaks: savesNothing },
  { id: 'slow-return', level: 'look', rests: [PARTS], speaks: slowReturn },
  { id: 'cheaper-outside', level: 'look', rests: [PARTS], speaks: cheaperOutside },
];

/** What speaks against converting here, the gravest first; empty where nothing does. */
export function signalsOf(known: Known): Signal[] {
  const heard = signals.flatMap(({ id, level, rests, speaks }) => {
    const heardNow = speaks(known);
    return heardNow === undefined ? [] : [{ id, level, say: heardNow, rests }];
  });
  return heard.sort((a, b) => Number(a.level === 'look') - Number(b.level === 'look'));
}
