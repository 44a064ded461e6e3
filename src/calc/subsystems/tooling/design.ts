import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, chosen, type Quantity } from '../../core/quantity.ts';
import { differenceOf, productOf, smallestOf } from '../../core/steps.ts';
import { barOverhang, gangTools, gangTravel } from '../../formulas/reach.ts';
import { toolHeightError } from '../../formulas/tool-forces.ts';

const practice = 'common practice, no source';
const clearance = assumed(0.005, 'm', `a tool stays 5 mm clear of the work; ${practice}`);
const pastCentre = assumed(0.0015, 'm', `a facing tool goes 1.5 mm past the centre; ${practice}`);

/** Tools side by side, and the work they are for. */
const row = {
  toolPitch: assumed(0.035, 'm', practice),
  partRadius: assumed(0.01, 'm', `work of 20 mm across; ${practice}`),
  clearance,
  pastCentre,
};

const inRow = (look: Look): boolean => look.chosen('tool-holding', 'gang-tools');

/** A ball nut and its block are longer than the nut they replace. */
function travelLeft(look: Look): Quantity | undefined {
  const ball = look.chosen('cross-screw', 'ball-screw-8', 'ball-screw-12', 'ball-screw-16');
  const travel = look.fact('cross-travel');
  const lost = assumed(0.025, 'm', 'a nut and its block take 25 mm of the travel; common practice');
  return ball ? differenceOf(travel, lost) : travel;
}

const wantedTools = (look: Look): Quantity =>
  look.measured('gang-tools-wanted') ?? assumed(3, '1', 'three tools in line do most small parts');

/** From past the centre to clear of the usual diameter with one tool. */
const reachNeeded = (look: Look): Quantity | undefined =>
  derive(gangTravel, {
    tools: assumed(1, '1', 'one tool at a time'),
    toolPitch: row.toolPitch,
    partRadius: productOf('m', {
      diameter: look.fact('cut-diameter'),
      half: assumed(0.5, '1', 'a radius is half of it'),
    }),
    clearance,
    pastCentre,
  });

/** How far off centre height a tip usually stands, m; from memory of the trade. */
const heightOf: Readonly<Record<string, number>> = {
  'four-way-block': 0.1e-3,
  'quick-change-post': 0.05e-3,
  'quick-change-and-rear-post': 0.05e-3,
  'gang-tools': 0.05e-3,
  'automatic-changer': 0.03e-3,
};

function heightOffset(look: Look): Quantity | undefined {
  const holding = look.option('tool-holding') ?? '';
  const usual = heightOf[holding];
  if (usual === undefined) return look.measured('tool-height-offset');
  const why = 'from memory of the trade, set with care: measure yours';
  return look.measured('tool-height-offset') ?? chosen(usual, 'm', 'tool-holding', holding, why);
}

const heightError = (look: Look): Quantity | undefined =>
  derive(toolHeightError, {
    heightOffset: heightOffset(look),
    zeroDiameter: look.fact('cut-diameter'),
    diameter: look.fact('smallest-diameter'),
  });

/** Bar runs through the spindle and may stick out behind. */
export const throughBar = (look: Look): boolean => look.chosen('bar-feed', 'bar-against-stop', 'bar-puller');

const overhang = (look: Look): Quantity | undefined =>
  throughBar(look)
    ? derive(barOverhang, {
        overhang: look.measured('bar-overhang'),
        diameter:
          look.measured('bar-diameter') ??
          smallestOf({ part: look.fact('cut-diameter'), bore: look.fact('spindle-bore') }),
      })
    : undefined;

export const figures: readonly Figure[] = [
  { id: 'cross-travel-left', label: 'Cross travel that is left with the new nut', of: travelLeft },
  { id: 'cross-reach-needed', label: 'Cross travel that one tool needs', of: reachNeeded },
  {
    id: 'gang-travel-needed',
    label: 'Cross travel for the tools side by side',
    of: (look) => (inRow(look) ? derive(gangTravel, { tools: wantedTools(look), ...row }) : undefined),
  },
  {
    id: 'gang-tools',
    label: 'Most tools side by side that the travel serves',
    of: (look) =>
      inRow(look) ? derive(gangTools, { travel: look.figure('cross-travel-left'), ...row }) : undefined,
  },
  {
    id: 'tool-height-error',
    label: 'Error on the smallest diameter from a tool off centre height',
    of: heightError,
  },
  { id: 'bar-overhang', label: 'Bar behind the headstock, in diameters', of: overhang },
];
