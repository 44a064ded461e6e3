import { atMost, type CheckRule } from '../../core/check.ts';
import { chosen } from '../../core/quantity.ts';

/** Edges a second that a control can count, from memory of the trade; its data sheet decides. */
const edgeLimit: Readonly<Record<string, number>> = {
  'parallel-port-pc': 15e3,
  'two-parallel-ports-pc': 15e3,
  'motion-card-pc': 5e6,
  'desktop-with-controller': 200e3,
  'standalone-control': 500e3,
  'small-board': 50e3,
  'thread-synchroniser': 400e3,
};

const counting: CheckRule = (look) => {
  const control = look.option('control') ?? '';
  const limit = edgeLimit[control];
  if (look.figure('sensor-lines') === undefined || limit === undefined) return undefined;
  return atMost({
    id: 'encoder-count-rate',
    label: 'Counts from the spindle sensor',
    value: look.figure('encoder-edges'),
    limit:
      look.measured('control-count-limit') ??
      chosen(limit, 'Hz', 'control', control, 'from memory of the trade: read its manual before buying'),
    comfort: 2,
    remedy:
      'Fewer lines on the sensor, or a control that counts in hardware. Read the limit in the manual of the control before buying.',
    decisions: ['spindle-sensor', 'control'],
  });
};

export const checks: readonly CheckRule[] = [counting];
