import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ampacityAt40, conductorAmpacity } from '../../../src/calc/formulas/ampacity.ts';
import {
  enclosureAirflow,
  enclosureArea,
  enclosureRise,
  filteredAirflow,
  type Mounting,
  panelFill,
  ventilatedRise,
} from '../../../src/calc/formulas/heat.ts';
import {
  residualCurrentMargin,
  residualDevices,
  secondEarthShare,
} from '../../../src/calc/formulas/leakage.ts';
import { capacitorBleedTime, inputCurrent, motorCircuit } from '../../../src/calc/formulas/supply.ts';
import { voltageDrop, wireArea, wireDiameter, wireResistance } from '../../../src/calc/formulas/wire.ts';

const about = (value: number, expected: number) => expect(Math.abs(value / expected - 1)).toBeLessThan(0.005);

describe('supply of a middling conversion, worked by hand, no published source', () => {
  const spindle = { power: 750, efficiency: 0.75 * 0.95, powerFactor: 0.65 };
  const axes = { power: 210, efficiency: 0.85, powerFactor: 0.6 };
  const computer = { power: 60, efficiency: 0.88, powerFactor: 0.6 };

  test.each([
    [120, [13.5, 3.43, 0.947], 17.9],
    [230, [7.04, 1.79, 0.494], 9.33],
  ])('current at %d V', (voltage, each, total) => {
    const amperes = [spindle, axes, computer].map((load) => inputCurrent.compute({ ...load, voltage }));
    amperes.forEach((current, at) => {
      about(current, each[at]!);
    });
    about(
      amperes.reduce((a, b) => a + b),
      total,
    );
  });

  test('leakage against devices of 5 and 30 mA, and the second earth', () => {
    const leakages = [3.5e-3, 0.75e-3, 0.75e-3, 0.5e-3];
    const shares = residualDevices.map(({ rating }) => residualCurrentMargin.compute({ leakages, rating }));
    expect(shares.map((share) => share.toFixed(2))).toEqual(['1.10', '0.18']);
    expect(secondEarthShare.compute({ leakages })).toBeGreaterThan(1);
  });

  test('a bus of 1000 µF through 47 kilohm from 340 to 60 V', () => {
    about(capacitorBleedTime.compute({ capacitance: 1e-3, resistance: 47e3, from: 340, to: 60 }), 81.5);
  });

  test('101.5 W in a wall box: a fan through filters, or sealed', () => {
    const airflow = filteredAirflow.compute({ freeAir: 30 / 3600 });
    about(ventilatedRise.compute({ loss: 101.5, airflow }), 20.2);
    const area = enclosureArea.compute({ height: 0.5, width: 0.4, depth: 0.2, mounting: 'wall' });
    expect(area).toBeCloseTo(0.572, 12);
    about(enclosureRise.compute({ loss: 101.5, area, wall: 'painted-steel' }), 32.3);
  });

  test('80 W in a wall box of 600 × 600 × 210 mm', () => {
    const area = enclosureArea.compute({ height: 0.6, width: 0.6, depth: 0.21, mounting: 'wall' });
    expect(area).toBeCloseTo(0.9072, 10);
    expect(enclosureRise.compute({ loss: 80, area, wall: 'painted-steel' })).toBeCloseTo(16.03, 2);
  });

  test.each<[Mounting, number]>([
    ['free', 5.24],
    ['wall', 4.6],
    ['free-row-end', 4.84],
    ['wall-row-end', 4.2],
    ['free-row-middle', 4.44],
    ['wall-row-middle', 3.8],
    ['wall-row-middle-covered', 3.52],
  ])('a cabinet of 2 × 0.8 × 0.5 m, %s: %d m²', (mounting, area) => {
    expect(enclosureArea.compute({ height: 2, width: 0.8, depth: 0.5, mounting })).toBeCloseTo(area, 12);
  });

  test('4.2 A over 8 m of 1.5 mm², at 0.0175 ohm mm²/m there and 1/58 here', () => {
    const drop = voltageDrop.compute({
      current: 4.2,
      length: 8,
      area: 1.5e-6,
      temperature: 20,
      circuit: 'dc',
    });
    expect(Math.abs(drop - 0.784)).toBeLessThan(0.784 * 0.016);
  });
});

