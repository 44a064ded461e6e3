import type { PlacedCheck } from '../../calc/evaluate.ts';
import { rooms } from '../../calc/guide.ts';

const GRAVITY = ['stop', 'look', 'not-yet', 'ok'] as const;

const gravity = ({ result }: PlacedCheck): number => GRAVITY.indexOf(result);
const gravest = (checks: readonly PlacedCheck[]): number => Math.min(...checks.map(gravity));

export interface RoomOfChecks {
  readonly id: string;
  readonly name: string;
  readonly checks: readonly PlacedCheck[];
}

/** Checks by room. What stops comes first: rooms by their gravest check, and inside a room the gravest first. */
export function checksByRoom(checks: readonly PlacedCheck[]): RoomOfChecks[] {
  return rooms
    .map(({ id, name }) => ({
      id,
      name,
      checks: checks.filter((check) => check.subsystem === id).toSorted((a, b) => gravity(a) - gravity(b)),
    }))
    .filter((room) => room.checks.length > 0)
    .toSorted((a, b) => gravest(a.checks) - gravest(b.checks));
}
