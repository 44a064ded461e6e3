import type { Figure, Look } from '../../core/figure.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { quotientOf } from '../../core/steps.ts';
import type { EndFixity } from '../../formulas/screw-limits.ts';
import { cameWithMachine, memory, slideFigure, usual } from '../motors/axis.ts';
import { beltFigures } from '../motors/axis-belt.ts';
import { screwLimitFigures, slidingEfficiency, slidingRoot } from '../motors/axis-screw.ts';
import { screwLengthFigures } from '../motors/axis-screw-lengths.ts';
import { ballFigures, sizeOf } from '../motors/screw-sizes.ts';
import { crossBelt, crossScrew } from './screws.ts';

const keepsScrew = (look: Look) => look.chosen('cross-screw', 'original-cross-screw');

const lead = (look: Look): Quantity | undefined =>
  keepsScrew(look)
    ? look.fact('cross-screw-lead')
    : (look.measured('cross-lead') ?? sizeOf(crossScrew(look), 'm', (screw) => screw.lead));

const outside = (look: Look): Quantity | undefined =>
  keepsScrew(look)
    ? look.fact('cross-screw-diameter')
    : sizeOf(crossScrew(look), 'm', (screw) => screw.outside);

function root(look: Look): Quantity | undefined {
  const own = look.measured('cross-screw-root');
  if (own) return own;
  return keepsScrew(look)
    ? slidingRoot(outside(look), lead(look))
    : sizeOf(crossScrew(look), 'm', (screw) => screw.root);
}

function efficiency(look: Look): Quantity | undefined {
  if (cameWithMachine(look)) return usual(0.9, '1', 'the machine is taken to have a ball screw');
  const option = look.option('cross-screw');
  if (!option) return undefined;
  if (look.chosen('cross-screw', 'original-cross-screw', 'sliding-cross-screw'))
    return slidingEfficiency(outside(look), lead(look));
  return look.chosen('cross-nut', 'cross-double-nut')
    ? chosen(0.85, '1', 'cross-nut', 'cross-double-nut', 'a preloaded nut drags a little')
    : chosen(0.9, '1', 'cross-screw', option, 'a ball screw; common practice');
}

const ratio = (look: Look): Quantity | undefined => {
  if (cameWithMachine(look)) return usual(1, '1', 'the motor is taken to sit straight on the screw');
  return look.chosen('cross-motor-place', 'front-direct')
    ? chosen(1, '1', 'cross-motor-place', 'front-direct', 'straight on')
    : quotientOf('1', look.figure('cross-screw-pulley-teeth'), look.figure('cross-motor-pulley-teeth'));
};

function driveEfficiency(look: Look): Quantity | undefined {
  if (cameWithMachine(look)) return usual(1, '1', 'straight on');
  const place = look.option('cross-motor-place');
  if (!place) return undefined;
  return place === 'front-direct'
    ? chosen(1, '1', 'cross-motor-place', place, 'straight on, nothing is lost')
    : chosen(0.95, '1', 'cross-motor-place', place, 'a toothed belt; common practice');
}

/** A cross screw is held in front and hangs free in its nut. */
const held = (look: Look): EndFixity | undefined => (look.option('cross-screw') ? 'fixed-free' : undefined);

const layout = {
  runOff: 0.01,
  covers: 0.02,
  gapFixed: 0.025,
  gapFar: 0.01,
  fixedJournal: 0.03,
  driveStub: 0.02,
  floatingJournal: 0.01,
};

const nut = (look: Look) =>
  keepsScrew(look)
    ? chosen(0.035, 'm', 'cross-screw', 'original-cross-screw', memory)
    : sizeOf(crossScrew(look), 'm', (screw) => screw.nut);

const nutStiffness = (look: Look) =>
  keepsScrew(look)
    ? chosen(4e7, 'N/m', 'cross-screw', 'original-cross-screw', memory)
    : sizeOf(crossScrew(look), 'N/m', (screw) => screw.nutStiffness);

/** Screw of the cross slide and the way from the motor to it. */
export const screwFigures: readonly Figure[] = [
  slideFigure('cross', 'lead', 'Travel for one turn of the screw (lead)', lead),
  slideFigure('cross', 'screw-diameter', 'Outside of the screw', outside),
  slideFigure('cross', 'screw-root', 'Root of the screw', root),
  slideFigure('cross', 'screw-efficiency', 'Efficiency of screw and nut', efficiency),
  slideFigure('cross', 'nut-length', 'Length of the nut', nut),
  slideFigure('cross', 'nut-stiffness', 'Stiffness of the nut', nutStiffness),
  ...ballFigures('cross', crossScrew),
  ...beltFigures('cross', crossBelt),
  slideFigure('cross', 'ratio', 'Turns of the motor for one of the screw', ratio),
  slideFigure('cross', 'drive-efficiency', 'Efficiency of belt or coupling', driveEfficiency),
  ...screwLengthFigures('cross', layout),
  ...screwLimitFigures('cross', held),
];
