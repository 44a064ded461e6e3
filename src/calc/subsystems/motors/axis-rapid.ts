import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import type { Quantity } from '../../core/quantity.ts';
import { productOf, quotientOf, sumOf } from '../../core/steps.ts';
import { accelerationTorque, pulleyInertia, reflectedInertia, screwInertia } from '../../formulas/inertia.ts';
import { screwDriveTorque } from '../../formulas/screw-drive.ts';
import { figuresFor, figuresOf, type Slide, usual } from './axis.ts';

const aluminium = usual(2700, 'kg/m³', 'aluminium pulleys');
const steel = usual(7850, 'kg/m³', 'a steel screw');
const none = usual(0, 'kg·m²', 'no pulley: a coupling is small beside the screw');
const massFact: Readonly<Record<Slide, string>> = { carriage: 'saddle-mass', cross: 'cross-slide-mass' };

/** Inertia of a pulley by its tooth count, nothing where there is no belt. */
const pulley = (look: Look, slide: Slide, teeth: string): Quantity | undefined => {
  const count = look.figure(`${slide}-${teeth}`);
  if (!count) return none;
  const width = usual(0.021, 'm', 'a pulley for a belt 15 mm wide');
  return derive(pulleyInertia, {
    teeth: count,
    pitch: look.figure(`${slide}-belt-pitch`),
    width,
    density: aluminium,
  });
};

/** Torque at the motor for a force at the slide, N·m. */
export function motorTorqueFor(look: Look, slide: Slide, force: Quantity | undefined): Quantity | undefined {
  const of = figuresOf(slide)(look);
  const screw = derive(screwDriveTorque, { force, lead: of('lead'), efficiency: of('screw-efficiency') });
  const train = productOf('1', { ratio: of('ratio'), efficiency: of('drive-efficiency') });
  return quotientOf('N·m', screw, train);
}

function loadInertia(look: Look, slide: Slide): Quantity | undefined {
  const of = figuresOf(slide)(look);
  return derive(reflectedInertia, {
    mass: look.fact(massFact[slide]),
    lead: of('lead'),
    ratio: of('ratio'),
    screwInertia: of('screw-inertia'),
    drivenPulley: pulley(look, slide, 'screw-pulley-teeth'),
    motorPulley: pulley(look, slide, 'motor-pulley-teeth'),
  });
}

/** What a fast move asks of the motor of a slide. */
export function rapidFigures(slide: Slide): readonly Figure[] {
  const { of, figure } = figuresFor(slide);
  return [
    figure('screw-inertia', 'Inertia of the screw', (look) =>
      derive(screwInertia, {
        diameter: of(look)('screw-diameter'),
        length: of(look)('screw-length'),
        density: steel,
      }),
    ),
    figure('load-inertia', 'Inertia that the motor feels', (look) => loadInertia(look, slide)),
    figure('inertia-ratio', 'That inertia against the motor itself', (look) =>
      quotientOf('1', of(look)('load-inertia'), of(look)('rotor-inertia')),
    ),
    figure('acceleration-torque', 'Torque to speed up', (look) =>
      derive(accelerationTorque, {
        rotorInertia: of(look)('rotor-inertia'),
        loadInertia: of(look)('load-inertia'),
        acceleration: look.fact('slide-acceleration'),
        lead: of(look)('lead'),
        ratio: of(look)('ratio'),
      }),
    ),
    figure('friction-torque', 'Torque against the friction', (look) =>
      motorTorqueFor(look, slide, of(look)('friction')),
    ),
    figure('rapid-torque-needed', 'Torque that a fast move needs', (look) =>
      sumOf({ speedUp: of(look)('acceleration-torque'), friction: of(look)('friction-torque') }),
    ),
  ];
}
