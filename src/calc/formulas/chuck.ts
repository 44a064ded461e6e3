import type { Formula } from '../core/formula.ts';

/**
 * Grip that is left on the work at speed, N, gripped from outside: all jaws pull outward as they turn.
 * `jawMoments` is the sum over the jaws of mass × distance of its centre of mass from the axis, kg·m; speed in rev/s.
 * Below zero the work is loose. Never a licence to pass the speed marked on the chuck.
 */
export const chuckGripAtSpeed: Formula<{ gripAtRest: number; jawMoments: number; speed: number }> = {
  id: 'chuck-grip-at-speed',
  label: 'Chuck grip left at speed',
  equation: 'grip = grip at rest − jaw moments × (2 × π × speed)²',
  tex: 'F = F_0 - \\sum (m\\,r)\\,(2\\pi n)^2',
  inputs: { gripAtRest: 'N', jawMoments: 'kg·m', speed: 'rev/s' },
  unit: 'N',
  source: { ref: 'Schunk ROTA NCX operating manual', at: 'p. 25, centrifugal force of the jaws' },
  valid: {},
  compute: ({ gripAtRest, jawMoments, speed }) => gripAtRest - jawMoments * (2 * Math.PI * speed) ** 2,
};

export const chuckFormulas = [chuckGripAtSpeed] as const;
