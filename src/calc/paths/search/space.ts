import { usual } from '../../choices/choose.ts';
import { askedAfter, type Exclusion, isAsked, isViolated, touching } from '../../choices/exclusions.ts';
import { maskOf, type State } from '../../choices/state.ts';
import { decisions } from '../../guide.ts';
import type { Present } from '../present.ts';

/**
 * A question whose answer the search may change: a free one takes any finished option; one that only follows is not
 * asked, or takes the owner's answer, or else the first option of the trade that stands beside what comes earlier.
 */
export interface Variable {
  /** Position of the question. */
  readonly at: number;
  readonly free: boolean;
  /** Bits it may take; nothing (0) besides, where the question may vanish. */
  readonly domain: readonly number[];
  /** All that it may be before anything is settled. */
  readonly possible: readonly number[];
  /** The owner's answer of a question that only follows; 0: none. */
  readonly given: number;
  /** Questions that have to be settled before it. */
  readonly after: readonly number[];
}

/** The questions that may change, in guide order; all others stand as they are planned. */
export interface Space {
  readonly variables: readonly Variable[];
  /** By position of a question: which variable it is; −1: it stands. */
  readonly variableAt: Int32Array;
  readonly exclusions: readonly Exclusion[];
}

const isFinished = (at: number, mask: number): boolean =>
  decisions[at]!.options.every((option, bit) => mask !== 1 << bit || option.incomplete === undefined);

/** Finished options of a question, in the order of the trade. */
const finished = (at: number): number[] => usual(at).filter((mask) => isFinished(at, mask));

/** Positions of what may have to move along when these questions are answered anew. */
function followersOf({ planned }: Present, free: ReadonlySet<number>): Set<number> {
  const moving = new Set(free);
  for (const at of moving) {
    for (const other of askedAfter[at]!) moving.add(other);
    for (const { involved } of touching[at]!)
      for (const other of involved) if (yields(planned, other)) moving.add(other);
  }
  return moving;
}

/** An open choice yields to answers; what the lathe or the workshop is does not. */
const yields = ({ status }: Present['planned'], at: number): boolean =>
  decisions[at]!.place === 'guide' && (status[at] === 'open' || status[at] === 'clash');

/** Where the questions named may be answered anew. Throws where one is unknown, or takes several answers. */
export function spaceOf(present: Present, freeIds: readonly string[]): Space {
  const free = new Set(freeIds.map((id) => decisions.findIndex((decision) => decision.id === id)));
  if (free.has(-1)) throw new Error('a free question is unknown');
  if ([...free].some((at) => decisions[at]!.many))
    throw new Error('a question with several answers cannot be free');
  const positions = [...followersOf(present, free)].sort((a, b) => a - b);
  const variableAt = new Int32Array(decisions.length).fill(-1);
  for (const [index, at] of positions.entries()) variableAt[at] = index;
  const exclusions = [...new Set(positions.flatMap((at) => touching[at]!))];
  const variables = positions.map((at): Variable => {
    const given = free.has(at) ? 0 : present.given[at]!;
    const domain = given === 0 ? finished(at) : [given];
    const after = before(at, free.has(at), positions);
    const asked = isAsked(at, present.planned.state);
    const possible = after.length > 0 ? [0, ...domain] : asked ? domain : NOT_ASKED;
    return { at, free: free.has(at), domain, possible, given, after };
  });
  return { variables, variableAt, exclusions };
}

/** What decides whether it is asked, and for one that follows also what it has to stand beside. */
function before(at: number, isFree: boolean, positions: readonly number[]): number[] {
  const asking = positions.filter((other) => askedAfter[other]!.includes(at));
  if (isFree) return asking;
  const beside = positions.filter(
    (other) => other < at && touching[at]!.some(({ involved }) => involved.includes(other)),
  );
  return [...new Set([...asking, ...beside])];
}

/** Bits to try for a question once everything before it is settled; empty where nothing can stand. */
export function candidates(
  space: Space,
  { at, free, domain, given }: Variable,
  state: State,
): readonly number[] {
  if (!isAsked(at, state)) return NOT_ASKED;
  if (free || given !== 0) return domain;
  const kept = state.masks[at]!;
  const first = domain.find((mask) => {
    state.masks[at] = mask;
    return !touching[at]!.some(
      (exclusion) => looksBack(space, exclusion, at) && isViolated(exclusion, state),
    );
  });
  state.masks[at] = kept;
  return first === undefined ? [] : [first];
}

const NOT_ASKED: readonly number[] = [0];

/** The exclusion holds only between this question, earlier ones and what stands. */
const looksBack = ({ variableAt }: Space, { involved }: Exclusion, at: number): boolean =>
  involved.every((other) => other <= at || variableAt[other] === -1);

/** The option ids of a settled state, as answers of an owner. */
export const bitOf = (decision: string, option: string): number => maskOf(decision, [option]);
