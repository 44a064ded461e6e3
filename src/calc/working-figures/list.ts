import { batch } from './batch.ts';
import { belt } from './belt.ts';
import { bend } from './bend.ts';
import { cable } from './cable.ts';
import { drill } from './drill.ts';
import { edges } from './edges.ts';
import type { WorkingFigure } from './figure.ts';
import { gang } from './gang.ts';
import { heat } from './heat.ts';
import { leadTime } from './lead-time.ts';
import { leakage } from './leakage.ts';
import { play } from './play.ts';
import { runUp } from './run-up.ts';
import { stopping } from './stopping.ts';
import { supply } from './supply.ts';
import { whip } from './whip.ts';

/** Every working figure of the book. Pages look up here; an island takes its own file only. */
export const workingFigures: readonly WorkingFigure[] = [
  whip,
  bend,
  play,
  runUp,
  edges,
  heat,
  batch,
  drill,
  belt,
  supply,
  cable,
  stopping,
  leakage,
  gang,
  leadTime,
];
