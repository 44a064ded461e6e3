import type { NeededBy } from '../../core/part.ts';

/** Which tasks wait for the parts of this room. */
export const neededBy: readonly NeededBy[] = [
  { tasks: ['make-riser', 'fit-cross-motor', 'swap-compound', 'air-cut'], parts: ['quick-change-post-set'] },
  { tasks: ['air-cut'], parts: ['extra-tool-holders', 'insert-holders'] },
  { tasks: ['set-gang-tools'], parts: ['gang-blocks'] },
  { tasks: ['fit-rear-post'], parts: ['rear-tool-post'] },
  { tasks: ['fit-changer'], parts: ['indexing-changer'] },
  { tasks: ['set-touch-plate'], parts: ['touch-plate-part'] },
  { tasks: ['set-magnifier'], parts: ['centring-magnifier'] },
  { tasks: ['swap-spindle-motor', 'first-power-on-machine'], parts: ['spring-chuck-key'] },
  { tasks: ['fit-collet-chuck'], parts: ['collet-chuck', 'collet-back-plate'] },
  { tasks: ['fit-lever-closer'], parts: ['lever-closer'] },
  { tasks: ['fit-power-chuck'], parts: ['power-chuck-set', 'pressure-switch'] },
  { tasks: ['fit-power-chuck', 'fit-covers'], parts: ['air-supply'] },
  { tasks: ['fit-bar-stop', 'first-real-part'], parts: ['bar-tube', 'spindle-dead-stop', 'bar-puller-part'] },
  { tasks: ['drill-alignment'], parts: ['drill-sleeves'] },
];
