import type { Formula } from '../core/formula.ts';

/** Which side of the work carries the thread. */
export type ThreadSide = 'outside' | 'inside';

/** Depth over the height of the full triangle: 17/24 to a bolt's root, 5/8 in a nut. */
const depthShare: Readonly<Record<ThreadSide, number>> = { outside: 17 / 24, inside: 5 / 8 };

/** Depth of a metric 60° thread on radius, m; pitch in m. ISO 68-1 profile. */
export const threadDepth: Formula<{ pitch: number; side: ThreadSide }> = {
  id: 'thread-depth',
  label: 'Depth of a metric thread',
  equation: 'depth = share(side) × √3 ÷ 2 × pitch, the share 17 ÷ 24 outside and 5 ÷ 8 inside',
  tex: 'h_3 = \\tfrac{17}{24}\\,\\tfrac{\\sqrt{3}}{2}\\,P \\qquad H_1 = \\tfrac{5}{8}\\,\\tfrac{\\sqrt{3}}{2}\\,P',
  inputs: { pitch: 'm', side: 'case' },
  unit: 'm',
  source: { ref: 'ISO 68-1 and ISO 724', at: 'basic profile and basic dimensions' },
  valid: {},
  compute: ({ pitch, side }) => (depthShare[side] ?? Number.NaN) * (Math.sqrt(3) / 2) * pitch,
};

const MOST_PASSES = 200;

const depthAfter = (depth: number, passes: number, pass: number): number =>
  (depth / Math.sqrt(passes - 1)) * Math.sqrt(pass === 1 ? 0.3 : pass - 1);

/**
 * How far to feed in for each pass, m, one figure a pass, first pass first; every pass takes about the same chip.
 * Their sum is the depth. Whole passes from 2 to 200; else a single NaN. Spring passes come after.
 */
export const threadInfeed: Formula<{ depth: number; passes: number }, readonly number[]> = {
  id: 'thread-infeed',
  label: 'Infeed of each threading pass',
  equation: 'depth after pass i = depth ÷ √(passes − 1) × √φ, φ = 0.3, 1, 2 … passes − 1',
  tex: '\\Delta_i = \\frac{a_p}{\\sqrt{n - 1}}\\,\\sqrt{\\varphi_i}, \\quad \\varphi = 0.3,\\ 1,\\ 2 \\ldots n - 1',
  inputs: { depth: 'm', passes: '1' },
  unit: 'm',
  source: { ref: 'Sandvik Coromant, threading application guide', at: 'p. 114, infeed of each pass' },
  valid: { passes: [2, 20] },
  compute: ({ depth, passes }) => {
    if (!Number.isInteger(passes) || passes < 2 || passes > MOST_PASSES) return [Number.NaN];
    const reached = Array.from({ length: passes }, (_, at) => depthAfter(depth, passes, at + 1));
    return reached.map((now, at) => now - (reached[at - 1] ?? 0));
  },
};

/** Speed of the carriage while threading, m/s; pitch in m, spindle in rev/s. */
export const threadFeed: Formula<{ pitch: number; speed: number }> = {
  id: 'thread-feed',
  label: 'Carriage speed for a thread',
  equation: 'feed speed = pitch × speed',
  tex: 'v_f = P\\,n',
  inputs: { pitch: 'm', speed: 'rev/s' },
  unit: 'm/s',
  source: { ref: 'Industrial Monitor Direct, article on threading with an encoder', at: 'worked example' },
  valid: {},
  compute: ({ pitch, speed }) => pitch * speed,
};

/**
 * Room in front of the thread, m: the way to reach the feed speed at a steady acceleration (m/s²) and the pitches
 * in which carriage and spindle fall into step. Two spare pitches are usual. The same room is needed behind.
 */
export const threadRunUp: Formula<{
  pitch: number;
  speed: number;
  acceleration: number;
  sparePitches: number;
}> = {
  id: 'thread-run-up',
  label: 'Run-up before a thread',
  equation: 'run-up = (pitch × speed)² ÷ (2 × acceleration) + spare pitches × pitch',
  tex: 's = \\frac{(P\\,n)^2}{2 a} + k\\,P',
  inputs: { pitch: 'm', speed: 'rev/s', acceleration: 'm/s²', sparePitches: '1' },
  unit: 'm',
  source: { ref: 'plain mechanics', at: 'steady acceleration; the spare pitches are common practice' },
  valid: { sparePitches: [1, 3] },
  unverified: 'Steady acceleration from rest; handbooks print no worked run-up of this form.',
  compute: ({ pitch, speed, acceleration, sparePitches }) =>
    threadFeed.compute({ pitch, speed }) ** 2 / (2 * acceleration) + sparePitches * pitch,
};

export const threadFormulas = [threadDepth, threadInfeed, threadFeed, threadRunUp] as const;
