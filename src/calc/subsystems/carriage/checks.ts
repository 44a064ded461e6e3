import type { CheckRule } from '../../core/check.ts';
import { fitChecks } from '../motors/checks-fit.ts';
import { motionChecks, pushCheck } from '../motors/checks-push.ts';
import { screwChecks } from '../motors/checks-screw.ts';

const lighter = 'Lighter cuts, a belt of 2:1 in place of 1:1, or the larger motor.';

const turning = pushCheck('carriage', {
  id: 'carriage-turning',
  need: 'push-turning',
  label: 'Push of the carriage for turning',
  remedy: lighter,
});

const facing = pushCheck('carriage', {
  id: 'carriage-facing',
  need: 'push-facing',
  label: 'Push of the carriage to stand still while facing',
  remedy: lighter,
});

const drilling = pushCheck('carriage', {
  id: 'drilling-thrust',
  need: 'push-drilling',
  label: 'Push of the carriage for the largest drill',
  remedy:
    'Drill a pilot as wide as the web first, which halves the push, or drill by hand from the tailstock. A 2:1 belt doubles the push and halves the rapid.',
  decisions: ['materials', 'holes'],
});

/** What the carriage must be able to do and stand. */
export const checks: readonly CheckRule[] = [
  turning,
  facing,
  drilling,
  ...motionChecks('carriage'),
  ...screwChecks('carriage'),
  ...fitChecks('carriage'),
];
