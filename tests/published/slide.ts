import { moveTime, slideFriction, slideThrust } from '../../src/calc/formulas/slide.ts';
import { type PublishedRow, row } from './row.ts';

const standardGravity = 9.80665;

/** The source gives weights in newtons and a gib that is pressed with 490 N; both ways are flat. */
const flat = { friction: 0.05, gibDrag: 0.05 * 490, wedgeAngle: Math.PI / 2 };

export const slideRows: readonly PublishedRow[] = [
  row(slideFriction, {
    what: 'table of 11,760 N weight, friction 0.05, gib pressed with 490 N',
    source: { ref: 'FANUC AC servo motor αiS/αi series descriptions, B-65262EN/03', at: 'p. 46' },
    provenance: 'seen',
    inputs: { ...flat, mass: 11760 / standardGravity, cuttingForce: 0 },
    printed: '612.5',
    unit: 'N',
  }),
  row(slideThrust, {
    what: '980 N of cutting thrust, 294 N pressing down, table of 2,940 N weight, gib pressed with 490 N',
    source: { ref: 'FANUC AC servo motor βiS series descriptions, B-65302EN/01', at: 'p. 59' },
    provenance: 'seen',
    inputs: { ...flat, axialForce: 980, mass: 2940 / standardGravity, cuttingForce: 294 },
    printed: '1166',
    unit: 'N',
  }),
  row(moveTime, {
    what: '275 mm at 15 m/min, speeding up in 0.1 s',
    source: { ref: 'Yaskawa Σ-V-MD user manual', at: 'section 2.2.2, p. 2-5' },
    provenance: 'seen',
    inputs: { distance: 0.275, speed: 0.25, acceleration: 2.5 },
    printed: '1.2',
    unit: 's',
  }),
];
