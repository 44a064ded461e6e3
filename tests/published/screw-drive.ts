import { screwDriveTorque, screwThrust } from '../../src/calc/formulas/screw-drive.ts';
import { type PublishedRow, row } from './row.ts';

const examPaper = { ref: 'engineeringprep.com, problem 516', at: 'answer' } as const;
const sigmaV = { ref: 'Yaskawa Σ-V-MD user manual', at: 'section 2.2.2, p. 2-5' } as const;

/** The maker takes gravity as 9.8 m/s²; its own constant stands in its own rows. */
const makersGravity = 9.8;

export const screwDriveRows: readonly PublishedRow[] = [
  row(screwDriveTorque, {
    what: '20 kN on a lead of 10 mm at 70 %',
    source: examPaper,
    provenance: 'seen',
    inputs: { force: 20000, lead: 0.01, efficiency: 0.7 },
    printed: '45.5',
    unit: 'N·m',
  }),
  row(screwDriveTorque, {
    what: '250 kg on ways of friction 0.2, lead 10 mm, through a gear of 2:1',
    source: sigmaV,
    provenance: 'seen',
    inputs: { force: 0.2 * 250 * makersGravity, lead: 0.01, efficiency: 0.9 },
    as: (torque) => torque / 2,
    printed: '0.43',
    unit: 'N·m',
  }),
  row(screwDriveTorque, {
    what: '500 kg on ways of friction 0.2, lead 10 mm, direct',
    source: { ref: 'Yaskawa Σ-II SGMVH manual', at: 'section 11.1.1' },
    provenance: 'seen',
    inputs: { force: 0.2 * 500 * makersGravity, lead: 0.01, efficiency: 0.9 },
    printed: '1.73',
    unit: 'N·m',
  }),
  row(screwDriveTorque, {
    what: '10 kg on ways of friction 0.1, lead 20 mm',
    source: { ref: 'Weihong WISE servo drive manual', at: 'section 3.5.2.1, constant torque' },
    provenance: 'seen',
    inputs: { force: 0.1 * 10 * makersGravity, lead: 0.02, efficiency: 0.9 },
    printed: '0.035',
    unit: 'N·m',
  }),
  row(screwDriveTorque, {
    what: '612.5 N on a lead of 20 mm, and 0.8 N·m of friction in nut and bearings',
    source: { ref: 'FANUC AC servo motor αiS/αi series descriptions, B-65262EN/03', at: 'p. 46' },
    provenance: 'seen',
    inputs: { force: 612.5, lead: 0.02, efficiency: 0.9 },
    as: (torque) => torque + 0.8,
    printed: '3.0',
    unit: 'N·m',
  }),
  row(screwDriveTorque, {
    what: '1,166 N while cutting, lead 20 mm, and 0.8 N·m of friction in nut and bearings',
    source: { ref: 'FANUC AC servo motor βiS series descriptions, B-65302EN/01', at: 'p. 59' },
    provenance: 'seen',
    inputs: { force: 1166, lead: 0.02, efficiency: 0.9 },
    as: (torque) => torque + 0.8,
    printed: '4.9',
    unit: 'N·m',
  }),
  row(screwDriveTorque, {
    what: '17 N on a lead of 40 mm',
    source: {
      ref: 'THK general catalogue, ball screws',
      at: 'worked example, high-speed transfer equipment (horizontal)',
    },
    provenance: 'memory',
    inputs: { force: 17, lead: 0.04, efficiency: 0.9 },
    as: (torque) => torque * 1000,
    printed: '120',
    unit: 'N·mm',
  }),
  row(screwThrust, {
    what: '45.5 N·m on a lead of 10 mm at 70 %, read the other way round',
    source: examPaper,
    provenance: 'seen',
    inputs: { torque: 45.5, lead: 0.01, efficiency: 0.7, ratio: 1, beltEfficiency: 1 },
    as: (force) => force / 1000,
    printed: '20',
    unit: 'kN',
  }),
];
