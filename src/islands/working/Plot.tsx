import type { FigureAnswer, WorkingFigure } from '../../calc/working-figures/figure.ts';
import { threeFigures } from '../shared/quantity.ts';
import { BOTTOM, HEIGHT, LEFT, layoutPlot, RIGHT, TOP, WIDTH } from './plot-layout.ts';

interface Props {
  readonly figure: WorkingFigure;
  readonly answer: FigureAnswer;
  readonly sentence: string;
}

/** What climbs out of the picture is cut off at its edge. */
const [ROOM_WIDE, ROOM_HIGH] = [RIGHT - LEFT, BOTTOM - TOP];
const ROOM = `${LEFT} ${TOP} ${ROOM_WIDE} ${ROOM_HIGH}`;

type Layout = ReturnType<typeof layoutPlot>;

function Axes({ figure, plot }: { figure: WorkingFigure; plot: Layout }) {
  return (
    <>
      <path class="axis-line" d={`M${LEFT} ${TOP}V${BOTTOM}H${RIGHT}`} />
      {plot.across.map(({ at, value }) => (
        <text key={at} x={at} y={BOTTOM + 15} font-size="13" text-anchor="middle">
          {threeFigures(value)}
        </text>
      ))}
      {plot.up.map(({ at, value }) => (
        <text key={at} x={LEFT - 6} y={at + 4} font-size="13" text-anchor="end">
          {threeFigures(value)}
        </text>
      ))}
      <text class="quiet-text" x={(LEFT + RIGHT) / 2} y={HEIGHT - 8} font-size="13" text-anchor="middle">
        {figure.across.label}
      </text>
    </>
  );
}

/** The reader's point with its dimensions to both axes. */
function Mark({ at: [x, y] }: { at: readonly [number, number] }) {
  return (
    <>
      <path class="working-lead" d={`M${LEFT} ${y}H${x}V${BOTTOM}`} />
      <circle class="working-mark" cx={x} cy={y} r="5" />
    </>
  );
}

/** The curves of a figure with the reader's point; the table below says the same. */
export function Plot({ figure, answer, sentence }: Props) {
  const plot = layoutPlot(figure, answer);
  const { up } = figure;
  const [markX, markY] = answer.mark;
  return (
    <div class="working-picture">
      <p class="small quiet working-up">{up.label}</p>
      <svg class="drawing" role="img" aria-label={sentence} width="560" viewBox={`0 0 ${WIDTH} ${HEIGHT}`}>
        <svg aria-hidden="true" x={LEFT} y={TOP} width={ROOM_WIDE} height={ROOM_HIGH} viewBox={ROOM}>
          {answer.curves.map(({ name, points, broken }) => (
            <polyline
              key={name}
              class={broken ? 'working-curve broken' : 'working-curve'}
              vector-effect="non-scaling-stroke"
              points={points.map(([x, y]) => `${plot.x(x).toFixed(1)},${plot.y(y).toFixed(1)}`).join(' ')}
            />
          ))}
        </svg>
        <Axes figure={figure} plot={plot} />
        <Mark at={[plot.x(markX), plot.y(markY)]} />
      </svg>
      <ul class="working-key small">
        {answer.curves.map(({ name, broken }) => (
          <li key={name}>
            <span aria-hidden="true" class={broken ? 'working-dash broken' : 'working-dash'} />
            {name}
          </li>
        ))}
        <li>
          <span aria-hidden="true" class="working-dot" />
          where you stand
        </li>
      </ul>
    </div>
  );
}
