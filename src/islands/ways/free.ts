import type { Carried } from '../../calc/choosing.ts';
import { decisionById, rooms } from '../../calc/guide.ts';

/** As many questions as are decided in a few seconds. */
export const USUALLY_FREE = 14;

/** What the machine is to do is the owner's to say: the search would only ever ask less of it. */
const OWNERS_TO_SAY = ['driven-axes', 'machines-served', 'hand-use'];

const isOpen = ({ status }: Carried): boolean => status === 'open' || status === 'clash';

/** What is free before the owner says so: the open questions that carry most, then the answered ones that do. */
export function usuallyFree(carried: readonly Carried[], count = USUALLY_FREE): string[] {
  const moving = carried.filter(
    ({ decision, money, hours }) => (money > 0 || hours > 0) && !OWNERS_TO_SAY.includes(decision),
  );
  const openFirst = [...moving.filter(isOpen), ...moving.filter((each) => !isOpen(each))];
  return openFirst.slice(0, count).map(({ decision }) => decision);
}

/** The questions that may be free, by room in the order of the guide. */
export function byRoom(carried: readonly Carried[]): { room: string; questions: Carried[] }[] {
  return rooms
    .map(({ name, decisions }) => ({
      room: name,
      questions: decisions.flatMap(({ id }) => carried.filter(({ decision }) => decision === id)),
    }))
    .filter(({ questions }) => questions.length > 0);
}

export const nameOf = (id: string): string => decisionById(id)?.name ?? id;
