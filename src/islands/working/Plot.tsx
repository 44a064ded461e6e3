import type { FigureAnswer, WorkingFigure } from '../../calc/working-figures/figure.ts';
import { threeFigures } from '../shared/quantity.ts';
import { layoutPlot } from './plot-layout.ts';

interface Props {
  readonly figure: WorkingFigure;
  readonly answer: FigureAnswer;
  readonly sentence: string;
}

type Layout = ReturnType<typeof layoutPlot>;

const percent = (part: number): string => `${Number(part.toFixed(2))}%`;

/** Rules at round figures, the figures outside, and the two axes over them. */
function Axes({ plot }: { plot: Layout }) {
  return (
    <>
      {plot.across.map(({ at, value }) => (
        <g key={at}>
          <line class="working-rule" x1={percent(at)} x2={percent(at)} y1="0" y2="100%" />
          <text x={percent(at)} y="100%" dy="1.4em" text-anchor="middle">
            {threeFigures(value)}
          </text>
        </g>
      ))}
      {plot.up.map(({ at, value }) => (
        <g key={at}>
          <line class="working-rule" x1="0" x2="100%" y1={percent(at)} y2={percent(at)} />
          <text x="0" dx="-0.5em" y={percent(at)} dy="0.35em" text-anchor="end">
            {threeFigures(value)}
          </text>
        </g>
      ))}
      <line class="axis-line" x1="0" x2="0" y1="0" y2="100%" />
      <line class="axis-line" x1="0" x2="100%" y1="100%" y2="100%" />
    </>
  );
}

/** The curves stretch with the picture, their strokes do not; what climbs out is cut off at its edge. */
function Curves({ answer, plot }: { answer: FigureAnswer; plot: Layout }) {
  return (
    <svg aria-hidden="true" width="100%" height="100%" viewBox="0 0 100 100" preserveAspectRatio="none">
      {answer.curves.map(({ name, points, broken }) => (
        <polyline
          key={name}
          class={broken ? 'working-curve broken' : 'working-curve'}
          points={points.map(([x, y]) => `${plot.x(x).toFixed(2)},${plot.y(y).toFixed(2)}`).join(' ')}
        />
      ))}
    </svg>
  );
}

/** The reader's point with its dimensions to both axes. */
function Mark({ x, y }: { x: string; y: string }) {
  return (
    <>
      <line class="working-lead" x1="0" x2={x} y1={y} y2={y} />
      <line class="working-lead" x1={x} x2={x} y1={y} y2="100%" />
      <circle class="working-mark" cx={x} cy={y} r="5" />
    </>
  );
}

function Key({ curves }: Pick<FigureAnswer, 'curves'>) {
  return (
    <ul class="working-key small">
      {curves.map(({ name, broken }) => (
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
  );
}

/** The curves of a figure with the reader's point; the table below says the same. Letters keep their size at every width. */
export function Plot({ figure, answer, sentence }: Props) {
  const plot = layoutPlot(figure, answer);
  const [x, y] = answer.mark;
  return (
    <div class="working-picture">
      <p class="small quiet">{figure.up.label}</p>
      <svg class="drawing working-plot" role="img" aria-label={sentence}>
        <Axes plot={plot} />
        <Curves answer={answer} plot={plot} />
        <Mark x={percent(plot.x(x))} y={percent(plot.y(y))} />
      </svg>
      <p class="small quiet working-across">{figure.across.label}</p>
      <Key curves={answer.curves} />
    </div>
  );
}
