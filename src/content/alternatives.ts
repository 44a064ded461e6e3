import type { Alternative, OnceBands } from '../calc/core/alternative.ts';
import { attachments } from './alternatives-attachments.ts';
import { buyAMachine } from './alternatives-machines.ts';
import { besideTheLathe } from './alternatives-manual.ts';
import { motorsOnIt } from './alternatives-motors.ts';
import { somebodyElse } from './alternatives-others.ts';

/**
 * Everything else that may answer the same wish, from what costs least. Money, hours and chances are planning figures
 * from memory of the trade; those with motors are worked out on your own lathe.
 */
export const alternatives: readonly Alternative[] = [
  ...besideTheLathe,
  ...attachments,
  ...motorsOnIt,
  ...buyAMachine,
  ...somebodyElse,
];

export function alternativeById(id: string): Alternative {
  const found = alternatives.find((each) => each.id === id);
  if (!found) throw new Error(`no alternative has the id ${id}`);
  return found;
}

/** Its bands, before freight where it is goods; throws where it is worked out as a path. */
export function onceBandsOf(id: string): OnceBands {
  const { costs } = alternativeById(id);
  if ('path' in costs) throw new Error(`${id} is worked out as a path`);
  return costs.once;
}
