// Laws that hold on every lathe: what helps never hurts, on both slides.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beltCentreDistance } from '../../../src/calc/formulas/belt.ts';
import { near } from '../formulas/near.ts';
import { designed, type Given } from './axes.ts';

const slides = ['carriage', 'cross'] as const;
const size = fc.constantFrom('small', 'medium', 'large' as const);
const motor = fc.constantFrom('open-loop-stepper', 'closed-loop-stepper', 'mains-servo');
const coupling = fc.constantFrom('carriage-direct', 'carriage-belt-1-1', 'carriage-belt-2-1');
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** As fine as anybody measures: two values are the same, or differ by more than the sums round. */
const measured = (value: number): number => Number(value.toPrecision(6));

/** A pair, the smaller first. */
const pair = (min: number, max: number) =>
  fc
    .tuple(between(min, max), between(min, max))
    .map(([a, b]) => [measured(Math.min(a, b)), measured(Math.max(a, b))] as const);

const given = fc.record({ size, motor, coupling }).map(
  (drawn): Given => ({
    size: drawn.size,
    answers: {
      'carriage-drive': 'ball-screw-front',
      'cross-screw': 'ball-screw-12',
      'axis-motor': drawn.motor,
      'carriage-coupling': drawn.coupling,
      holes: 'drill-in-tool-post',
    },
  }),
);

const withFacts = (base: Given, facts: Given['facts']) => designed({ ...base, facts: { ...facts } });

/** Two designs that differ in one figure, the smaller of it first. */
const twice = (
  base: Given,
  fact: string,
  [low, high]: readonly [number, number],
  others: Given['facts'] = {},
) =>
  [low, high].map((value) => withFacts(base, { ...others, [fact]: value })) as [
    ReturnType<typeof designed>,
    ReturnType<typeof designed>,
  ];

const runs = { numRuns: 60 };

describe.each(slides)('%s', (slide) => {
  const jobs =
    slide === 'carriage'
      ? ['carriage-turning', 'carriage-facing', 'drilling-thrust']
      : ['cross-turning', 'cross-facing', 'cross-parting'];

  test('more motor torque never lowers a margin of push', () => {
    fc.assert(
      fc.property(given, pair(0.2, 20), (base, torques) => {
        const [weak, strong] = twice(base, `${slide}-motor-torque`, torques);
        for (const id of jobs) expect(strong.check(id).margin).toBeGreaterThanOrEqual(weak.check(id).margin!);
      }),
      runs,
    );
  });

  test('a finer lead never lowers the push at rest, nor of a stepper below 750 turns a minute while cutting', () => {
    fc.assert(
      fc.property(given, pair(0.001, 0.02), (base, leads) => {
        const [fine, coarse] = twice(base, `${slide}-lead`, leads);
        const push = `${slide}-stall-thrust`;
        expect(fine.figure(push)).toBeGreaterThanOrEqual(coarse.figure(push));
        if (fine.figure(`${slide}-motor-speed-working`) * 60 > 750) return;
        expect(fine.figure(`${slide}-thrust`)).toBeGreaterThanOrEqual(coarse.figure(`${slide}-thrust`));
      }),
      runs,
    );
  });

  test('a longer travel never raises the speed at which the screw whips, nor the push that it stands', () => {
    const longest = slide === 'carriage' ? 1.5 : 0.35;
    fc.assert(
      fc.property(given, pair(0.08, longest), (base, travels) => {
        const [short, long] = twice(base, `${slide}-travel`, travels);
        for (const name of ['whirl-speed', 'buckling-load'])
          expect(long.figure(`${slide}-${name}`)).toBeLessThanOrEqual(short.figure(`${slide}-${name}`));
      }),
      runs,
    );
  });

  test('a harder cut never needs less push', () => {
    fc.assert(
      fc.property(given, pair(0.1e-3, 5e-3), (base, depths) => {
        const [light, heavy] = twice(base, 'cut-depth', depths);
        expect(heavy.figure(`${slide}-push-needed`)).toBeGreaterThanOrEqual(
          light.figure(`${slide}-push-needed`),
        );
      }),
      runs,
    );
  });

  test('what is able and what is needed are both newtons', () => {
    for (const id of jobs) {
      const { check } = designed({ answers: { holes: 'drill-in-tool-post' } });
      expect([check(id).value?.unit, check(id).limit?.unit]).toEqual(['N', 'N']);
    }
  });
});

