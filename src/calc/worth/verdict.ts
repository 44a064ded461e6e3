import { compile, type Test } from '../choices/state.ts';
import { all, any, is, not, only } from '../core/condition.ts';
import { type Known, round } from './known.ts';
import { hourValues } from './payback.ts';
import { piecesOf } from './saved.ts';
import { dollars, type Sentence, say } from './sentence.ts';

/** What we would do, with conditions and numbers in the sentences. `answer` is an alternative's id or "conversion". */
export interface WorthVerdict {
  readonly id: string;
  readonly answer: string;
  readonly weight: 'go' | 'think' | 'do-not';
  readonly say: readonly Sentence[];
}

const WORN = compile(all(is('condition', 'worn-bed'), not(is('purpose', 'learning'))));
const NOBODY_WIRES = compile(is('who-wires', 'nobody-wires'));
const TRAINING = compile(is('which-lathe', 'dead-training-machine'));
const THREADS = compile(
  all(is('purpose', 'thread-cutting'), only('purpose', 'thread-cutting', 'one-off-repairs')),
);
const SINGLE = compile(only('purpose', 'one-off-repairs'));
const LEARNING = compile(is('purpose', 'learning'));
const ONLY_LATHE = compile(is('which-lathe', 'only-lathe'));
const HARD_SHAPES = compile(any(is('purpose', 'profiles', 'thread-cutting')));

/** Years over which an owner is asked to look ahead. */
const AHEAD = 5;

/** The ten ways in the middle of the twenty: from the sixth to the fifteenth. */
const [FROM, TO] = [5, 14];

/** The dearest of the hours that are set side by side. */
const DEARER_HOUR = hourValues[hourValues.length - 1]!;

/** What it takes, as a range and never as one figure. */
const effort = ({ money, hours }: Known): Sentence =>
  say`In half of the ways it takes ${dollars(money.twenty[FROM]!)} to ${dollars(money.twenty[TO]!)} and ${round(hours.twenty[FROM]!)} to ${round(hours.twenty[TO]!)} hours`;

/** Pay-back in words, at the dearer hour: without the building and with it. */
function backIn({ payback, saved, families }: Known): Sentence[] {
  if (!saved || families.length === 0)
    return [say`Say what you make and how often, and this answers in years.`];
  const at = (counts: boolean) =>
    payback.find((each) => each.perHour === DEARER_HOUR && each.buildingCounts === counts);
  const years = (counts: boolean): string => {
    const typical = at(counts)?.typical;
    return typical === undefined ? 'never' : `after about ${round(typical)} years`;
  };
  if (payback.length === 0) return [];
  return [
    say`It saves about ${round(saved.p50)} hours a year. With an hour at ${dollars(DEARER_HOUR)} it has paid for itself ${years(false)} if the building counts as free, ${years(true)} if it counts.`,
  ];
}

const allPlain = ({ families }: Known): boolean =>
  families.length > 0 && families.every(({ shape }) => shape === 'plain');

/** Buying for years costs less money than converting, and the hours do not come back in that time either. */
function sendOut({ families, money, hours, saved, outside, hobby }: Known): boolean {
  if (hobby || !saved || families.length === 0) return false;
  const pieces = families.reduce((sum, family) => sum + piecesOf(family), 0);
  const bought = outside > 0 ? outside * AHEAD < money.p50 : pieces < 30;
  return bought && saved.p50 * AHEAD < hours.p50;
}

interface Case {
  readonly id: string;
  readonly answer: string;
  readonly weight: WorthVerdict['weight'];
  readonly when: (known: Known) => boolean;
  readonly say: (known: Known) => readonly Sentence[];
}

const on =
  (test: Test) =>
  ({ present }: Known): boolean =>
    test(present.planned.state);

