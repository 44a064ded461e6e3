import { layoutRod } from '../islands/shared/rod-layout.ts';
import type { Look } from './look.ts';
import { letters, line } from './pen.ts';
import type { PictureDrawing } from './picture.ts';

const WIDTH = 372;

/** Twenty washers on a rod with its scale, 372 units wide; the half of them is named by the dimensions of the picture. */
export function rodDrawing(
  look: Look,
  values: readonly number[],
  mark: (n: number) => string,
): PictureDrawing {
  const rod = layoutRod([...values], undefined, WIDTH);
  const axis = 4 + Math.max(1, rod.tallest) * rod.pitch - rod.pitch / 2;
  const shaft = `<path d="M1 ${axis - 2.5}H${WIDTH - 1}l-3 2.5 3 2.5H1l3-2.5z" fill="${look.paper}" stroke="${look.blue}"/>`;
  const radius = rod.column / 2 - 0.5;
  const washers = rod.washers.map(({ x, row }) => {
    const y = axis - row * rod.pitch;
    return `<circle cx="${x}" cy="${y}" r="${radius}" fill="${look.blue}"/><circle cx="${x}" cy="${y}" r="${radius / 3}" fill="${look.paper}"/>`;
  });
  const scale = axis + rod.column / 2 + 8;
  const ticks = rod.ticks.map(({ x }) => `M${x} ${scale}v4`).join('');
  const marks = rod.ticks
    .filter((_, at) => rod.ticks.length < 5 || at % 2 === 0)
    .map(({ value, x }) =>
      letters(mark(value), { x, y: scale + 17, size: 8, colour: look.quiet, pen: 0.9, anchor: 'middle' }),
    );
  const axisLine = line(`M${rod.left} ${scale}H${rod.right}${ticks}`, look.ink, 1);
  return { width: WIDTH, height: scale + 20, svg: [shaft, ...washers, axisLine, ...marks].join('') };
}
