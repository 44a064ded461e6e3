import type { Skill } from '../../core/decision.ts';

/** What a way through has to keep to. Dollars, hours and weeks hold in sixteen of twenty builds. */
export type Limit =
  | { readonly kind: 'money'; readonly most: number }
  | { readonly kind: 'hours'; readonly most: number }
  | { readonly kind: 'weeks'; readonly most: number }
  /** No answer asks for more skill. */
  | { readonly kind: 'skill'; readonly most: Skill }
  /** No work that cannot be undone. */
  | { readonly kind: 'reversible' }
  /** No casting of the lathe is drilled or cut. */
  | { readonly kind: 'whole-castings' }
  /** The slides can still be moved by hand. */
  | { readonly kind: 'hand-use' }
  /** It cuts threads. */
  | { readonly kind: 'threads' }
  /** It drills under power: diameter in metres, material as answered in the guide. */
  | { readonly kind: 'drill'; readonly diameter: number; readonly material: string }
  /** Play of the cross slide, seen on the diameter, metres. */
  | { readonly kind: 'play'; readonly most: number }
  /** No check says stop. */
  | { readonly kind: 'checks' };

export type LimitKind = Limit['kind'];

/** Work that drills or cuts a casting of the lathe. */
export const castingTasks: readonly string[] = [
  'drill-bed-and-apron',
  'relieve-saddle',
  'fit-oiler',
  'fit-oiler-cross',
];

/**
 * Checks whose margins count for how stiff and strong a way is: the pushes of both slides against their jobs, and what
 * the slides give under a cut.
 */
export const marginChecks: readonly string[] = [
  'carriage-turning',
  'carriage-facing',
  'drilling-thrust',
  'cross-turning',
  'cross-facing',
  'cross-parting',
  'carriage-give',
  'cross-give',
];

/** More than three times what is needed counts as three times. */
export const ENOUGH = 3;

/** A margin as it counts: in hundredths, rounded down. */
export const countedMargin = (margin: number): number =>
  Math.min(ENOUGH, Math.floor(margin * 100 + 1e-6) / 100);