const cases: readonly Case[] = [
  {
    id: 'do-not-convert',
    answer: 'second-lathe',
    weight: 'do-not',
    when: on(WORN),
    say: (known) => [
      say`We would not convert this lathe: wear over 0.05 mm near the chuck moves with the carriage, and no control can set it out.`,
      say`${effort(known)}, and the parts would come out no rounder than now. A lathe with a sound bed is the first step.`,
    ],
  },
  {
    id: 'get-help-first',
    answer: 'conversion',
    weight: 'think',
    when: on(NOBODY_WIRES),
    say: (known) => [
      say`Find somebody who can and may do the mains wiring before you buy anything.`,
      say`${effort(known)}.`,
    ],
  },
  {
    id: 'training-machine',
    answer: 'training-machine',
    weight: 'go',
    when: on(TRAINING),
    say: (known) => [
      say`If the slides and the spindle prove sound before you pay, the training machine is the most lathe for the money: screws, mounts and guards are there.`,
      say`${effort(known)}, the machine among it.`,
    ],
  },
  {
    id: 'thread-synchroniser',
    answer: 'thread-synchroniser',
    weight: 'think',
    when: on(THREADS),
    say: (known) => [
      say`A full conversion is more than you need. If you change pitch about once a month or more, a thread synchroniser on the lead screw does it; if less often, change gears do it for a small part of the money.`,
      say`${effort(known)} the way it is planned here.`,
    ],
  },
  {
    id: 'alternatives-first',
    answer: 'readout',
    weight: 'think',
    when: on(SINGLE),
    say: (known) => [
      say`For single parts a readout and stops give most of what you would gain, for far less money and a weekend.`,
      say`${effort(known)} to convert, and each part would still want a program of its own.`,
    ],
  },
  {
    id: 'send-out',
    answer: 'send-out',
    weight: 'think',
    when: sendOut,
    say: (known) => [
      say`${effort(known)}, and would save about ${round(Math.max(0, known.saved?.p50 ?? 0))} hours a year: in ${AHEAD} years neither the hours nor the money are back. Send these parts out, unless you want to build.`,
    ],
  },
  {
    id: 'turret-first',
    answer: 'tailstock-turret',
    weight: 'think',
    when: (known) => allPlain(known) && !on(HARD_SHAPES)(known) && !on(LEARNING)(known),
    say: (known) => [
      say`Your parts are drilled, turned and parted off: a tailstock turret with a lever collet and stops saves about ${round(0.75 * Math.max(0, known.saved?.p50 ?? 0))} of the ${round(Math.max(0, known.saved?.p50 ?? 0))} hours a year, for far less money and a few weekends.`,
      say`${effort(known)} to convert; do that if curves or threads come along.`,
    ],
  },
  {
    id: 'convert-for-the-building',
    answer: 'conversion',
    weight: 'go',
    when: on(LEARNING),
    say: (known) => [
      say`${effort(known)}. If those are hours you want to spend, they are what you buy, at about ${dollars(known.money.p50 / known.hours.p50)} an hour; no pay-back is worked out.`,
    ],
  },
  {
    id: 'convert-in-stages',
    answer: 'conversion',
    weight: 'go',
    when: on(ONLY_LATHE),
    say: (known) => [
      say`A fair case if the work goes on for years, and in stages: the carriage first, every turned part on the shelf before the only lathe is stripped, and a machine that works at every stopping point.`,
      say`${effort(known)}.`,
      ...backIn(known),
    ],
  },
  {
    id: 'convert-conditional',
    answer: 'conversion',
    weight: 'go',
    when: () => true,
    say: (known) => [
      say`A sound case if the parts have several diameters, curves or threads and the work goes on for four years or more; for drill, turn and part off, look at a tailstock turret first.`,
      say`${effort(known)}.`,
      ...backIn(known),
    ],
  },
];

/** The first case that holds; the last one always does. */
export function verdictFor(known: Known): WorthVerdict {
  const found = cases.find((each) => each.when(known))!;
  const { id, answer, weight } = found;
  return { id, answer, weight, say: found.say(known) };
}
