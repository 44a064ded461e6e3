import type { Path } from '../core/path.ts';
import type { Unit } from '../core/quantity.ts';

/** A unit as a reader knows it, and how many of it make one of SI. */
export interface Written {
  readonly unit: string;
  /** The unit of one, where it is a word that has a plural. */
  readonly one?: string;
  readonly per: number;
}

/** What a reader may move. Values are SI. */
export interface FigureInput {
  readonly id: string;
  readonly label: string;
  readonly unit: Unit;
  readonly written: Written;
  /** Limits, step and first value as they are typed. */
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly example: number;
  /** Sold by this unit everywhere, so that inches would hide it. */
  readonly metricOnly?: true;
  /** Figure of the design or of the lathe that stands here on a reader's own path. */
  readonly own?: string;
}

/** The inputs of a figure by id, SI. */
export type Values = Readonly<Record<string, number>>;

/** A line of the small table; `id` is what `{id}` in the sentence stands for. */
export interface FigureRow {
  readonly id: string;
  readonly label: string;
  /** SI. */
  readonly value: number;
  readonly written: Written;
}

/** A line of the picture: points in SI, named at its end. */
export interface Curve {
  readonly name: string;
  readonly points: readonly (readonly [x: number, y: number])[];
  /** A limit or a second case, drawn thin and broken. */
  readonly broken?: true;
}

/** What the figure says for some values. */
export interface FigureAnswer {
  /** A sentence with `{id}` for the rows and inputs. */
  readonly say: string;
  readonly rows: readonly FigureRow[];
  readonly curves: readonly Curve[];
  /** Where the reader stands in the picture, SI. */
  readonly mark: readonly [x: number, y: number];
}

export interface Axis {
  readonly label: string;
  readonly written: Written;
}

/** A sum in the book that a reader may move. Pure data and one function of registered formulas. */
export interface WorkingFigure {
  readonly id: string;
  /** Topic page on which it stands. */
  readonly topic: string;
  readonly question: string;
  /** What to do first, in a sentence. */
  readonly begin: string;
  readonly inputs: readonly FigureInput[];
  readonly across: Axis;
  readonly up: Axis;
  /** What the path itself says of the inputs, SI: a measured play, the parts that somebody makes. */
  readonly ownOf?: (path: Path) => Values;
  /** Own figures are taken only on a path on which this one arises: a servo has no place in a figure of steppers. */
  readonly ownWith?: string;
  /** Ids of the formulas that it is made of. */
  readonly formulas: readonly string[];
  readonly answer: (values: Values) => FigureAnswer;
}

export const perMinute = { unit: 'mm/min', per: 60_000 } as const;
export const volt = { unit: 'V', per: 1 } as const;
export const ampere = { unit: 'A', per: 1 } as const;
export const newtonMetre = { unit: 'N·m', per: 1 } as const;
export const percent = { unit: '%', per: 100 } as const;
export const mm = { unit: 'mm', per: 1000 } as const;
export const rpm = { unit: 'rpm', per: 60 } as const;
export const newton = { unit: 'N', per: 1 } as const;

/** An input in SI: 600 typed as mm is 0.6. */
export const siOf = ({ written }: Pick<FigureInput, 'written'>, typed: number): number => typed / written.per;

/** The values that a figure begins with. */
export const exampleOf = ({ inputs }: Pick<WorkingFigure, 'inputs'>): Values =>
  Object.fromEntries(inputs.map((input) => [input.id, siOf(input, input.example)]));

/** Points of a curve at even steps from `from` to `to`, both ends in. */
export function curveOf(
  from: number,
  to: number,
  of: (x: number) => number,
  steps = 48,
): readonly (readonly [number, number])[] {
  return Array.from({ length: steps + 1 }, (_, at) => {
    const x = from + ((to - from) * at) / steps;
    return [x, of(x)] as const;
  });
}
