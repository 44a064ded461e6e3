import { hoursMark, moneyMark } from '../shared/format.ts';
import { textWidth } from '../shared/span.ts';
import type { ChartLayout, Washer } from './chart-layout.ts';

/** The owner's limits on the two axes; undefined: none. */
interface Collars {
  readonly money: number | undefined;
  readonly hours: number | undefined;
}

export function Axes({ chart }: { chart: ChartLayout }) {
  const { left, right, top, bottom } = chart;
  return (
    <>
      {chart.across.map(({ value, x }) => (
        <g key={`m${value}`}>
          <line class="chart-grid" x1={x} x2={x} y1={top} y2={bottom} />
          <text x={x} y={bottom + 26} text-anchor="middle">
            {moneyMark(value)}
          </text>
        </g>
      ))}
      {chart.up.map(({ value, y }) => (
        <g key={`h${value}`}>
          <line class="chart-grid" x1={left} x2={right} y1={y} y2={y} />
          <text x={left - 12} y={y + 4} text-anchor="end">
            {hoursMark(value)}
          </text>
        </g>
      ))}
      <path class="chart-axis" d={`M${left} ${top}V${bottom}H${right}`} />
    </>
  );
}

/** Hatched: over a limit. The collars sit on the axes, as on a rod. */
export function Limits({ chart, money, hours }: { chart: ChartLayout } & Collars) {
  const { left, right, top, bottom, moneyLimit: x, hoursLimit: y } = chart;
  return (
    <>
      {x === undefined || money === undefined ? null : (
        <>
          <rect x={x} y={top} width={right - x} height={bottom - top} fill="url(#ways-over)" />
          <line class="collar-line" x1={x} x2={x} y1={top - 4} y2={bottom} />
          <rect class="collar" x={x - 4} y={bottom - 9} width="8" height="18" />
          <text class="chart-limit" {...besideLimit(x, right, moneyMark(money))} y={top - 8}>
            your {moneyMark(money)}
          </text>
        </>
      )}
      {y === undefined || hours === undefined ? null : (
        <>
          <rect x={left} y={top} width={right - left} height={y - top} fill="url(#ways-over)" />
          <line class="collar-line" x1={left} x2={right} y1={y} y2={y} />
          <rect class="collar" x={left - 9} y={y - 4} width="18" height="8" />
          <text class="chart-limit" x={right - 4} y={y - 6} text-anchor="end">
            your {hoursMark(hours)}
          </text>
        </>
      )}
    </>
  );
}

const besideLimit = (x: number, right: number, text: string) =>
  x + textWidth(`your ${text}`) + 8 < right
    ? { x: x + 5, 'text-anchor': 'start' as const }
    : { x: x - 5, 'text-anchor': 'end' as const };

/** Cheaper and quicker than the plan in force, inside the limits. */
export function Better({ chart }: { chart: ChartLayout }) {
  const { left, right, top, bottom, plan, moneyLimit = right, hoursLimit = top } = chart;
  const [x, y] = [Math.min(plan.x, moneyLimit), Math.max(plan.y, hoursLimit)];
  return <rect class="chart-better" x={left} y={y} width={x - left} height={bottom - y} />;
}

/** The plan in force; where it lies off the chart it stands at the edge and says so. */
export function Plan({ chart: { left, top, plan } }: { chart: ChartLayout }) {
  const words = plan.isOff ? 'your plan, off the chart' : 'your plan';
  const before = plan.x - textWidth(words) - 20 > left;
  return (
    <>
      <circle class="chart-plan" cx={plan.x} cy={plan.y} r="9" />
      <circle class="washer-hole" cx={plan.x} cy={plan.y} r="3" />
      <text
        class="bold"
        x={before ? plan.x - 13 : plan.x + 13}
        y={Math.max(plan.y + 4, top + 18)}
        text-anchor={before ? 'end' : 'start'}
      >
        {words}
      </text>
    </>
  );
}

export function Numbered({ washer: { x, y }, number }: { washer: Washer; number: number }) {
  return (
    <g class="chart-number">
      <line x1={x} y1={y} x2={x - 14} y2={y + 16} />
      <rect x={x - 25} y={y + 14} width="20" height="18" />
      <text x={x - 15} y={y + 27} text-anchor="middle">
        {number}
      </text>
    </g>
  );
}
