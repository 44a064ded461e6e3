import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { pulseRate, stepsPerLength } from '../../formulas/motion.ts';
import { figuresFor, memory, type Slide, usual } from './axis.ts';

const stepsOfTurn: Readonly<Record<string, readonly [pulses: number, why: string]>> = {
  'open-loop-stepper': [200, 'almost every stepper has 200 full steps; the plate says 1.8°'],
  'closed-loop-stepper': [200, 'almost every stepper has 200 full steps; the plate says 1.8°'],
  'mains-servo': [4000, `the gear inside the drive is set to 4,000 pulses a turn; ${memory}`],
  'used-dc-servo': [4000, `1,000 lines on the motor, four edges each; ${memory}`],
};

function stepsPerTurn(look: Look): Quantity | undefined {
  const motor = look.option('axis-motor') ?? '';
  const steps = stepsOfTurn[motor];
  return steps && chosen(steps[0], '1', 'axis-motor', motor, steps[1]);
}

/** Pulses that a stepper drive takes for one full step; a servo counts its turn directly. */
const microsteps = (look: Look): Quantity =>
  look.chosen('axis-motor', 'open-loop-stepper', 'closed-loop-stepper')
    ? usual(8, '1', 'finer buys smoother running, not a finer size; common practice')
    : usual(1, '1', 'a servo counts its turn directly');

/** Pulses from the control to the slide. */
export function pulseFigures(slide: Slide): readonly Figure[] {
  const { of, figure } = figuresFor(slide);
  const train = (look: Look) => ({
    stepsPerTurn: of(look)('steps-per-turn'),
    microsteps: of(look)('microsteps'),
    ratio: of(look)('ratio'),
    lead: of(look)('lead'),
  });
  return [
    figure('steps-per-turn', 'Steps or counts in one motor turn', stepsPerTurn),
    figure('microsteps', 'Pulses in one full step (microsteps)', microsteps),
    figure('steps-per-length', 'Pulses for each length of travel', (look) =>
      derive(stepsPerLength, train(look)),
    ),
    figure('pulse-rate', 'Step pulses a second in a rapid move', (look) =>
      derive(pulseRate, { ...train(look), speed: look.fact(`${slide}-rapid`) }),
    ),
  ];
}
