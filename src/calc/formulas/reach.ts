import type { Formula } from '../core/formula.ts';

type Gang = { toolPitch: number; partRadius: number; clearance: number; pastCentre: number };

const inputs = { toolPitch: 'm', partRadius: 'm', clearance: 'm', pastCentre: 'm' } as const;
const source = { ref: 'plain geometry', at: 'tools side by side on the cross slide' } as const;
const unverified = 'Sum of lengths on the machine itself; no published worked figure is known.';
const besides = ({ partRadius, clearance, pastCentre }: Gang): number => partRadius + clearance + pastCentre;

/**
 * Cross travel for tools side by side, m: from the last tool past centre to the first one clear of the work.
 * All lengths in m; part radius of the thickest work.
 */
export const gangTravel: Formula<Gang & { tools: number }> = {
  id: 'gang-travel',
  label: 'Cross travel for tools side by side',
  equation: 'travel = (tools − 1) × tool pitch + part radius + clearance + past centre',
  tex: 'x = (N - 1)\\,p + r + c + o',
  inputs: { tools: '1', ...inputs },
  unit: 'm',
  source,
  valid: {},
  unverified,
  compute: ({ tools, ...gang }) => (tools - 1) * gang.toolPitch + besides(gang),
};

/** Most tools side by side that a cross travel (m) serves, a whole number; 0 where not even one fits. */
export const gangTools: Formula<Gang & { travel: number }> = {
  id: 'gang-tools',
  label: 'Tools side by side that the cross travel serves',
  equation: 'tools = whole part of (travel − part radius − clearance − past centre) ÷ tool pitch + 1',
  tex: 'N = \\left\\lfloor \\frac{x - r - c - o}{p} \\right\\rfloor + 1',
  inputs: { travel: 'm', ...inputs },
  unit: '1',
  source,
  valid: {},
  unverified,
  compute: ({ travel, ...gang }) => {
    const spare = (travel - besides(gang)) / gang.toolPitch;
    // A travel that fits exactly must not lose a tool to the last binary digit.
    return Math.max(0, Math.floor(spare + 1e-9) + 1);
  },
};

/**
 * Bar that sticks out behind the headstock without support, in bar diameters; both in m. Over 3 it runs in a tube:
 * a bar that bends while turning has killed.
 */
export const barOverhang: Formula<{ overhang: number; diameter: number }> = {
  id: 'bar-overhang',
  label: 'Bar out of the back of the spindle, in diameters',
  equation: 'diameters = overhang ÷ diameter',
  tex: 'k = \\frac{l}{d}',
  inputs: { overhang: 'm', diameter: 'm' },
  unit: '1',
  source: { ref: 'common practice, no source', at: 'at most 3 diameters without a tube' },
  valid: {},
  unverified: 'A ratio held against a shop rule; no published worked figure is known.',
  compute: ({ overhang, diameter }) => overhang / diameter,
};

export const reachFormulas = [gangTravel, gangTools, barOverhang] as const;
