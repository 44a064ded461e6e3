import { mm, type Reading } from '../../core/reading.ts';

const points = (say: string, tasks: readonly string[], risks: readonly string[]) => ({ say, tasks, risks });

/** What is measured on motors and their supply. */
export const readings: readonly Reading[] = [
  {
    id: 'heavy-plate-gives',
    task: 'heavy-motor-mounts',
    what: 'Movement of a motor plate',
    where: '100 N hung on the shaft',
    unit: 'm',
    show: 'length',
    atMost: mm(0.02),
    points: points(
      'Thicker plate or a rib: a plate that bends lets the belt jump.',
      ['heavy-motor-mounts', 'bracket-drawings'],
      ['slow-drift', 'machine-too-flexible'],
    ),
  },
  {
    id: 'supply-against-drive',
    task: 'build-transformer-supply',
    what: 'No-load voltage as a share of what the drives stand',
    unit: '1',
    show: 'share',
    atMost: 0.9,
    points: points(
      'Take turns off or use another tap. Do not connect a drive to find out.',
      ['build-transformer-supply', 'bench-motors'],
      ['supply-kills-drive', 'first-power-damage'],
    ),
  },
  {
    id: 'supply-bled',
    task: 'build-transformer-supply',
    what: 'Voltage left after the time on the label',
    where: 'no drive connected',
    unit: 'V',
    show: 'voltage',
    atMost: 60,
    points: points(
      'The bleed resistor is open or too large. Discharge through a lamp, measure, and mend it first.',
      ['build-transformer-supply'],
      ['first-power-damage'],
    ),
  },
  {
    id: 'mains-drive-earth',
    task: 'wire-mains-drives',
    what: 'Earth of each drive',
    where: 'lead resistance taken off',
    unit: 'ohm',
    show: 'resistance',
    atMost: 0.1,
    points: points(
      'Scrape paint, star washer, torque. No power before it reads right.',
      ['fit-out-cabinet', 'bond-and-measure-earths'],
      ['residual-device-trips', 'electrical-noise'],
    ),
  },
];
