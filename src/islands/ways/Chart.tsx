import { useEffect, useRef, useState } from 'preact/hooks';
import { counted } from '../shared/format.ts';
import { Hatch } from '../shared/Hatch.tsx';
import { Axes, Better, Limits, Numbered, Plan } from './ChartParts.tsx';
import { layoutChart, type Spot, type Washer } from './chart-layout.ts';

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

interface SpotProps {
  readonly washer: Washer;
  readonly place: number;
  readonly words: string;
  readonly isCurrent: boolean;
  readonly look: (place: number) => void;
  readonly open: (place: number) => void;
}

/** A page that scrolls under a resting mouse is no pointing. */
const hasMoved = ({ movementX, movementY }: MouseEvent): boolean => movementX !== 0 || movementY !== 0;

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
      onMouseMove={(event) => {
        if (hasMoved(event)) look(place);
      }}
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
              <Better chart={chart} />
              <Limits chart={chart} money={money} hours={hours} />
              <Axes chart={chart} />
              <Plan chart={chart} />
              <path class="chart-line" d={chart.line} />
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
            {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of a drawing takes no focus */}
            <g class="chart-numbers" aria-hidden="true">
              {picked.map((each) => {
                const washer = chart.washers[each];
                return washer ? <Numbered key={each} washer={washer} number={each + 1} /> : null;
              })}
            </g>
          </svg>
        </div>
      ) : null}
      <p class="ways-readout small">{words[place]}</p>
    </div>
  );
}