describe('laws', () => {
  const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

  test('six gauges halve the diameter, and thicker wire never drops more', () => {
    const ratio = wireDiameter.compute({ gauge: 12 }) / wireDiameter.compute({ gauge: 18 });
    expect(ratio).toBeCloseTo(2.005, 3);
    fc.assert(
      fc.property(positive(0.1e-6, 16e-6), positive(1, 3), positive(0.1, 30), (area, thicker, length) => {
        const drop = (square: number) =>
          voltageDrop.compute({ current: 5, length, area: square, temperature: 40, circuit: 'single-phase' });
        expect(drop(area * thicker)).toBeLessThanOrEqual(drop(area));
      }),
    );
  });

  test('three phases lose √3 ÷ 2 of what one phase loses; twice the length, twice the drop', () => {
    const base = { current: 7, length: 9, area: 1e-6, temperature: 30 };
    const one = voltageDrop.compute({ ...base, circuit: 'single-phase' });
    expect(voltageDrop.compute({ ...base, circuit: 'three-phase' }) / one).toBeCloseTo(Math.sqrt(3) / 2, 12);
    expect(voltageDrop.compute({ ...base, length: 18, circuit: 'dc' })).toBeCloseTo(2 * one, 12);
  });

  test('hotter wire resists more; area and diameter agree', () => {
    const at = (temperature: number) => wireResistance.compute({ area: 1e-6, length: 1, temperature });
    expect(at(70)).toBeGreaterThan(at(20));
    expect(wireArea.compute({ diameter: 2e-3 })).toBeCloseTo(Math.PI * 1e-6, 15);
  });

  test('the cable table rises, and says nothing below its smallest size', () => {
    for (const lay of ['conduit', 'on-wall'] as const) {
      const amperes = ampacityAt40.map((size) => size.amperes[lay]);
      expect(amperes).toEqual([...amperes].sort((a, b) => a - b));
    }
    expect(conductorAmpacity.compute({ area: 0.5e-6, lay: 'conduit' })).toBeNaN();
    expect(conductorAmpacity.compute({ area: 2e-6, lay: 'conduit' })).toBe(13.1);
  });

  test('a bleed in two stages takes as long as in one', () => {
    fc.assert(
      fc.property(positive(10, 50), positive(51, 150), positive(151, 600), (low, middle, high) => {
        const time = (from: number, to: number) =>
          capacitorBleedTime.compute({ capacitance: 1e-3, resistance: 1e4, from, to });
        expect(time(high, middle) + time(middle, low)).toBeCloseTo(time(high, low), 8);
      }),
    );
  });

  test('a box against a wall cools less than a free one', () => {
    const box = { height: 0.6, width: 0.5, depth: 0.25 };
    const free = enclosureArea.compute({ ...box, mounting: 'free' });
    const others: Mounting[] = ['wall', 'free-row-end', 'wall-row-end', 'free-row-middle', 'wall-row-middle'];
    for (const mounting of [...others, 'wall-row-middle-covered'] as const) {
      expect(enclosureArea.compute({ ...box, mounting }), mounting).toBeLessThan(free);
    }
  });

  test('airflow and rise are inverse to each other', () => {
    const airflow = enclosureAirflow.compute({ loss: 136, rise: 12 });
    expect(ventilatedRise.compute({ loss: 136, airflow })).toBeCloseTo(12, 12);
  });

  test('a breaker of a listed size, none beyond the list; plates add up', () => {
    expect(motorCircuit.compute({ fullLoadCurrent: 8 })).toEqual({ conductor: 10, breaker: 20 });
    expect(motorCircuit.compute({ fullLoadCurrent: 60 }).breaker).toBeNaN();
    expect(panelFill.compute({ devices: [0.04, 0.02], plate: 0.1 })).toBeCloseTo(0.6, 12);
  });
});