describe('what everybody in the trade agrees on', () => {
  test('pulleys of 22 and 44 under a belt of 150 teeth stand 58.4 pitches apart', () => {
    const pulleys = { teethSmall: 22, teethLarge: 44, beltTeeth: 150 };
    near(beltCentreDistance.compute({ ...pulleys, pitch: 1 }), 58.4, 0.001);
  });

  test('a 2:1 belt is exactly two to one', () => {
    for (const motorKind of ['closed-loop-stepper', 'mains-servo']) {
      const answers = { 'carriage-coupling': 'carriage-belt-2-1', 'axis-motor': motorKind };
      expect(designed({ answers }).figure('carriage-ratio')).toBe(2);
    }
  });

  test('12 × 4 serves cross slides, 20 × 5 the carriages of large lathes', () => {
    const { figure } = designed({ size: 'large', answers: { 'carriage-drive': 'ball-screw-front' } });
    expect([figure('carriage-screw-diameter'), figure('carriage-lead')]).toEqual([0.02, 0.005]);
    expect([figure('cross-screw-diameter'), figure('cross-lead')]).toEqual([0.012, 0.004]);
  });

  test('two drives for 5.5 A are well served by 48 V and 12.5 A, where the drives stand it', () => {
    const facts = {
      'carriage-motor-current': 5.5,
      'cross-motor-current': 5.5,
      'carriage-motor-inductance': 3.2e-3,
      'cross-motor-inductance': 3.2e-3,
      'motor-supply-volts': 48,
      'motor-supply-amps': 12.5,
    };
    const { check } = designed({ facts: { ...facts, 'drive-highest-volts': 60 } });
    for (const id of ['carriage-supply-voltage', 'cross-supply-voltage', 'motor-supply-current'])
      expect(check(id).result).toBe('ok');
    const weak = designed({ facts: { ...facts, 'drive-highest-volts': 50 } });
    expect(weak.check('carriage-supply-voltage').result).toBe('stop');
  });

  test('motor shaft and bore agree before anything is ordered', () => {
    const fit = (shaft: number, bore: number) =>
      designed({ facts: { 'carriage-motor-shaft': shaft, 'carriage-motor-bore': bore } }).check(
        'carriage-motor-fit',
      ).result;
    expect(fit(8e-3, 8e-3)).toBe('ok');
    expect(fit(8e-3, 6.35e-3)).toBe('stop');
    expect(fit(6.35e-3, 8e-3)).toBe('stop');
    expect(designed({}).check('carriage-motor-fit')).toMatchObject({
      result: 'not-yet',
      needs: ['carriage-motor-shaft', 'carriage-motor-bore'],
    });
  });

  test('a screw bought too long is sawn off, one too short is not taken', () => {
    const bought = (length: number) => designed({ facts: { 'carriage-screw-bought': length } });
    expect(bought(0.7).check('carriage-screw-length').result).toBe('ok');
    near(
      bought(0.7).figure('carriage-screw-cut-off'),
      0.7 - bought(0.7).figure('carriage-screw-length'),
      1e-9,
    );
    expect(bought(0.5).check('carriage-screw-length').result).toBe('stop');
  });
});

test('a motor found second-hand is not judged until its torque is known', () => {
  const answers = { 'axis-motor': 'used-dc-servo' };
  expect(designed({ answers }).check('carriage-turning')).toMatchObject({
    result: 'not-yet',
    needs: ['carriage-motor-torque'],
  });
  const known = designed({ answers, facts: { 'carriage-motor-torque': 0.8 } });
  expect(known.check('carriage-turning').result).toBe('ok');
});
