import { parts, risks } from '../calc/trade.ts';
import type { KnownOwn } from './read-own.ts';

/** The parts and risks of this site. */
export const knownOwn: KnownOwn = {
  parts: new Set(parts.map(({ id }) => id)),
  risks: new Set(risks.map(({ id }) => id)),
};
