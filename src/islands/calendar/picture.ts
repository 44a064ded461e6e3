import type { CalendarTask } from '../../calc/working.ts';
import { dependenciesOf } from '../../export/dependencies.ts';

/** Sizes of the picture, px. */
export const BOX = { wide: 174, high: 68, across: 20, down: 26, line: 14, letters: 26 } as const;

export interface PlacedBox {
  readonly id: string;
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
  readonly critical: boolean;
  readonly done: boolean;
}

/** What waits for what within one stage, as px from the top left; the work runs downwards. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly boxes: readonly PlacedBox[];
  /** Paths of the lines. */
  readonly lines: readonly { readonly key: string; readonly d: string; readonly critical: boolean }[];
}

/** Words in lines of at most so many letters; what does not fit in the last line ends in "…". */
export function wrapped(text: string, letters: number, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && `${last} ${word}`.length <= letters)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  if (lines.length <= most) return lines;
  const kept = lines.slice(0, most);
  return [...kept.slice(0, -1), `${kept.at(-1)?.slice(0, letters - 1)}…`];
}

/** From the foot of a box to the head of another; past boxes between it runs in the gap beside them. */
function lineOf(from: PlacedBox, to: PlacedBox, isNext: boolean): string {
  const start = from.y + BOX.high;
  const lane = Math.round(to.x / (BOX.wide + BOX.across));
  // Turns differ by lane and level, so that lines of different tasks do not run into one.
  const turn = to.y - 6 - 4 * (lane % 4);
  if (isNext) return `M${from.x + BOX.wide / 2} ${start}V${turn}H${to.x + BOX.wide / 2}V${to.y}`;
  const level = Math.round(from.y / (BOX.high + BOX.down));
  const gap = from.x + BOX.wide + BOX.across / 2 + 4 * ((level % 3) - 1);
  return `M${from.x + BOX.wide - 16} ${start}V${start + 6}H${gap}V${turn}H${to.x + BOX.wide - 16}V${to.y}`;
}

/** Lays out some tasks; what they wait for outside of these is left to the table. `nameOf` writes in a box. */
export function pictureOf(tasks: readonly CalendarTask[], nameOf: (task: CalendarTask) => string): Picture {
  const ids = new Set(tasks.map(({ id }) => id));
  const own = tasks.map((task) => ({ ...task, after: task.after.filter((id) => ids.has(id)) }));
  const laid = dependenciesOf({ tasks: own });
  const words = new Map(tasks.map((task) => [task.id, wrapped(nameOf(task), BOX.letters, 4)]));
  const levels = new Map(laid.boxes.map(({ id, column }) => [id, column]));
  const boxes = laid.boxes.map(
    ({ id, column, row, critical, done }): PlacedBox => ({
      id,
      lines: words.get(id)!,
      x: 1.5 + row * (BOX.wide + BOX.across),
      y: 1.5 + column * (BOX.high + BOX.down),
      critical,
      done,
    }),
  );
  const byId = new Map(boxes.map((box) => [box.id, box]));
  return {
    width: laid.rows * (BOX.wide + BOX.across) + 3,
    height: laid.columns * (BOX.high + BOX.down) - BOX.down + 5,
    boxes,
    lines: laid.lines.map(({ from, to, critical }) => ({
      key: `${from} ${to}`,
      critical,
      d: lineOf(byId.get(from)!, byId.get(to)!, levels.get(to)! - levels.get(from)! === 1),
    })),
  };
}
