import type { Figure, Look } from '../../core/figure.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { sumOf } from '../../core/steps.ts';
import type { EndFixity } from '../../formulas/screw-limits.ts';
import { cameWithMachine, memory, slideFigure, usual } from '../motors/axis.ts';
import { screwLimitFigures, slidingEfficiency, slidingRoot } from '../motors/axis-screw.ts';
import { screwLengthFigures } from '../motors/axis-screw-lengths.ts';
import { ballFigures, sizeOf } from '../motors/screw-sizes.ts';
import { driveFigures, onRack } from './design-drive.ts';
import { carriageScrew } from './screws.ts';

const onLeadScrew = (look: Look) => look.chosen('carriage-drive', 'original-lead-screw');

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
  ...driveFigures,
  ...lengths,
  ...screwLimitFigures('carriage', held),
];
