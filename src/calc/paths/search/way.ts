import { optionsOf } from '../../choices/state.ts';
import type { Answer, Path } from '../../core/path.ts';
import { decisionById, decisions, optionById } from '../../guide.ts';
import type { WayFigures } from './figures.ts';
import type { Found } from './frontier.ts';
import type { Task } from './task.ts';

/** Another answer than on the path that was searched from; empty: the question is not asked there. */
export interface ChangedAnswer {
  readonly decision: string;
  readonly before: Answer;
  readonly after: Answer;
}

/** One way through: what it costs, what it answers, and what it has over the next cheaper one. Plain data. */
export interface WayThrough {
  readonly figures: WayFigures;
  /** Every question answered, so that the path opens with exactly these figures. */
  readonly path: Path;
  readonly changes: readonly ChangedAnswer[];
  /** Why it is no worse than its neighbour, in words; empty for the cheapest. */
  readonly why: string;
}

/** The path of a way: the owner's, with every question of the guide answered as the way has it. */
export function pathOfWay({ present }: Task, { masks }: Found): Path {
  const { path } = present.planned;
  const answers: Record<string, Answer> = {};
  for (const [at, { id, place }] of decisions.entries()) {
    const given = path.answers[id];
    if (place === 'lathe') {
      if (given) answers[id] = given;
    } else if (masks[at] !== 0) answers[id] = optionsOf(at, masks[at]!);
  }
  return { ...path, answers };
}

const changesOf = ({ present }: Task, { masks }: Found): ChangedAnswer[] =>
  decisions.flatMap(({ id }, at) => {
    const was = present.planned.state.masks[at]!;
    return was === masks[at]
      ? []
      : [{ decision: id, before: optionsOf(at, was), after: optionsOf(at, masks[at]!) }];
  });

const labelOf = (decision: string, [option]: Answer): string => {
  const found = decisionById(decision);
  const label = found && option ? optionById(found, option)?.label : undefined;
  return label === undefined ? 'not asked' : `“${label}”`;
};

/** Answers named in a sentence; more would not be read. */
const NAMED = 3;

function instead(here: Found, there: Found): string {
  const differing = decisions.flatMap(({ id, name }, at) => {
    if (here.masks[at] === there.masks[at]) return [];
    const [mine, other] = [optionsOf(at, here.masks[at]!), optionsOf(at, there.masks[at]!)];
    return [`${name}: ${labelOf(id, mine)} for ${labelOf(id, other)}`];
  });
  const more = differing.length - NAMED;
  return differing.slice(0, NAMED).join('; ') + (more > 0 ? `; and ${more} more` : '');
}

/** What a way has over the next cheaper one. */
function whyOf(here: Found, cheaper: Found): string {
  const money = Math.round(here.figures.money - cheaper.figures.money);
  const hours = Math.round(10 * (cheaper.figures.hours - here.figures.hours)) / 10;
  const gains = [
    ...(hours > 0 ? [`saves ${hours} hours`] : []),
    ...(here.figures.margin > cheaper.figures.margin
      ? [
          `has ${here.figures.margin} times the strength and stiffness it needs instead of ${cheaper.figures.margin}`,
        ]
      : []),
  ];
  const gain = gains.join(' and ') || 'is as quick to the tenth of an hour, and no weaker';
  return `For $${money} more than the next cheaper way it ${gain}: ${instead(here, cheaper)}.`;
}

/** Ways in order of money, each with its reason. */
export function waysOf(task: Task, found: readonly Found[]): WayThrough[] {
  const sorted = [...found].sort(
    (a, b) => a.figures.money - b.figures.money || a.figures.hours - b.figures.hours,
  );
  return sorted.map((each, at) => ({
    figures: each.figures,
    path: pathOfWay(task, each),
    changes: changesOf(task, each),
    why: at === 0 ? '' : whyOf(each, sorted[at - 1]!),
  }));
}
