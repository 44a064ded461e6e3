import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { productOf, quotientOf, smallestOf } from '../../core/steps.ts';
import { lashOnDiameter } from '../../formulas/lash.ts';
import { stepsPerLength } from '../../formulas/motion.ts';
import { screwThermalGrowth } from '../../formulas/screw-shape.ts';
import { stepperLoadAngle } from '../../formulas/stepper.ts';
import { feedForce, passiveForce } from '../../formulas/tool-forces.ts';
import { feedRatio, passiveRatio, wear } from '../carriage/design-cut.ts';
import { memory, slideFigure, usual } from '../motors/axis.ts';
import { fixedEnd } from '../motors/axis-ends.ts';
import { fullSteps } from '../motors/axis-motor.ts';
import { pushNeeded } from '../motors/axis-push.ts';
import { motorTorqueFor } from '../motors/axis-rapid.ts';
import { worstCut } from '../motors/metals.ts';
import { nutPlay, slidingPlay } from './screws.ts';

const partingFeed = usual(0.05e-3, 'm/rev', 'feed of a parting blade; common practice');
const partingShare = usual(
  0.8,
  '1',
  'a blade pushes back with 0.5 to 0.9 of its cutting force; common practice',
);

const facing = (look: Look): Quantity | undefined => {
  const cuttingForce = look.figure('cutting-force');
  const sharp = derive(feedForce, { cuttingForce, ratio: feedRatio });
  return pushNeeded(look, 'cross', productOf('N', { sharp, wear }), cuttingForce);
};

const turning = (look: Look): Quantity | undefined => {
  const cuttingForce = look.figure('cutting-force');
  return pushNeeded(look, 'cross', derive(passiveForce, { cuttingForce, ratio: passiveRatio }), cuttingForce);
};

const parting = (look: Look): Quantity | undefined => {
  const cuttingForce = look.figure('parting-force');
  return pushNeeded(look, 'cross', productOf('N', { cuttingForce, partingShare }), cuttingForce);
};

/** Play between motor and slide, m: measured as a whole, else nut, bearing and bracket. */
function plays(look: Look): readonly Quantity[] | undefined {
  const own = look.measured('cross-play');
  if (own) return [own];
  const [decision, table] = look.option('cross-nut')
    ? (['cross-nut', nutPlay] as const)
    : (['cross-screw', slidingPlay] as const);
  const option = look.option(decision) ?? '';
  const bearing = fixedEnd(look, 'cross', 'm', ({ play }) => play);
  if (table[option] === undefined || !bearing) return undefined;
  return [
    chosen(table[option], 'm', decision, option, memory),
    bearing,
    usual(5e-6, 'm', 'a bracket that is dowelled; common practice'),
  ];
}

const onDiameter = (...each: readonly (Quantity | undefined)[]): Quantity | undefined => {
  const lashes = each.filter((one) => one !== undefined);
  return lashes.length === each.length ? derive(lashOnDiameter, { lashes }) : undefined;
};

const isStepper = (look: Look) => look.chosen('axis-motor', 'open-loop-stepper', 'closed-loop-stepper');

/** How far the slide lags behind a stepper under its largest push, m. Never more than the full step it slips at. */
function lag(look: Look): Quantity | undefined {
  if (!isStepper(look)) return undefined;
  const holdingTorque = look.figure('cross-motor-torque');
  const asked = motorTorqueFor(look, 'cross', look.figure('cross-push-needed'));
  const steps = derive(stepperLoadAngle, {
    loadTorque: smallestOf({ asked, holdingTorque }),
    holdingTorque,
  });
  const perLength = derive(stepsPerLength, {
    stepsPerTurn: fullSteps,
    microsteps: usual(1, '1', 'counted in full steps'),
    ratio: look.figure('cross-ratio'),
    lead: look.figure('cross-lead'),
  });
  return quotientOf('m', steps, perLength);
}

const growth = (look: Look): Quantity | undefined =>
  derive(screwThermalGrowth, {
    length: productOf('m', {
      screw: look.figure('cross-buckling-length'),
      share: usual(0.75, '1', 'the nut stands three quarters of the way in at ordinary diameters'),
    }),
    rise: usual(10, 'K', 'what a front block and its motor warm in a morning; common practice'),
  });

/** What the work asks of the cross slide, and what its errors do on the diameter. */
export const cutFigures: readonly Figure[] = [
  slideFigure('cross', 'push-turning', 'Push to stand still while turning', turning),
  slideFigure('cross', 'push-facing', 'Push for facing', facing),
  {
    id: 'parting-force',
    label: 'Cutting force of the parting blade in the hardest metal',
    of: (look) => worstCut(look, look.fact('parting-width'), partingFeed),
  },
  slideFigure('cross', 'push-parting', 'Push for parting off', parting),
];

export const diameterFigures: readonly Figure[] = [
  slideFigure('cross', 'play-on-diameter', 'Play seen on the diameter', (look) =>
    onDiameter(...(plays(look) ?? [undefined])),
  ),
  slideFigure('cross', 'lag-on-diameter', 'Lag of the motor under load, on the diameter', (look) =>
    onDiameter(lag(look)),
  ),
  slideFigure('cross', 'growth-on-diameter', 'Growth of a warm screw, on the diameter', (look) =>
    onDiameter(growth(look)),
  ),
];
