import type { Asked, TotalId } from '../../calc/why-number.ts';
import { to } from '../shared/places.ts';

const SIDES = ['value', 'limit', 'limitLow'] as const;
const TOTALS: readonly TotalId[] = ['money', 'hours', 'weeks-out'];

/** A number as an address names it: "check.cross-tunnel.limit", "total.money". */
export const nameOf = (asked: Asked): string =>
  [asked.kind, asked.id, ...(asked.kind === 'check' ? [asked.side] : [])].join('.');

/** What an address asks about; undefined where the name is none of ours. */
export function askedBy(name: string): Asked | undefined {
  const [kind, id = '', side, ...rest] = name.split('.');
  if (!/^[a-z0-9-]+$/.test(id) || rest.length > 0) return undefined;
  if (kind === 'check') {
    const found = SIDES.find((each) => each === side);
    return found && { kind, id, side: found };
  }
  if (side !== undefined) return undefined;
  if (kind === 'total') return TOTALS.includes(id as TotalId) ? { kind, id: id as TotalId } : undefined;
  return kind === 'figure' || kind === 'risk' ? { kind, id } : undefined;
}

/** The page of a number; a link to it carries data-keep-path. */
export const whyPlace = (asked: Asked): string => to(`why/?of=${nameOf(asked)}`);
