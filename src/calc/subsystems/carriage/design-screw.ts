import type { Figure, Look } from '../../core/figure.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { productOf, quotientOf, sumOf } from '../../core/steps.ts';
import type { EndFixity } from '../../formulas/screw-limits.ts';
import { cameWithMachine, memory, slideFigure, usual } from '../motors/axis.ts';
import { beltFigures } from '../motors/axis-belt.ts';
import {
  screwLengthFigures,
  screwLimitFigures,
  slidingEfficiency,
  slidingRoot,
} from '../motors/axis-screw.ts';
import { ballFigures, sizeOf } from '../motors/screw-sizes.ts';
import { carriageBelt, carriageScrew } from './screws.ts';

const onLeadScrew = (look: Look) => look.chosen('carriage-drive', 'original-lead-screw');
const onRack = (look: Look) => look.chosen('carriage-drive', 'rack-pinion');

function lead(look: Look): Quantity | undefined {
  if (onLeadScrew(look)) return look.fact('lead-screw-lead');
  const own = look.measured('carriage-lead');
  if (own || !onRack(look)) return own ?? sizeOf(carriageScrew(look), 'm', (screw) => screw.lead);
  const why = 'a turn of a common rack pinion moves about 60 mm; roll yours one turn and measure';
  return chosen(0.06, 'm', 'carriage-drive', 'rack-pinion', why);
}

const outside = (look: Look): Quantity | undefined =>
  onLeadScrew(look)
    ? look.fact('lead-screw-diameter')
    : sizeOf(carriageScrew(look), 'm', (screw) => screw.outside);

function root(look: Look): Quantity | undefined {
  const own = look.measured('carriage-screw-root');
  if (own) return onRack(look) ? undefined : own;
  return onLeadScrew(look)
    ? slidingRoot(outside(look), lead(look))
    : sizeOf(carriageScrew(look), 'm', (screw) => screw.root);
}

/** Share of the turning work that reaches the carriage through screw and nut, or through the rack. */
function efficiency(look: Look): Quantity | undefined {
  if (cameWithMachine(look)) return usual(0.9, '1', 'the machine is taken to have a ball screw');
  if (onLeadScrew(look) || look.chosen('carriage-drive', 'sliding-screw'))
    return slidingEfficiency(outside(look), lead(look));
  const option = look.option('carriage-drive');
  if (!option) return undefined;
  if (onRack(look)) return chosen(0.85, '1', 'carriage-drive', option, memory);
  const free = look.chosen('carriage-nut', 'rolled-single-nut');
  return free
    ? chosen(0.9, '1', 'carriage-drive', option, 'a ball screw; common practice')
    : chosen(0.85, '1', 'carriage-nut', look.option('carriage-nut') ?? '', 'a preloaded nut drags a little');
}

const gearbox = (look: Look) => look.chosen('carriage-coupling', 'carriage-gearbox');

function ratio(look: Look): Quantity | undefined {
  if (cameWithMachine(look)) return usual(1, '1', 'the motor is taken to sit straight on the screw');
  const coupling = look.option('carriage-coupling');
  if (!coupling) return undefined;
  const atRack = chosen(
    10,
    '1',
    'carriage-drive',
    'rack-pinion',
    'a gearbox of about 10:1 goes with a pinion',
  );
  if (gearbox(look))
    return onRack(look) ? atRack : chosen(3, '1', 'carriage-coupling', coupling, 'a common gearbox is 3:1');
  const belt =
    coupling === 'carriage-direct'
      ? chosen(1, '1', 'carriage-coupling', coupling, 'straight on')
      : quotientOf(
          '1',
          look.figure('carriage-screw-pulley-teeth'),
          look.figure('carriage-motor-pulley-teeth'),
        );
  return onRack(look) ? productOf('1', { belt, atRack }) : belt;
}

function driveEfficiency(look: Look): Quantity | undefined {
  if (cameWithMachine(look)) return usual(1, '1', 'straight on');
  const coupling = look.option('carriage-coupling');
  if (!coupling) return undefined;
  if (gearbox(look) || onRack(look))
    return chosen(0.92, '1', 'carriage-coupling', coupling, 'a gearbox; common practice');
  const straight = coupling === 'carriage-direct';
  return chosen(
    straight ? 1 : 0.95,
    '1',
    'carriage-coupling',
    coupling,
    straight ? 'straight on, nothing is lost' : 'a toothed belt; common practice',
  );
}

/** How the ends of the carriage screw are held; the brackets of an old lead screw only support it. */
function held(look: Look): EndFixity | undefined {
  if (look.chosen('carriage-screw-ends', 'one-end-held')) return 'fixed-free';
  if (look.chosen('carriage-screw-ends', 'both-ends-held')) return 'fixed';
  if (look.option('carriage-screw-ends')) return 'fixed-supported';
  return onLeadScrew(look) ? 'supported' : undefined;
}

const layout = {
  runOff: 0.01,
  covers: 0.03,
  gapFixed: 0.015,
  gapFar: 0.015,
  fixedJournal: 0.035,
  driveStub: 0.025,
  floatingJournal: 0.015,
};

/** An old lead screw is longer than the travel: brackets, apron and the room behind it. */
const kept = (look: Look) =>
  sumOf({
    travel: look.fact('carriage-travel'),
    ends: usual(0.25, 'm', 'an old lead screw is about 250 mm longer than the travel; measure yours'),
  });

const keptLengths = new Set(['carriage-screw-length', 'carriage-whirl-length', 'carriage-buckling-length']);

const lengths = screwLengthFigures('carriage', layout).map((figure) =>
  keptLengths.has(figure.id)
    ? {
        ...figure,
        of: (look: Look) =>
          onLeadScrew(look) && !look.chosen('driven-axes', 'cross-slide-only') ? kept(look) : figure.of(look),
      }
    : figure,
);

const nut = (look: Look) => sizeOf(carriageScrew(look), 'm', (screw) => screw.nut);

/** A half-nut is short and worn; a bought nut comes with its own figure. */
const nutStiffness = (look: Look) =>
  onLeadScrew(look)
    ? chosen(5e7, 'N/m', 'carriage-drive', 'original-lead-screw', memory)
    : sizeOf(carriageScrew(look), 'N/m', (screw) => screw.nutStiffness);

/** Screw of the carriage and the way from the motor to it. */
export const screwFigures: readonly Figure[] = [
  slideFigure('carriage', 'lead', 'Travel for one turn of the screw (lead)', lead),
  slideFigure('carriage', 'screw-diameter', 'Outside of the screw', outside),
  slideFigure('carriage', 'screw-root', 'Root of the screw', root),
  slideFigure('carriage', 'screw-efficiency', 'Efficiency of screw and nut', efficiency),
  slideFigure('carriage', 'nut-length', 'Length of the nut', nut),
  slideFigure('carriage', 'nut-stiffness', 'Stiffness of the nut', nutStiffness),
  ...ballFigures('carriage', carriageScrew),
  ...beltFigures('carriage', carriageBelt),
  slideFigure('carriage', 'ratio', 'Turns of the motor for one of the screw', ratio),
  slideFigure('carriage', 'drive-efficiency', 'Efficiency of belt, gearbox or coupling', driveEfficiency),
  ...lengths,
  ...screwLimitFigures('carriage', held),
];
