import {
  accelerationTorque,
  reflectedInertia,
  rmsTorque,
  screwInertia,
} from '../../src/calc/formulas/inertia.ts';
import { type PublishedRow, row } from './row.ts';

const sigmaV = { ref: 'Yaskawa Σ-V-MD user manual', at: 'section 2.2.2, p. 2-5' } as const;
const sigma2 = { ref: 'Yaskawa Σ-II SGMVH manual', at: 'section 11.1.1' } as const;
const fanuc = { ref: 'FANUC AC servo motor α series descriptions, B-65142E/04', at: 'p. 31' } as const;
const weihong = { ref: 'Weihong WISE servo drive manual', at: 'section 3.5.2.1' } as const;

const iron = 7870;
const smallScrew = screwInertia.compute({ diameter: 0.02, length: 1, density: iron });
const bigScrew = screwInertia.compute({ diameter: 0.04, length: 1.4, density: iron });
const alone = { screwInertia: 0, drivenPulley: 0, motorPulley: 0 };

const screwRows: readonly PublishedRow[] = [
  row(screwInertia, {
    what: '20 mm by 1 m of iron, seen through 2:1',
    source: sigmaV,
    provenance: 'seen',
    inputs: { diameter: 0.02, length: 1, density: iron },
    as: (inertia) => inertia / 4,
    printed: '0.31e-4',
    unit: 'kg·m²',
  }),
  row(screwInertia, {
    what: '40 mm by 1.4 m of iron',
    source: sigma2,
    provenance: 'seen',
    inputs: { diameter: 0.04, length: 1.4, density: iron },
    printed: '27.7e-4',
    unit: 'kg·m²',
  }),
  row(screwInertia, {
    what: '32 mm by 1 m of steel',
    source: fanuc,
    provenance: 'seen',
    inputs: { diameter: 0.032, length: 1, density: 7800 },
    printed: '0.0008',
    unit: 'kg·m²',
  }),
  row(screwInertia, {
    what: '40 mm by 1 m of steel',
    source: { ref: 'FANUC AC servo motor αiS/αi series descriptions, B-65262EN/03', at: 'p. 49' },
    provenance: 'seen',
    inputs: { diameter: 0.04, length: 1, density: 7800 },
    printed: '0.00196',
    unit: 'kg·m²',
  }),
];

const loadRows: readonly PublishedRow[] = [
  row(reflectedInertia, {
    what: '250 kg alone, lead 10 mm, through 2:1',
    source: sigmaV,
    provenance: 'seen',
    inputs: { ...alone, mass: 250, lead: 0.01, ratio: 2 },
    printed: '1.58e-4',
    unit: 'kg·m²',
  }),
  row(reflectedInertia, {
    what: '250 kg with screw and gear, through 2:1',
    source: sigmaV,
    provenance: 'seen',
    inputs: { ...alone, mass: 250, lead: 0.01, ratio: 2, screwInertia: smallScrew, motorPulley: 0.4e-4 },
    printed: '2.29e-4',
    unit: 'kg·m²',
  }),
  row(reflectedInertia, {
    what: '500 kg alone, lead 10 mm, direct',
    source: sigma2,
    provenance: 'seen',
    inputs: { ...alone, mass: 500, lead: 0.01, ratio: 1 },
    printed: '12.7e-4',
    unit: 'kg·m²',
  }),
  row(reflectedInertia, {
    what: '500 kg with screw and coupling, direct',
    source: sigma2,
    provenance: 'seen',
    inputs: { mass: 500, lead: 0.01, ratio: 1, screwInertia: bigScrew, drivenPulley: 0, motorPulley: 4.5e-4 },
    printed: '44.9e-4',
    unit: 'kg·m²',
  }),
  row(reflectedInertia, {
    what: '1,000 kg alone, lead 8 mm, direct',
    source: fanuc,
    provenance: 'seen',
    inputs: { ...alone, mass: 1000, lead: 0.008, ratio: 1 },
    printed: '0.00162',
    unit: 'kg·m²',
  }),
  row(reflectedInertia, {
    what: '10 kg on a lead of 20 mm with a 20 mm screw of 0.5 m and a coupling, direct',
    source: weihong,
    provenance: 'seen',
    inputs: {
      mass: 10,
      lead: 0.02,
      ratio: 1,
      screwInertia: screwInertia.compute({ diameter: 0.02, length: 0.5, density: 7900 }),
      drivenPulley: 0,
      motorPulley: 1e-5,
    },
    printed: '1.73e-4',
    unit: 'kg·m²',
  }),
];

/** Direct drive with 1 m a turn, so that the source's angular figures stand for the slide's. */
const byAngle = (radiansPerSecondSquared: number) => ({
  acceleration: radiansPerSecondSquared / (2 * Math.PI),
  lead: 1,
  ratio: 1,
});

const torqueRows: readonly PublishedRow[] = [
  row(accelerationTorque, {
    what: '0 to 3,000 turns a minute in 0.1 s, and 0.035 N·m of friction',
    source: { ref: 'Yaskawa Σ-S series product manual', at: 'p. 2-13' },
    provenance: 'seen',
    inputs: { rotorInertia: 0.00629e-4, loadInertia: 0.474e-4, ...byAngle((100 * Math.PI) / 0.1) },
    as: (torque) => torque + 0.035,
    printed: '0.186',
    unit: 'N·m',
  }),
  row(accelerationTorque, {
    what: '0 to 16.7 turns a second in 0.1 s, rotor 0.14 and load 1.73 × 10⁻⁴',
    source: weihong,
    provenance: 'seen',
    inputs: {
      rotorInertia: 0.14e-4,
      loadInertia: 1.73e-4,
      ...byAngle((2 * Math.PI * 16.7) / 0.1),
    },
    printed: '0.196',
    unit: 'N·m',
  }),
  row(accelerationTorque, {
    what: '3.39 and 1.0 × 10⁻³ kg·m² at 1,050 rad/s²',
    source: {
      ref: 'THK general catalogue, ball screws',
      at: 'worked example, high-speed transfer equipment (horizontal)',
    },
    provenance: 'memory',
    inputs: { rotorInertia: 1e-3, loadInertia: 3.39e-3, ...byAngle(1050) },
    printed: '4.61',
    unit: 'N·m',
  }),
  row(rmsTorque, {
    what: '0.231, 0.035 and 0.161 N·m for 0.1, 0.8 and 0.1 s of a cycle of 2 s',
    source: weihong,
    provenance: 'seen',
    inputs: { torques: [0.231, 0.035, 0.161, 0], times: [0.1, 0.8, 0.1, 1] },
    printed: '0.067',
    unit: 'N·m',
  }),
];

export const inertiaRows: readonly PublishedRow[] = [...screwRows, ...loadRows, ...torqueRows];
