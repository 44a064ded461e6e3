import { blocksOf } from '../choices/blocks.ts';
import type { Status } from '../choices/choose.ts';
import type { Option } from '../core/decision.ts';
import { figure } from '../core/machine.ts';
import { decisions } from '../guide.ts';
import type { Block } from '../report.ts';
import { answerDifference } from './answer-difference.ts';
import { type PerKind, perKind, type SwingKind } from './measures-of-total.ts';
import { answerWith } from './one-change.ts';
import { asIfAllowed, otherwise, standingAt } from './otherwise.ts';
import type { Present } from './present.ts';
import { differenceFor, hoursOutFor } from './strip.ts';

/** One end of a bar: an answer and what it typically adds to the path as it is; below zero: less. */
export interface SwingEnd {
  readonly option: string;
  readonly by: number;
  /** The rules forbid it beside the other answers, for these reasons: a hollow end. */
  readonly blocked: Block['reasons'];
}

export interface Bar {
  /** The allowed answer that takes least and the one that takes most; the present answer is at nothing. */
  readonly least: SwingEnd;
  readonly most: SwingEnd;
  /** Forbidden answers that would lie farther out, if the rules let them. */
  readonly blockedLeast: SwingEnd | undefined;
  readonly blockedMost: SwingEnd | undefined;
}

/** A choice still open or changeable. */
export interface ChoiceSwing extends PerKind<Bar> {
  readonly decision: string;
  readonly status: Status;
  readonly now: readonly string[];
}

interface Tried {
  readonly option: string;
  readonly by: PerKind<number>;
  readonly blocked: Block['reasons'];
  readonly allowed: boolean;
}

const HUNDREDTHS = 100;

function tried(present: Present, at: number, option: Option, blocks: readonly Block[]): Tried | undefined {
  const answer =
    option.incomplete === undefined
      ? answerWith(decisions[at]!, standingAt(present, at), option.id)
      : undefined;
  if (!answer) return undefined;
  const blocked = blocks.find((block) => block.option === option.id)?.reasons ?? [];
  const allowed = blocked.length === 0 ? otherwise(present, at, answer) : undefined;
  if (!allowed && blocked.length === 0) return undefined;
  const slices = allowed?.slices ?? asIfAllowed(present, at, answer);
  const { money, hours } = allowed
    ? answerDifference(present, at, answer, slices)
    : differenceFor(present, slices);
  const perWeek = figure(present.machine, 'hours-per-week') * HUNDREDTHS;
  const weeks = hoursOutFor(present, slices, perWeek);
  return {
    option: option.id,
    by: { money: money.p50, hours: hours.p50, weeks: weeks.p50 },
    blocked,
    allowed: allowed !== undefined,
  };
}

function barOf(all: readonly Tried[], now: string, kind: SwingKind): Bar {
  const ends = all.map(({ option, by, blocked, allowed }) => ({ option, by: by[kind], blocked, allowed }));
  const least = (from: readonly SwingEnd[], start: SwingEnd): SwingEnd =>
    from.reduce((a, b) => (b.by < a.by ? b : a), start);
  const most = (from: readonly SwingEnd[], start: SwingEnd): SwingEnd =>
    from.reduce((a, b) => (b.by > a.by ? b : a), start);
  const plain = ({ option, by, blocked }: SwingEnd): SwingEnd => ({ option, by, blocked });
  const standing: SwingEnd = { option: now, by: 0, blocked: [] };
  const allowed = ends.filter((end) => end.allowed);
  const hollow = ends.filter((end) => !end.allowed);
  const low = plain(least(allowed, standing));
  const high = plain(most(allowed, standing));
  const farLow = least(hollow, low);
  const farHigh = most(hollow, high);
  return {
    least: low,
    most: high,
    blockedLeast: farLow.blocked.length > 0 ? plain(farLow) : undefined,
    blockedMost: farHigh.blocked.length > 0 ? plain(farHigh) : undefined,
  };
}

const widthOf = ({ least, most }: Bar): number => most.by - least.by;

/** Every question of the guide that arises, with its bars; the widest in money first. */
export function choiceSwings(present: Present): ChoiceSwing[] {
  const { state, status } = present.planned;
  const swings = decisions.flatMap((decision, at): ChoiceSwing[] => {
    if (decision.place !== 'guide' || status[at] === 'not-asked') return [];
    const blocks = blocksOf(state, status, at);
    const all = decision.options.flatMap((option) => tried(present, at, option, blocks) ?? []);
    const now = standingAt(present, at);
    const bars = perKind((kind) => barOf(all, now[0] ?? '', kind));
    return [{ decision: decision.id, status: status[at]!, now, ...bars }];
  });
  return swings.sort((a, b) => widthOf(b.money) - widthOf(a.money));
}
