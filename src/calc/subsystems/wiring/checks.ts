import type { CheckRule } from '../../core/check.ts';
import { cabinetChecks } from './checks-cabinet.ts';
import { cableChecks } from './checks-cable.ts';
import { stopChecks } from './checks-stop.ts';
import { supplyChecks } from './checks-supply.ts';

export const checks: readonly CheckRule[] = [
  ...supplyChecks,
  ...stopChecks,
  ...cableChecks,
  ...cabinetChecks,
];
