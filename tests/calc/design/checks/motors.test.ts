// Worked by hand, no published source: supply, torque limits and clearance of the motors at their margins.
import { describe, expect, test } from 'vitest';
import { checks } from '../../../../src/calc/subsystems/motors/checks.ts';
import { type Bench, finder, judges, over, type Row, without } from './bench.ts';

const find = finder(checks);
const stepper: Bench = { answers: { 'axis-motor': 'closed-loop-stepper' } };
const servo: Bench = { answers: { 'axis-motor': 'mains-servo' } };
const slides = ['carriage', 'cross'] as const;
const onlyOther = { carriage: 'cross-slide-only', cross: 'carriage-only' } as const;
const undriven = (bench: Bench, slide: (typeof slides)[number]): Bench =>
  over(bench, { answers: { 'driven-axes': onlyOther[slide] } });

const supplied = (slide: string, numbers: Record<string, number>): Bench =>
  over(stepper, {
    figures: Object.fromEntries(Object.entries(numbers).map(([name, value]) => [`${slide}-${name}`, value])),
  });

const voltage = (slide: (typeof slides)[number]): readonly Row[] => {
  const at = (drive: number, winding: number) => (margin: number) =>
    supplied(slide, { 'drive-volts-kept': drive, 'useful-volts': winding, 'supply-volts': 48 / margin });
  const draft = { id: `${slide}-supply-voltage`, sense: 'at-most', comfort: 1.1 } as const;
  return [
    {
      ...draft,
      when: 'the drive stands less',
      at: at(48, 60),
      absent: [over(at(48, 60)(2), servo), { ...at(48, 60)(2), answers: {} }, undriven(at(48, 60)(2), slide)],
    },
    { ...draft, when: 'the winding wants less', at: at(60, 48) },
    {
      ...draft,
      when: 'nothing is known of the winding',
      at: (margin) => without(at(48, 60)(margin), `${slide}-useful-volts`),
    },
  ];
};

const torqueLimit = (slide: (typeof slides)[number]): Row => {
  const at = (margin: number, motor = servo): Bench =>
    over(motor, {
      figures: {
        [`${slide}-nut-stiffness`]: 1e8,
        [`${slide}-peak-torque`]: 3 / margin,
        [`${slide}-torque-setting`]: 3,
      },
    });
  return {
    id: `${slide}-torque-limit`,
    sense: 'at-most',
    comfort: 1.1,
    at,
    absent: [at(2, stepper), without(at(2), `${slide}-nut-stiffness`), undriven(at(2), slide)],
  };
};

const currents = { 'carriage-motor-current': 4.2, 'cross-motor-current': 4.2 };
const supply = (margin: number): Bench =>
  over(stepper, {
    figures: { ...currents, 'motor-supply-current': 6, 'motor-supply-rating': 6 * margin },
  });

judges(checks, [
  ...slides.flatMap(voltage),
  ...slides.map(torqueLimit),
  {
    ...torqueLimit('cross'),
    when: 'a used servo',
    at: (margin) => {
      const used: Bench = { answers: { 'axis-motor': 'used-dc-servo' } };
      return over(torqueLimit('cross').at(margin), used);
    },
  },
  {
    id: 'motor-supply-current',
    sense: 'at-least',
    comfort: 1.2,
    at: supply,
    absent: [over(supply(2), servo), { ...supply(2), answers: {} }],
  },
  {
    id: 'slide-clearance',
    sense: 'at-least',
    comfort: 2,
    at: (margin) => ({ measured: { 'tightest-clearance': 0.005 * margin } }),
  },
]);

describe('what is missing', () => {
  test.each(slides)('the highest voltage of the drives, %s', (slide) => {
    const open = find(`${slide}-supply-voltage`, supplied(slide, { 'supply-volts': 48 }))!;
    expect(open).toMatchObject({ result: 'not-yet', needs: ['drive-highest-volts'] });
    expect(open.remedy).toMatch(/^Needs /);
    const winding = supplied(slide, { 'supply-volts': 48, 'useful-volts': 50 });
    expect(find(`${slide}-supply-voltage`, winding)?.result).toBe('not-yet');
    const known = find(`${slide}-supply-voltage`, supplied(slide, { 'drive-volts-kept': 48 }))!;
    expect(known).not.toHaveProperty('needs');
    expect(known.remedy).not.toMatch(/^Needs /);
  });

  test.each([
    [['carriage-motor-current'], {}],
    [['cross-motor-current'], {}],
    [['motor-supply-amps'], {}],
    [['carriage-motor-current', 'cross-motor-current', 'motor-supply-amps'], {}],
    [['carriage-motor-current'], { 'driven-axes': 'carriage-only' }],
    [['cross-motor-current'], { 'driven-axes': 'cross-slide-only' }],
  ])('of the supply: %s %o', (needs, answers) => {
    const gone = needs.map((id) => (id === 'motor-supply-amps' ? 'motor-supply-rating' : id));
    const open = find('motor-supply-current', over(without(supply(2), ...gone), { answers }))!;
    expect(open.needs).toEqual(needs);
    expect(open.remedy).toMatch(/^Needs /);
  });

  test('the current of a slide that stands still is not asked for', () => {
    const alone = without(supply(2), 'cross-motor-current');
    const check = find('motor-supply-current', over(alone, { answers: { 'driven-axes': 'carriage-only' } }));
    expect(check).not.toHaveProperty('needs');
    expect(check?.remedy).not.toMatch(/^Needs /);
  });

  test('the tightest gap', () => {
    const open = find('slide-clearance', {})!;
    expect(open).toMatchObject({ result: 'not-yet', needs: ['tightest-clearance'] });
    expect(open.remedy).toMatch(/^Needs /);
    const known = find('slide-clearance', { measured: { 'tightest-clearance': 0.003 } })!;
    expect(known).not.toHaveProperty('needs');
    expect(known.remedy).not.toMatch(/^Needs /);
    expect(known.testWhen).toMatch(/by hand/);
  });
});
