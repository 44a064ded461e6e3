import { type AnyFormula, formulas } from '../calc/formulas/registry.ts';

/** Headings of the formula page, each with the first formula under it in the order of the registry. */
const HEADINGS: readonly (readonly [name: string, first: string])[] = [
  ['Screws', 'screw-drive-torque'],
  ['Belts', 'belt-length'],
  ['Slides and motion', 'slide-friction'],
  ['Masses that turn', 'screw-inertia'],
  ['Motors and drives', 'rms-torque'],
  ['Play and stiffness', 'lash-on-diameter'],
  ['Cutting', 'surface-speed'],
  ['Drilling', 'drill-thrust'],
  ['Spindle', 'encoder-edge-rate'],
  ['Threads', 'thread-depth'],
  ['Reach of the tools', 'gang-travel'],
  ['Mains, leakage and cable', 'input-current'],
  ['Heat and room in the cabinet', 'enclosure-area'],
  ['Bands and builds', 'band-mean'],
  ['Prices and buying', 'escalate'],
  ['Whether it pays', 'break-even-pieces'],
  ['Time', 'pert-mean'],
];

export interface Topic {
  readonly name: string;
  readonly anchor: string;
  readonly formulas: readonly AnyFormula[];
}

function positionOf(id: string): number {
  const at = formulas.findIndex((formula) => formula.id === id);
  if (at < 0) throw new Error(`the formula page has a heading before ${id}, which is no formula`);
  return at;
}

/** Every formula under its heading. Throws where a heading names a formula that is gone. */
export const topics: readonly Topic[] = HEADINGS.map(([name, first], at) => {
  const next = HEADINGS[at + 1];
  return {
    name,
    anchor: `topic-${first}`,
    formulas: formulas.slice(positionOf(first), next && positionOf(next[1])),
  };
});
