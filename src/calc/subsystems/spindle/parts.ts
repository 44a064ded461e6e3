import type { Part } from '../../core/part.ts';
import { driveParts } from './parts-drive.ts';
import { sensorParts } from './parts-sensor.ts';

export const parts: readonly Part[] = [...driveParts, ...sensorParts];
