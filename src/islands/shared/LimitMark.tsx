import type { Check } from '../../calc/core/check.ts';
import { layoutLimit, WIDTH } from './limit-layout.ts';

const [HIGH, AXIS, TICK] = [16, 8, 5];

/** The limit of a check as a dimension line with the value as a washer on it. The words beside it say the same. */
export function LimitMark({ check }: { check: Check }) {
  const drawn = layoutLimit(check);
  if (!drawn) return null;
  const { from, to, isOpen, value } = drawn;
  return (
    <svg
      class={`drawing limit-mark is-${check.result}`}
      width={WIDTH}
      height={HIGH}
      viewBox={`0 0 ${WIDTH} ${HIGH}`}
      aria-hidden="true"
    >
      <g class="dimension">
        <line x1={from} x2={to} y1={AXIS} y2={AXIS} />
        <line x1={from} x2={from} y1={AXIS - TICK} y2={AXIS + TICK} />
        {isOpen ? null : <line x1={to} x2={to} y1={AXIS - TICK} y2={AXIS + TICK} />}
      </g>
      <circle class="limit-washer" cx={value} cy={AXIS} r="4" />
      <circle class="washer-hole" cx={value} cy={AXIS} r="1.3" />
    </svg>
  );
}
