import { wrapped } from './lettering.ts';
import type { Look } from './look.ts';
import { letters, line, said } from './pen.ts';

export const PICTURE = { width: 1200, height: 630 } as const;

/** A figure of the page: what it is, and a range or a count in words. */
export interface PictureFigure {
  readonly label: string;
  readonly value: string;
}

/** A drawing in units of its own, to be fitted into the right half. */
export interface PictureDrawing {
  readonly width: number;
  readonly height: number;
  readonly svg: string;
}

export interface PictureText {
  /** Where the page stands: "Question · Spindle". */
  readonly place: string;
  readonly heading: string;
  /** A sentence or two under the heading, where there are no figures to fill the column. */
  readonly lede?: string;
  readonly figures: readonly PictureFigure[];
}

const LEFT = 70;
const COLUMN = 520;
const FOOT = 552;
const TOP = 96;
/** From line to line, in heights of a capital. */
const PITCH = 1.72;
const SMALL = 17;
const SIZES = [40, 35, 30, 26] as const;
const MOST_LINES = 5;

const lines = (text: string, top: number, size: number, colour: string): string =>
  wrapped(text, COLUMN, size)
    .map((words, at) =>
      letters(words, { x: LEFT, y: top + size + at * size * PITCH, size, colour, pen: size / 8.5 }),
    )
    .join('');

/** The largest letters in which the heading takes few enough lines beside so many figures. */
function heading({ heading: text, lede, figures }: PictureText, look: Look): string {
  const most = lede ? 3 : MOST_LINES - Math.max(0, figures.length - 1);
  const size = SIZES.find((each) => wrapped(text, COLUMN, each).length <= most) ?? SIZES.at(-1)!;
  const under = TOP + wrapped(text, COLUMN, size).length * size * PITCH + 24;
  return lines(text, TOP, size, look.ink) + (lede ? lines(lede, under, SMALL, look.quiet) : '');
}

function figuresAt(figures: readonly PictureFigure[], look: Look): string {
  return figures
    .map(({ label, value }, at) => {
      const y = FOOT - 34 - (figures.length - 1 - at) * 78;
      const name = letters(label, { x: LEFT, y: y - 38, size: 14, colour: look.quiet, pen: 1.7 });
      return name + said(value, { x: LEFT, y, size: 23, colour: look.blue });
    })
    .join('');
}

/** The sheet: its edge, crop marks at the corners, and the strip with the name at its foot. */
function sheet(place: string, look: Look): string {
  const edge = `M30 30H1170V600H30zM30 ${FOOT}H1170`;
  const crop = 'M16 30h14M30 16v14M1170 16v14M1170 30h14M16 600h14M30 600v14M1170 600v14M1170 600h14';
  const mark = `<g transform="translate(${LEFT - 14} ${FOOT + 8})"><path fill="${look.blue}" d="M15 3.5H9L1.8 16 9 28.5h6V23A7.1 7.1 0 0 1 15 9z"/><path fill="none" stroke="${look.blue}" stroke-width="1.6" d="M18 4.5h4.5L29 16l-6.5 11.5H18v-4.6a7.1 7.1 0 0 0 0-13.8z"/></g>`;
  return (
    `<path d="M0 0H1200V630H0z" fill="${look.paper}"/>` +
    line(edge + crop, look.frame, 1.5) +
    mark +
    letters('Halfnut', { x: LEFT + 28, y: FOOT + 33, size: 19, colour: look.ink, pen: 2.6 }) +
    letters(place, { x: 1148, y: FOOT + 31, size: 15, colour: look.quiet, pen: 1.8, anchor: 'end' })
  );
}

const BOX = { x: 612, y: 64, width: 530, height: 456 } as const;

function fitted({ width, height, svg }: PictureDrawing): string {
  const scale = Math.min(BOX.width / width, BOX.height / height);
  const [x, y] = [BOX.x + (BOX.width - width * scale) / 2, BOX.y + (BOX.height - height * scale) / 2];
  return `<g transform="translate(${x.toFixed(2)} ${y.toFixed(2)}) scale(${scale.toFixed(4)})">${svg}</g>`;
}

/** The picture of a page as SVG, without a letter that needs a font. */
export function pictureSvg(text: PictureText, drawing: PictureDrawing, look: Look): string {
  const { width, height } = PICTURE;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">` +
    sheet(text.place, look) +
    fitted(drawing) +
    heading(text, look) +
    figuresAt(text.figures, look) +
    '</svg>'
  );
}
