import type { NeededBy } from '../../core/part.ts';

/** Which tasks wait for the parts of this room. */
export const neededBy: readonly NeededBy[] = [
  { tasks: ['pc-jitter-test', 'first-power-control'], parts: ['used-pc', 'tested-network-card'] },
  {
    tasks: ['first-power-control'],
    parts: [
      'breakout-board',
      'parallel-card',
      'motion-card',
      'external-controller',
      'desktop-program-licence',
      'standalone-control-part',
      'motion-board',
      'synchroniser-kit',
      'signal-isolator',
      'screen',
      'touch-panel-surcharge',
      'screen-arm',
      'keyboard-part',
    ],
  },
  { tasks: ['fit-out-cabinet'], parts: ['auxiliary-supply'] },
  {
    tasks: ['operator-panel-build', 'configure-control'],
    parts: ['feed-hold-button', 'handwheel-pendant', 'panel-handwheels', 'panel-buttons'],
  },
  { tasks: ['changeover-wiring'], parts: ['changeover-interlock', 'second-machine-plugs'] },
];
