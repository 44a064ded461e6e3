import { gangTools, gangTravel } from '../formulas/reach.ts';
import { curveOf, mm, type Values, type WorkingFigure } from './figure.ts';

const TOOLS = { low: 1, high: 8 };
/** A facing tool goes so far past the centre, m. Common practice. */
const PAST = 0.0015;
const counted = { unit: '', per: 1 } as const;

function answer({ tools = 1, pitch = 1, work = 0, clear = 0, travel = 0 }: Values) {
  const row = { toolPitch: pitch, partRadius: work / 2, clearance: clear, pastCentre: PAST };
  const neededFor = (each: number) => gangTravel.compute({ tools: each, ...row });
  const most = gangTools.compute({ travel, ...row });
  const needed = neededFor(tools);
  return {
    say:
      tools <= most
        ? 'Your tools need {needed} of the {travel} that you have. It serves a row of up to {most}.'
        : most > 0
          ? 'Your tools need {needed}, and you have {travel}, enough for a row of {most}. Set them closer, or turn thinner work with them.'
          : 'Not one tool fits: the work is too thick for {travel}.',
    rows: [
      { id: 'needed', label: 'Cross travel that they need', value: needed, written: mm },
      { id: 'most', label: 'Most that your travel serves', value: most, written: counted },
    ],
    curves: [
      { name: 'travel that the tools need', points: curveOf(TOOLS.low, TOOLS.high, neededFor, 1) },
      { name: 'travel that you have', points: curveOf(TOOLS.low, TOOLS.high, () => travel, 1), broken: true },
    ],
    mark: [tools, needed],
  } as const;
}

/** Tools side by side on a slotted slide, against the cross travel. */
export const gang: WorkingFigure = {
  id: 'gang',
  topic: 'tool-posts',
  question: 'How many tools in a row does the cross travel serve?',
  begin:
    'Set the row and the thickest work; a facing tool is let 1.5 mm past the centre. Run the whole travel by hand first, with that work in the chuck.',
  inputs: [
    { id: 'tools', label: 'Tools in the row', unit: '1', written: counted, ...TOOLS, step: 1, example: 3 },
    {
      id: 'pitch',
      label: 'From tool to tool',
      unit: 'm',
      written: mm,
      low: 15,
      high: 80,
      step: 1,
      example: 35,
    },
    {
      id: 'work',
      label: 'Diameter of the thickest work',
      unit: 'm',
      written: mm,
      low: 2,
      high: 150,
      step: 1,
      example: 20,
    },
    {
      id: 'clear',
      label: 'Air beside the work',
      unit: 'm',
      written: mm,
      low: 0,
      high: 30,
      step: 1,
      example: 5,
    },
    {
      id: 'travel',
      label: 'Cross travel that you have',
      unit: 'm',
      written: mm,
      low: 30,
      high: 300,
      step: 5,
      example: 95,
      own: 'cross-travel-left',
    },
  ],
  across: { label: 'tools in the row', written: counted },
  up: { label: 'cross travel, mm', written: mm },
  formulas: [gangTravel.id, gangTools.id],
  answer,
};
