import type { Grade } from '../report.ts';

/** One class of estimate: how far the job is defined, and the range expected about the figure, fractions of one. */
export interface EstimateClass {
  readonly class: Grade['class'];
  /** Maturity of the definition; neighbours overlap in the source. */
  readonly maturity: readonly [from: number, to: number];
  readonly low: readonly [wide: number, narrow: number];
  readonly high: readonly [narrow: number, wide: number];
  readonly use: string;
}

export const gradeSource = {
  ref: 'AACE International Recommended Practice 18R-97',
  at: 'table 1, cost estimate classification matrix for the process industries',
} as const;

/** The classes from the roughest to the surest. */
export const estimateClasses: readonly EstimateClass[] = [
  { class: 5, maturity: [0, 0.02], low: [-0.5, -0.2], high: [0.3, 1], use: 'screening an idea' },
  { class: 4, maturity: [0.01, 0.15], low: [-0.3, -0.15], high: [0.2, 0.5], use: 'a study' },
  { class: 3, maturity: [0.1, 0.4], low: [-0.2, -0.1], high: [0.1, 0.3], use: 'setting a budget' },
  { class: 2, maturity: [0.3, 0.75], low: [-0.15, -0.05], high: [0.05, 0.2], use: 'control of the spending' },
  { class: 1, maturity: [0.65, 1], low: [-0.1, -0.03], high: [0.03, 0.15], use: 'a check of what is bought' },
];

/** Where classes overlap the rougher one holds: a job is of the class whose upper end it has not passed. */
export const classOf = (maturity: number): EstimateClass =>
  estimateClasses.find(({ maturity: [, to] }) => maturity <= to) ?? estimateClasses.at(-1)!;
