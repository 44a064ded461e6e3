import { atom } from 'nanostores';
import type { Limit } from '../../calc/choosing.ts';
import type { Skill } from '../../calc/core/decision.ts';
import { decisionById } from '../../calc/guide.ts';
import { recall, remember } from '../memory.ts';
import { type Limits, setLimit } from '../preferences.ts';

/** Limits that are a plain yes, in the order they are shown. */
export const PLAIN = ['checks', 'reversible', 'whole-castings', 'hand-use', 'threads'] as const;
export type PlainKind = (typeof PLAIN)[number];

/** What a way has to keep to besides money, hours and weeks. Lengths in metres. It stays on this device. */
export interface Demands {
  readonly plain: readonly PlainKind[];
  readonly skill?: Skill;
  readonly drill?: number;
  readonly material: string;
  readonly play?: number;
}

const USUAL: Demands = { plain: ['checks'], material: 'mild-steel' };
const REMEMBERED = 'ways-demands';

export const $demands = atom<Demands>(USUAL);

export const loadDemands = (): void => $demands.set(readDemands(recall(REMEMBERED)));

export function demand(change: Partial<Demands>): void {
  const demands = { ...$demands.get(), ...change };
  $demands.set(demands);
  remember(REMEMBERED, JSON.stringify(demands));
}

const isLength = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && value > 0;

const isMaterial = (value: unknown): value is string =>
  decisionById('materials')?.options.some(({ id }) => id === value) ?? false;

const isSkill = (value: unknown): value is Skill => [1, 2, 3, 4].includes(value as number);

/** What was remembered, as far as it makes sense; the usual where it does not. */
export function readDemands(text: string | undefined): Demands {
  try {
    const read: Record<string, unknown> = JSON.parse(text ?? '{}') ?? {};
    const { plain, skill, drill, material, play } = read;
    return {
      plain: Array.isArray(plain) ? PLAIN.filter((kind) => plain.includes(kind)) : USUAL.plain,
      material: isMaterial(material) ? material : USUAL.material,
      ...(isSkill(skill) ? { skill } : {}),
      ...(isLength(drill) ? { drill } : {}),
      ...(isLength(play) ? { play } : {}),
    };
  } catch {
    return USUAL;
  }
}

/** All limits in force, as the search takes them. */
export function limitsFrom({ money, hours, weeks }: Limits, demands: Demands): Limit[] {
  const { plain, skill, drill, material, play } = demands;
  return [
    ...(money === undefined ? [] : [{ kind: 'money', most: money } as const]),
    ...(hours === undefined ? [] : [{ kind: 'hours', most: hours } as const]),
    ...(weeks === undefined ? [] : [{ kind: 'weeks', most: weeks } as const]),
    ...(skill === undefined ? [] : [{ kind: 'skill', most: skill } as const]),
    ...(drill === undefined ? [] : [{ kind: 'drill', diameter: drill, material } as const]),
    ...(play === undefined ? [] : [{ kind: 'play', most: play } as const]),
    ...plain.map((kind): Limit => ({ kind })),
  ];
}

/** Takes a limit off, wherever it was set. */
export function takeOff({ kind }: Limit): void {
  if (kind === 'money' || kind === 'hours' || kind === 'weeks') setLimit(kind, undefined);
  else if (kind === 'skill' || kind === 'drill' || kind === 'play') {
    const { [kind]: _, ...others } = $demands.get();
    $demands.set(others);
    demand({});
  } else demand({ plain: $demands.get().plain.filter((each) => each !== kind) });
}
