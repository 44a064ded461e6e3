/** A drawn scale: the values at its two ends and its round ticks, in the unit of the values given. */
export interface Scale {
  from: number;
  to: number;
  ticks: number[];
}

const STEPS = [1, 2, 2.5, 5, 10];

/** The smallest round step (1, 2, 2.5 or 5 times a power of ten) not under `atLeast`, which is over zero. */
export function niceStep(atLeast: number): number {
  const power = 10 ** Math.floor(Math.log10(atLeast));
  const step = STEPS.find((s) => s * power >= atLeast * (1 - 1e-9)) ?? 10;
  return step * power;
}

function widened(low: number, high: number): [number, number] {
  if (high > low) return [low, high];
  const room = Math.max(Math.abs(low) * 0.1, 0.5);
  return [low >= 0 ? Math.max(0, low - room) : low - room, high + room];
}

function scaleBy(low: number, high: number, step: number): Scale {
  const half = step / 2;
  const from = Math.floor(low / half + 1e-9) * half;
  const to = Math.ceil(high / half - 1e-9) * half;
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  const ticks = Array.from({ length: count }, (_, i) => Number(((first + i) * step).toPrecision(12)));
  return { from, to, ticks };
}

/**
 * A scale that holds `low` to `high` with at most `most` round ticks (3 or more); its ends are ticks or lie
 * halfway between two. Equal ends are widened first, so there is always a length to draw on.
 */
export function niceScale(low: number, high: number, most: number): Scale {
  const [a, b] = widened(low, high);
  let step = niceStep((b - a) / most);
  let scale = scaleBy(a, b, step);
  while (scale.ticks.length > most) {
    step = niceStep(step * 1.01);
    scale = scaleBy(a, b, step);
  }
  return scale;
}
