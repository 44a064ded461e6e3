import { compile, decisionPosition, type State, type Test } from '../../choices/state.ts';
import { type Condition, decisionsIn, is, isNot, not } from '../../core/condition.ts';
import type { Look } from '../../core/figure.ts';
import { decisions } from '../../guide.ts';
import { conditionsOfTask, workAt } from '../../schedule/work.ts';
import { checkRules, tasks } from '../../trade.ts';
import { castingTasks, countedMargin, ENOUGH, type Limit, marginChecks } from './limits.ts';
import { remembered, type Settling, Waits } from './remembered.ts';

/** Whether a way may go on, and the margin it cannot exceed; or which question it waits on. */
export interface Said {
  readonly allowed: boolean;
  readonly margin: number;
}

export type Judgement = () => Said | Waits;

const FINE: Said = { allowed: true, margin: ENOUGH };
const REFUSED: Said = { allowed: false, margin: 0 };

/** A test that looks at answers only, told once all of them are settled. */
function onAnswers(
  { state, variableAt, settled }: Settling,
  positions: readonly number[],
  test: (state: State) => boolean,
): Judgement {
  const watched = positions.filter((at) => variableAt[at] !== -1);
  return () => {
    for (const at of watched) if (settled[variableAt[at]!] === 0) return new Waits(at);
    return test(state) ? FINE : REFUSED;
  };
}

const onCondition = (settling: Settling, condition: Condition): Judgement =>
  onAnswers(settling, decisionsIn(condition).map(decisionPosition), compile(condition));

const hands = is('hand-use', 'electronic-handwheels', 'hand-cranks', 'fully-reversible');
const spindleRead = isNot('spindle-sensor', 'no-sensor');
const carriageDriven = not(is('driven-axes', 'cross-slide-only'));
const drillsUnderPower = is('holes', 'drill-in-tool-post', 'motor-tailstock');

/** One judgement for each task that must not be in the plan. */
const withoutTasks = (settling: Settling, unwanted: (at: number) => boolean): Judgement[] =>
  tasks.flatMap((_, at) => {
    if (!unwanted(at)) return [];
    const positions = conditionsOfTask[at]!.flatMap(decisionsIn).map(decisionPosition);
    return [onAnswers(settling, positions, (state) => workAt(at, state).times === 0)];
  });

const tooHard = (at: number, most: number): Test => {
  const hard = decisions[at]!.options.reduce(
    (bits, { skill }, bit) => (skill > most ? bits | (1 << bit) : bits),
    0,
  );
  return (state) => (state.masks[at]! & hard) === 0;
};

const onLook = (settling: Settling, say: (look: Look) => Said): Judgement => remembered(settling, say);

/** Every check: whether it says stop, and its margin where that counts. */
function onChecks(settling: Settling, mustPass: boolean): Judgement[] {
  return checkRules.map(({ rule }) =>
    onLook(settling, (look) => {
      const check = rule(look);
      if (!check) return FINE;
      if (mustPass && check.result === 'stop') return REFUSED;
      const counts = marginChecks.includes(check.id) && check.margin !== undefined;
      return counts ? { allowed: true, margin: countedMargin(check.margin!) } : FINE;
    }),
  );
}

function drills(settling: Settling): Judgement[] {
  const thrust = onLook(settling, (look) => {
    const stops = checkRules.some(({ rule }) => {
      const check = rule(look);
      return check?.id === 'drilling-thrust' && check.result === 'stop';
    });
    return stops ? REFUSED : FINE;
  });
  return [onCondition(settling, drillsUnderPower), thrust];
}

const playWithin = (settling: Settling, most: number): Judgement =>
  onLook(settling, (look) => {
    const play = look.figure('cross-play-on-diameter');
    return play && play.value <= most ? FINE : REFUSED;
  });

/** The judgements of one limit; limits on money, hours and weeks are no matter of answers. */
function judgementsOf(settling: Settling, limit: Limit): Judgement[] {
  switch (limit.kind) {
    case 'skill':
      return decisions.map((_, at) => onAnswers(settling, [at], tooHard(at, limit.most)));
    case 'reversible':
      return withoutTasks(settling, (at) => tasks[at]!.undo === 'cannot-be-undone');
    case 'whole-castings':
      return withoutTasks(settling, (at) => castingTasks.includes(tasks[at]!.id));
    case 'hand-use':
      return [onCondition(settling, hands)];
    case 'threads':
      return [onCondition(settling, spindleRead), onCondition(settling, carriageDriven)];
    case 'drill':
      return drills(settling);
    case 'play':
      return [playWithin(settling, limit.most)];
    default:
      return [];
  }
}

/** Everything a way is judged by, besides its money and its time. */
export function allJudgements(settling: Settling, limits: readonly Limit[]): Judgement[] {
  const mustPass = limits.some(({ kind }) => kind === 'checks');
  return [...limits.flatMap((limit) => judgementsOf(settling, limit)), ...onChecks(settling, mustPass)];
}
