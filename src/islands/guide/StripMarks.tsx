import type { ComponentChildren } from 'preact';
import type { MovedCheck, OptionEffect, Says } from '../../calc/choosing.ts';
import { MarkShape, type Result } from '../shared/ResultMark.tsx';
import { AXIS, placeOn } from './strip-scale.ts';

const HEIGHT = 20;
const MIDDLE = HEIGHT / 2;
const ZERO = AXIS / 2;

function Drawn({ unclear = false, children }: { unclear?: boolean; children: ComponentChildren }) {
  return (
    <svg
      class={unclear ? 'unclear' : undefined}
      width={AXIS}
      height={HEIGHT}
      viewBox={`0 0 ${AXIS} ${HEIGHT}`}
      aria-hidden="true"
    >
      {children}
    </svg>
  );
}

/** Nothing moves: an open circle on the zero. */
export function NoChange() {
  return (
    <Drawn>
      <circle class="no-change" cx={ZERO} cy={MIDDLE} r="4" />
    </Drawn>
  );
}

interface BandProps {
  readonly by: OptionEffect['money'];
  readonly says: Says;
  readonly end: number | undefined;
}

/** Eight of ten outcomes lie between the two ticks. */
export function BandMark({ by, says, end }: BandProps) {
  if (says === 'same' || end === undefined) return <NoChange />;
  const [from, to] = [placeOn(by.p10, end), placeOn(by.p90, end)];
  return (
    <Drawn unclear={says === 'unclear'}>
      <rect class="band" x={from} y={MIDDLE - 3} width={to - from} height="6" />
      <path class="band-line" d={`M${from} ${MIDDLE}H${to}`} />
      <path class="band-tick" d={`M${from} ${MIDDLE - 6}v12M${to} ${MIDDLE - 6}v12`} />
    </Drawn>
  );
}

const counting = (n: number): number[] => Array.from({ length: n }, (_, at) => at);

/** One bar for each way of twenty: filled to the right of the zero where trouble comes, open to the left where it goes. */
export function RiskMark({ up, down, end }: { up: number; down: number; end: number | undefined }) {
  if (end === undefined || up + down === 0) return <NoChange />;
  const pitch = placeOn(1, end) - ZERO;
  const width = Math.min(4.5, pitch * 0.65);
  const bar = { y: MIDDLE - 6, width, height: 12 };
  return (
    <Drawn>
      {counting(down).map((at) => (
        <rect key={at} class="risk-down" x={ZERO - (at + 1) * pitch} {...bar} />
      ))}
      {counting(up).map((at) => (
        <rect key={at} class="risk-up" x={ZERO + (at + 1) * pitch - width} {...bar} />
      ))}
    </Drawn>
  );
}

const MARK = 14;
const STEP = MARK + 3;
/** Marks that find room on either side of the zero. */
const MOST = 4;
const GRAVITY: readonly Result[] = ['stop', 'look', 'not-yet', 'ok'];

/** Checks that come stand right of the zero with their result, gravest first; those that go stand left, dashed. */
export function CheckMarks({ checks }: { checks: readonly MovedCheck[] }) {
  if (checks.length === 0) return <NoChange />;
  const gone = checks.filter(({ after }) => after === 'gone').length;
  const now = GRAVITY.flatMap((result) => checks.filter(({ after }) => after === result).map(() => result));
  const place = (x: number) => `translate(${x} ${(HEIGHT - MARK) / 2}) scale(${MARK / 16})`;
  return (
    <Drawn>
      {counting(Math.min(gone, MOST)).map((at) => (
        <rect key={at} class="check-gone" x={ZERO - (at + 1) * STEP} y={4} width="12" height="12" />
      ))}
      {now.slice(0, MOST).map((result, at) => (
        <g key={`${result}${at}`} class={`result-${result}`} transform={place(ZERO + 4 + at * STEP)}>
          <MarkShape result={result} />
        </g>
      ))}
    </Drawn>
  );
}
