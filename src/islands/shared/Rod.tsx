import { Hatch } from './Hatch.tsx';
import { Before, HalfRange, ScaleLine } from './RodScale.tsx';
import { COLLAR_WIDTH, layoutRod, type RodLayout, type Washer } from './rod-layout.ts';
import { spanText, textWidth } from './span.ts';

export { layoutRod } from './rod-layout.ts';

export interface RodProps {
  /** Twenty figures, low to high, one for each way it could turn out. */
  values: number[];
  /** The twenty as they stood before the last answer, drawn hollow underneath. */
  before?: number[];
  /** The place of one that is looked at, from zero: a ring stands round it. */
  picked?: number | undefined;
  /** The owner's own limit; the collar's left face stands on it. */
  limit?: number;
  format: (n: number) => string;
  /** What is measured: "Money, everything in". */
  label: string;
  /** The unit spelled for a reader who hears it: "dollars", "hours", "weeks". */
  unitWord: string;
  width?: number;
  /** What stands on either side of the collar, and what is heard, where the rod shows no limit but a difference. */
  sides?: readonly [under: string, over: string, heard: string];
  /** Needed only where two rods of one page share a label and a width. */
  id?: string;
}

/** Heights of the bands of the drawing, top to bottom, in px. */
function bands(rod: RodLayout) {
  const top = rod.collarX === undefined ? 4 : 26;
  const axis = top + Math.max(1, rod.tallest) * rod.pitch - rod.pitch / 2 + (rod.mode === 'edge' ? 2 : 0);
  const under = axis + rod.column / 2 + 3;
  const scale = under + (rod.before.length > 0 ? rod.tallestBefore * 7 + 6 : 5);
  const half = scale + 36;
  return { top, axis, under, scale, half };
}

function spoken({ values, limit, format, label, unitWord }: RodProps, rod: RodLayout): string {
  const [low, high] = [values[0] ?? 0, values[values.length - 1] ?? 0];
  const half = `Half of them lie from ${format(rod.half.from)} to ${format(rod.half.to)}.`;
  const count =
    limit === undefined
      ? ''
      : ` ${rod.under} are within your limit of ${format(limit)}, ${rod.over} are over it.`;
  return `${label}, in ${unitWord}: ${values.length} ways it could turn out, from ${format(low)} to ${format(high)}. ${half}${count}`;
}

/** A difference may lie on either side of nothing: its two ends are then written out. */
const halfText = ({ format, sides }: RodProps, { half: { from, to } }: RodLayout): string =>
  sides && from !== to ? `${format(from)} to ${format(to)}` : spanText(format(from), format(to));

function Shaft({ width, y }: { width: number; y: number }) {
  const end = width - 1;
  return <path class="rod-shaft" d={`M1 ${y - 2.5}H${end}l-3 2.5 3 2.5H1l3-2.5z`} />;
}

function FaceWasher({ washer, rod, y, hatch }: { washer: Washer; rod: RodLayout; y: number; hatch: string }) {
  const radius = rod.column / 2 - 0.5;
  return (
    <>
      <circle
        cx={washer.x}
        cy={y}
        r={radius}
        class={washer.past ? 'washer-past' : 'washer'}
        fill={washer.past ? hatch : undefined}
      />
      <circle cx={washer.x} cy={y} r={radius / 3} class={washer.past ? 'washer-past-hole' : 'washer-hole'} />
    </>
  );
}

function EdgeWasher({ washer, y, hatch }: { washer: Washer; y: number; hatch: string }) {
  const kind = washer.past ? 'washer-past' : 'washer';
  return (
    <rect
      x={washer.x - 4.5}
      y={y - 1.35}
      width="9"
      height="2.7"
      class={kind}
      fill={washer.past ? hatch : undefined}
    />
  );
}

function Washers({ rod, y, hatch }: { rod: RodLayout; y: number; hatch: string }) {
  return (
    <>
      {rod.washers.map((washer, i) => {
        const at = y - washer.row * rod.pitch;
        return rod.mode === 'face' ? (
          <FaceWasher key={i} washer={washer} rod={rod} y={at} hatch={hatch} />
        ) : (
          <EdgeWasher key={i} washer={washer} y={at} hatch={hatch} />
        );
      })}
    </>
  );
}

function Ring({ rod, at, y }: { rod: RodLayout; at: number; y: number }) {
  const washer = rod.washers[at];
  if (!washer) return null;
  return (
    <circle class="washer-picked" cx={washer.x} cy={y - washer.row * rod.pitch} r={rod.column / 2 + 2} />
  );
}

function Collar({
  rod,
  top,
  y,
  sides,
}: {
  rod: RodLayout;
  top: number;
  y: number;
  sides: RodProps['sides'];
}) {
  const x = rod.collarX ?? 0;
  const reach = rod.column / 2 + 3;
  const [under, over] = sides ?? [`${rod.under} under`, `${rod.over} over`];
  const middle = Math.min(Math.max(x, textWidth(under) + 8), rod.width - textWidth(over) - 8);
  return (
    <>
      <line
        class="collar-line"
        x1={x}
        x2={x}
        y1={top - 12}
        y2={y - reach}
        stroke-dasharray={rod.offScale ? '3 3' : undefined}
      />
      <rect class="collar" x={x} y={y - reach} width={COLLAR_WIDTH} height={reach * 2} />
      <text class="under" x={middle - 6} y="12" text-anchor="end">
        {under}
      </text>
      <text class="over" x={middle + 6} y="12">
        {over}
      </text>
    </>
  );
}

/** Twenty washers on a rod: a quantile dot plot, with the owner's limit as a collar. Draws only what `values` say. */
export function Rod(props: RodProps) {
  const { values, before = [], limit, format, label, width = 288, id = label } = props;
  const rod = layoutRod(values, limit, width, before);
  const { top, axis, under, scale, half } = bands(rod);
  const hatch = `past-${id.toLowerCase().replace(/[^a-z0-9]+/g, '-')}-${width}`;
  const height = half + 26;
  return (
    <svg
      class="drawing rod"
      role="img"
      aria-label={props.sides?.[2] ?? spoken(props, rod)}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
    >
      <defs>
        <Hatch id={hatch} tone="look" pitch={4} weight={0.7} />
      </defs>
      <Shaft width={width} y={axis} />
      <Washers rod={rod} y={axis} hatch={`url(#${hatch})`} />
      {props.picked === undefined ? null : <Ring rod={rod} at={props.picked} y={axis} />}
      {rod.collarX === undefined ? null : <Collar rod={rod} top={top} y={axis} sides={props.sides} />}
      {before.length > 0 ? <Before rod={rod} y={under} /> : null}
      <ScaleLine rod={rod} y={scale} format={format} />
      <HalfRange rod={rod} y={half} text={halfText(props, rod)} />
    </svg>
  );
}
