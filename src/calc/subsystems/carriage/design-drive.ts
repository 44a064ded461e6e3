import type { Figure, Look } from '../../core/figure.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { productOf, quotientOf } from '../../core/steps.ts';
import { cameWithMachine, slideFigure, usual } from '../motors/axis.ts';
import { beltFigures } from '../motors/axis-belt.ts';
import { carriageBelt } from './screws.ts';

export const onRack = (look: Look): boolean => look.chosen('carriage-drive', 'rack-pinion');

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

/** The way from the motor to the screw of the carriage, or to its rack. */
export const driveFigures: readonly Figure[] = [
  ...beltFigures('carriage', carriageBelt),
  slideFigure('carriage', 'ratio', 'Turns of the motor for one of the screw', ratio),
  slideFigure('carriage', 'drive-efficiency', 'Efficiency of belt, gearbox or coupling', driveEfficiency),
];
