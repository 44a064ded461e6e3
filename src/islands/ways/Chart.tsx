import { useEffect, useRef, useState } from 'preact/hooks';
import { counted, hoursMark, moneyMark } from '../shared/format.ts';
import { Hatch } from '../shared/Hatch.tsx';
import { textWidth } from '../shared/span.ts';
import { type ChartLayout, layoutChart, type Spot, type Washer } from './chart-layout.ts';

interface Props {
  readonly ways: readonly Spot[];
  readonly plan: Spot;
  readonly money: number | undefined;
  readonly hours: number | undefined;
  /** What is said of each way, by place. */
  readonly words: readonly string[];
  /** Places of the ways that carry their number in the chart. */
  readonly picked: readonly number[];
  readonly open: (place: number) => void;
}

function Axes({ chart }: { chart: ChartLayout }) {
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
function Limits({ chart, money, hours }: { chart: ChartLayout } & Pick<Props, 'money' | 'hours'>) {
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

function Plan({ chart: { left, bottom, right, plan } }: { chart: ChartLayout }) {
  const before = plan.x + 80 > right;
  return (
    <>
      <rect class="chart-better" x={left} y={plan.y} width={plan.x - left} height={bottom - plan.y} />
      <circle class="chart-plan" cx={plan.x} cy={plan.y} r="9" />
      <circle class="washer-hole" cx={plan.x} cy={plan.y} r="3" />
      <text
        class="bold"
        x={before ? plan.x - 13 : plan.x + 13}
        y={plan.y - 8}
        text-anchor={before ? 'end' : 'start'}
      >
        your plan
      </text>
    </>
  );
}

function Numbered({ washer: { x, y }, number }: { washer: Washer; number: number }) {
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

interface SpotProps {
  readonly washer: Washer;
  readonly place: number;
  readonly words: string;
  readonly isCurrent: boolean;
  readonly look: (place: number) => void;
  readonly open: (place: number) => void;
}

function Spotted({ washer: { x, y, onLine }, place, words, isCurrent, look, open }: SpotProps) {
  return (
    <g
      id={`ways-spot-${place}`}
      class="chart-spot"
      role="option"
      aria-selected={isCurrent}
      aria-label={words}
      tabIndex={isCurrent ? 0 : -1}
      onFocus={() => look(place)}
      onMouseEnter={() => look(place)}
      onClick={() => open(place)}
    >
      <circle class="chart-reach" cx={x} cy={y} r="13" />
      <circle class={onLine ? 'washer' : 'washer-before'} cx={x} cy={y} r="6.5" />
      <circle class={onLine ? 'washer-hole' : 'chart-bore'} cx={x} cy={y} r="2.2" />
    </g>
  );
}

const STEPS: Readonly<Record<string, (place: number, last: number) => number>> = {
  ArrowRight: (place, last) => Math.min(last, place + 1),
  ArrowDown: (place, last) => Math.min(last, place + 1),
  ArrowLeft: (place) => Math.max(0, place - 1),
  ArrowUp: (place) => Math.max(0, place - 1),
  Home: () => 0,
  End: (_, last) => last,
};

function useWidth() {
  const holder = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const held = holder.current;
    if (!held) return;
    const watcher = new ResizeObserver(() => setWidth(Math.floor(held.clientWidth)));
    watcher.observe(held);
    setWidth(Math.floor(held.clientWidth));
    return () => watcher.disconnect();
  }, []);
  return { holder, width };
}

/** Money against hours: every way found, the line that none lies under, the plan in force, the limits. */
export function Chart(props: Props) {
  const { ways, words, picked, money, hours, open } = props;
  const { holder, width } = useWidth();
  const [current, setCurrent] = useState(0);
  const place = Math.min(current, ways.length - 1);
  const onKey = (event: KeyboardEvent) => {
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      open(place);
      return;
    }
    const to = STEPS[event.key]?.(place, ways.length - 1);
    if (to === undefined) return;
    event.preventDefault();
    setCurrent(to);
    document.getElementById(`ways-spot-${to}`)?.focus();
  };
  const chart = width > 0 ? layoutChart({ ...props, width }) : undefined;
  return (
    <div class="ways-chart" ref={holder}>
      {chart ? (
        <div
          role="listbox"
          aria-label={`Money against hours: ${counted(ways.length, 'way')}, the cheapest first. Arrow keys go from one to the next, Enter goes to its row in the list.`}
          onKeyDown={onKey}
          tabIndex={-1}
        >
          <svg
            class="drawing"
            width={chart.width}
            height={chart.height}
            viewBox={`0 0 ${chart.width} ${chart.height}`}
            role="none"
          >
            <defs>
              <Hatch id="ways-over" tone="look" pitch={9} weight={0.5} />
            </defs>
            {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of a drawing takes no focus */}
            <g aria-hidden="true">
              <Limits chart={chart} money={money} hours={hours} />
              <Axes chart={chart} />
              <Plan chart={chart} />
              <path class="chart-line" d={chart.line} />
              {picked.map((each) => {
                const washer = chart.washers[each];
                return washer ? <Numbered key={each} washer={washer} number={each + 1} /> : null;
              })}
            </g>
            {chart.washers.map((washer, at) => (
              <Spotted
                key={at}
                washer={washer}
                place={at}
                words={words[at] ?? ''}
                isCurrent={at === place}
                look={setCurrent}
                open={open}
              />
            ))}
          </svg>
        </div>
      ) : null}
      <p class="ways-readout small">{words[place]}</p>
    </div>
  );
}
