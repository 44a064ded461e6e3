import type { Check } from '../../calc/core/check.ts';
import { decisionById, rooms } from '../../calc/guide.ts';

const GRAVITY = ['stop', 'look', 'not-yet', 'ok'] as const;

const gravity = ({ result }: Check): number => GRAVITY.indexOf(result);
const gravest = (checks: readonly Check[]): number => Math.min(...checks.map(gravity));

/** The room of a check: that of the first question it hangs on; the last room where it hangs on none. */
const roomOf = ({ decisions }: Check): string =>
  decisions.flatMap((id) => decisionById(id)?.subsystem ?? [])[0] ?? rooms.at(-1)!.id;

export interface RoomOfChecks {
  readonly id: string;
  readonly name: string;
  readonly checks: readonly Check[];
}

/** Checks by room. What stops comes first: rooms by their gravest check, and inside a room the gravest first. */
export function checksByRoom(checks: readonly Check[]): RoomOfChecks[] {
  return rooms
    .map(({ id, name }) => ({
      id,
      name,
      checks: checks.filter((check) => roomOf(check) === id).toSorted((a, b) => gravity(a) - gravity(b)),
    }))
    .filter((room) => room.checks.length > 0)
    .toSorted((a, b) => gravest(a.checks) - gravest(b.checks));
}
