import { textWidth } from './span.ts';

export interface Stage {
  id: string;
  numeral: string;
  name: string;
  /** Likely hours; the length of the stage in the bar. */
  hours: number;
  /** The lathe cannot be used in this stage. */
  outOfUse: boolean;
  /** Name of the hold point that ends the stage: "A". */
  holdAfter?: string;
  /** The owner may stop after this stage and have a working machine. */
  mayStopAfter?: boolean;
  state?: 'done' | 'now';
}

/** A stage in px: from `x1` to `x2`, its label starting at `labelX` in label line `line`, 0 upward. */
export interface StagePlace {
  stage: Stage;
  x1: number;
  x2: number;
  label: string;
  labelX: number;
  line: number;
}

const LEAST = 16;

/** Lengths to scale, except that no stage is too short to carry its numeral. */
function lengths(stages: Stage[], width: number): number[] {
  const total = stages.reduce((sum, s) => sum + Math.max(0, s.hours), 0) || 1;
  const raw = stages.map((s) => Math.max(LEAST, (Math.max(0, s.hours) / total) * width));
  const spare = raw.reduce((sum, w) => sum + w - LEAST, 0) || 1;
  const share = Math.max(0, width - LEAST * stages.length) / spare;
  return raw.map((w) => LEAST + (w - LEAST) * share);
}

function freeLine(ends: number[], x: number): number {
  const line = ends.findIndex((end) => x >= end);
  return line < 0 ? ends.length : line;
}

/**
 * Places stages along a bar `width` px long and staggers their labels into as many lines as they need.
 * A label that would run out on the right is moved left until it ends with the bar.
 */
export function layoutStages(stages: Stage[], width: number): StagePlace[] {
  const ends: number[] = [];
  let x = 0;
  return lengths(stages, width).map((length, i) => {
    const stage = stages[i] as Stage;
    const [x1, x2] = [x, x + length];
    x = x2;
    const label = `${stage.name}, ${Math.round(stage.hours)} h`;
    const labelX = Math.max(0, Math.min(x1 + 2, width - textWidth(label, 12.5)));
    const line = freeLine(ends, labelX);
    ends[line] = labelX + textWidth(label, 12.5) + 10;
    return { stage, x1, x2, label, labelX, line };
  });
}

/** The stretch from the first stage that has the lathe out of use to the last, in px; none gives undefined. */
export function outOfUseReach(places: StagePlace[]): { x1: number; x2: number } | undefined {
  const out = places.filter((p) => p.stage.outOfUse);
  const [first, last] = [out[0], out[out.length - 1]];
  return first && last ? { x1: first.x1, x2: last.x2 } : undefined;
}
