import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, type Quantity } from '../../core/quantity.ts';
import { largestOf, productOf, quotientOf, smallestOf } from '../../core/steps.ts';
import { cuttingForce, cuttingPower, spindleSpeedFor, surfaceSpeed } from '../../formulas/cutting.ts';
import { spindleTorque } from '../../formulas/spindle.ts';
import { driveFrequencyCap, driveTorqueAtFrequency } from '../../formulas/spindle-drive.ts';
import { cuttingTorque } from '../../formulas/tool-forces.ts';
import { phaseMotor, variable } from './design-drive.ts';
import { type ChosenMetal, chosenMetals } from './metals.ts';

type Position = 'slow' | 'fast';

const beltEfficiency = assumed(0.93, '1', 'a belt in fair order; common practice');
const fullTurn = assumed(2 * Math.PI, 'rad', 'one turn');
const twice = assumed(2, '1', 'a motor on a drive is good for about twice the frequency on its plate');
const once = assumed(1, '1', 'a motor with its own electronics is not run above the speed on its plate');

const forceIn = (look: Look, { kc11, mc }: ChosenMetal): Quantity | undefined =>
  derive(cuttingForce, {
    kc11,
    mc,
    depth: look.fact('cut-depth'),
    feed: look.fact('cut-feed'),
    enteringAngle: assumed(Math.PI / 2, 'rad', 'a square shoulder'),
  });

/** Spindle speed for the cut in one metal, held back where chuck or work cannot stand it. */
const speedIn = (look: Look, metal: ChosenMetal): Quantity | undefined =>
  smallestOf({
    wanted: derive(spindleSpeedFor, {
      surfaceSpeed: metal.surfaceSpeed,
      diameter: look.fact('cut-diameter'),
    }),
    limit: look.figure('chuck-speed-limit'),
  });

/** The chosen metal that takes the largest force. */
const hardest = (look: Look): ChosenMetal | undefined =>
  chosenMetals(look).reduce<ChosenMetal | undefined>(
    (worst, metal) =>
      (forceIn(look, metal)?.value ?? 0) > (worst ? (forceIn(look, worst)?.value ?? 0) : 0) ? metal : worst,
    undefined,
  );

const powerIn = (look: Look, metal: ChosenMetal): Quantity | undefined =>
  derive(cuttingPower, {
    cuttingForce: forceIn(look, metal),
    surfaceSpeed: derive(surfaceSpeed, {
      diameter: look.fact('cut-diameter'),
      speed: speedIn(look, metal),
    }),
    efficiency: assumed(1, '1', 'power at the tool; what the belt loses is counted at the spindle'),
  });

const worstOf = (look: Look, of: (look: Look, metal: ChosenMetal) => Quantity | undefined) =>
  largestOf(Object.fromEntries(chosenMetals(look).map((metal) => [metal.id, of(look, metal)])));

function cutSpeed(look: Look): Quantity | undefined {
  const metal = hardest(look);
  return metal && speedIn(look, metal);
}

/** The highest speed of a belt position that its motor reaches. */
const topOf = (look: Look, position: Position): Quantity | undefined =>
  productOf('rev/s', {
    rated: quotientOf('rev/s', look.figure('spindle-motor-speed'), look.figure(`belt-ratio-${position}`)),
    share: phaseMotor(look) ? twice : once,
  });

const runSpeed = (look: Look, position: Position): Quantity | undefined =>
  variable(look)
    ? smallestOf({ wanted: look.figure('cut-speed'), top: look.figure(`spindle-top-${position}`) })
    : undefined;

const frequencyAt = (look: Look, position: Position): Quantity | undefined =>
  phaseMotor(look)
    ? derive(driveFrequencyCap, {
        spindleSpeed: look.figure(`cut-speed-${position}`),
        ratio: look.figure(`belt-ratio-${position}`),
        motorSpeed: look.figure('spindle-motor-speed'),
        baseFrequency: look.fact('mains-frequency'),
      })
    : undefined;

const motorTorqueAt = (look: Look, position: Position): Quantity | undefined =>
  phaseMotor(look)
    ? derive(driveTorqueAtFrequency, {
        ratedTorque: look.figure('spindle-motor-torque'),
        baseFrequency: look.fact('mains-frequency'),
        frequency: look.figure(`cut-frequency-${position}`),
      })
    : look.figure('spindle-motor-torque');

const torqueAt = (look: Look, position: Position): Quantity | undefined =>
  variable(look)
    ? derive(spindleTorque, {
        motorTorque: motorTorqueAt(look, position),
        ratio: look.figure(`belt-ratio-${position}`),
        efficiency: beltEfficiency,
      })
    : undefined;

const inPosition = (position: Position): Figure[] => [
  {
    id: `spindle-top-${position}`,
    label: `Highest speed that the motor reaches, ${position} belt position`,
    of: (look) => topOf(look, position),
  },
  {
    id: `cut-speed-${position}`,
    label: `Spindle speed at an ordinary cut, ${position} belt position`,
    of: (look) => runSpeed(look, position),
  },
  {
    id: `cut-frequency-${position}`,
    label: `Drive frequency at an ordinary cut, ${position} belt position`,
    of: (look) => frequencyAt(look, position),
  },
  {
    id: `spindle-torque-${position}`,
    label: `Torque at the spindle at an ordinary cut, ${position} belt position`,
    of: (look) => torqueAt(look, position),
  },
  {
    id: `spindle-power-${position}`,
    label: `Power at the spindle at an ordinary cut, ${position} belt position`,
    of: (look) =>
      productOf('W', {
        torque: look.figure(`spindle-torque-${position}`),
        speed: look.figure(`cut-speed-${position}`),
        fullTurn,
      }),
  },
];

const lowest = (position: Position): Figure => ({
  id: `spindle-lowest-${position}`,
  label: `Slowest useful speed, ${position} belt position`,
  of: (look) =>
    phaseMotor(look)
      ? productOf('rev/s', {
          rated: quotientOf(
            'rev/s',
            look.figure('spindle-motor-speed'),
            look.figure(`belt-ratio-${position}`),
          ),
          share: quotientOf(
            '1',
            assumed(20, 'Hz', 'below 15 to 20 Hz a motor that cools itself is weak and hot; common practice'),
            look.fact('mains-frequency'),
          ),
        })
      : undefined,
});

/** What an ordinary cut asks, and what each belt position gives. */
export const cutFigures: readonly Figure[] = [
  {
    id: 'cut-force',
    label: 'Force of an ordinary cut, in the hardest metal chosen',
    of: (look) => worstOf(look, forceIn),
  },
  { id: 'cut-speed', label: 'Spindle speed that an ordinary cut wants', of: cutSpeed },
  {
    id: 'cut-torque',
    label: 'Torque that an ordinary cut asks of the spindle',
    of: (look) =>
      derive(cuttingTorque, {
        cuttingForce: look.figure('cut-force'),
        diameter: look.fact('cut-diameter'),
      }),
  },
  {
    id: 'cut-power',
    label: 'Power that an ordinary cut asks of the spindle',
    of: (look) => worstOf(look, powerIn),
  },
  ...inPosition('slow'),
  ...inPosition('fast'),
  lowest('slow'),
  lowest('fast'),
];
