import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { facts, type Show } from '../../src/calc/facts.ts';
import { parseFigure } from '../../src/islands/lathe/parse.ts';
import {
  figureOf,
  saidFigure,
  sensibleRange,
  sizeOfUnit,
  spokenUnit,
  unitOf,
} from '../../src/islands/lathe/units.ts';

const value = (text: string, show: Show, units: 'metric' | 'inch' = 'metric'): number => {
  const reading = parseFigure(text, show, units);
  return reading.kind === 'value' ? reading.value : Number.NaN;
};

describe('figures as people write them', () => {
  it.each([
    ['250', 'length', 0.25],
    ['1,200', 'length', 1.2],
    ['1 200', 'length', 1.2],
    ["1'200", 'length', 1.2],
    ['9.5', 'length', 0.0095],
    ['9,5', 'length', 0.0095],
    ['0,125', 'pitch', 0.000125],
    ['.5', 'pitch', 0.0005],
    ['1.200,5', 'length', 1.2005],
    ['1,200.5', 'length', 1.2005],
    ['1.234.567', 'count', 1234567],
    ['3/8 in', 'length', 0.009525],
    ['1 1/2"', 'length', 0.0381],
    ['10 in', 'length', 0.254],
    ['10in.', 'length', 0.254],
    ['25 cm', 'length', 0.25],
    ['1.2k', 'length', 1.2],
    ['1.2k', 'speed', 20],
    ['2000 rpm', 'speed', 2000 / 60],
    ['1.5 kW', 'power', 1500],
    ['2 hp', 'power', 1492],
    ['180 lb', 'mass', 81.6466266],
    ['25 %', 'share', 0.25],
    ['25', 'share', 0.25],
    ['16 A', 'current', 16],
    ['8 tpi', 'pitch', 0.003175],
    ['6 h a week', 'hours', 6],
    ['0', 'share', 0],
    ['0.15', 'feed', 0.00015],
    ['0.006 in/rev', 'feed', 0.0001524],
    ['0.2 mm', 'feed', 0.0002],
    ['2,400', 'slide-speed', 0.04],
    ['40 mm/s', 'slide-speed', 0.04],
    ['2.4 m/min', 'slide-speed', 0.04],
    ['500 mm/s2', 'acceleration', 0.5],
    ['500', 'acceleration', 0.5],
    ['20 kgf', 'force', 196.133],
    ['1.2 Nm', 'torque', 1.2],
    ['425 oz-in', 'torque', 3.001159515],
    ['3.5', 'small-current', 0.0035],
    ['3.5 mA', 'small-current', 0.0035],
    ['3.2 mH', 'inductance', 0.0032],
    ['48 V', 'voltage', 48],
    ['100', 'rate', 100000],
    ['4 MHz', 'rate', 4e6],
  ] as const)('reads %s as a %s of %d', (text, show, expected) => {
    expect(value(text, show)).toBeCloseTo(expected, 9);
  });

  test('without a unit the field’s own counts', () => {
    expect(value('10', 'length', 'inch')).toBeCloseTo(0.254, 9);
    expect(value('3/8', 'length', 'inch')).toBeCloseTo(0.009525, 9);
    expect(value('250 mm', 'length', 'inch')).toBeCloseTo(0.25, 9);
  });

  it.each(['', '   '])('takes “%s” as nothing typed', (text) => {
    expect(parseFigure(text, 'length', 'metric')).toEqual({ kind: 'empty' });
  });

  it.each([
    ['about ten', 'length', 'cannot find a number'],
    ['-5', 'length', 'under zero'],
    ['− 5', 'mass', 'under zero'],
    ['10 V', 'length', 'do not know this unit'],
    ['1/0', 'length', 'too large'],
    ['9'.repeat(400), 'length', 'too large'],
    ['0 tpi', 'pitch', 'do not know this unit'],
    ['5 constructor', 'length', 'do not know this unit'],
    ['5 kg', 'count', 'plain number'],
  ] as const)('says what is wrong with %s', (text, show, says) => {
    expect(parseFigure(text, show, 'metric')).toMatchObject({ say: expect.stringContaining(says) });
  });
});

describe('anything typed', () => {
  const shows = fc.constantFrom(...new Set(facts.map((fact) => fact.show)));
  const units = fc.constantFrom('metric' as const, 'inch' as const);
  const pieces = fc.constantFrom(
    '1',
    '9',
    '0',
    '3/8',
    ' ',
    ',',
    '.',
    "'",
    '-',
    'k',
    'in',
    '"',
    'mm',
    'tpi',
    '%',
    'e',
    '/',
  );
  const typed = fc.oneof(
    fc.string(),
    fc.array(pieces, { maxLength: 9 }).map((parts) => parts.join('')),
  );

  test('never throws, and a value is finite and not under zero', () => {
    fc.assert(
      fc.property(typed, shows, units, (text, show, system) => {
        const reading = parseFigure(text, show, system);
        if (reading.kind === 'value') {
          expect(Number.isFinite(reading.value)).toBe(true);
          expect(reading.value).toBeGreaterThanOrEqual(0);
        }
        if (reading.kind === 'unreadable') expect(reading.say).not.toBe('');
      }),
      { numRuns: 2000 },
    );
  });

  test('what we show is read back as the same figure', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...facts),
        units,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (fact, system, at) => {
          const si = fact.sense[0] + (fact.sense[1] - fact.sense[0]) * at;
          const back = value(figureOf(si, fact.show, system), fact.show, system);
          // Half of the last place we show, in the unit of the field; finer kinds keep four figures.
          const places = fact.show === 'speed' || fact.show === 'share' ? 1 : 2;
          const half = 0.501 * 10 ** -places * sizeOfUnit(fact.show, system);
          expect(Math.abs(back - si)).toBeLessThanOrEqual(Math.max(si * 1e-3, half));
        },
      ),
    );
  });
});

describe('units of the fields', () => {
  test('lengths follow the reader, the rest does not', () => {
    expect(unitOf('pitch', 'inch')).toBe('in');
    expect(unitOf('power', 'inch')).toBe('W');
    expect(saidFigure(0.25, 'length', 'metric')).toBe('250 mm');
    expect(saidFigure(2000 / 60, 'speed', 'metric')).toBe('2,000 rpm');
    expect(saidFigure(3, 'count', 'metric')).toBe('3');
    expect(saidFigure(0.04, 'slide-speed', 'metric')).toBe('2,400 mm/min');
    expect(saidFigure(0.00015, 'feed', 'inch')).toBe('0.00591 in/rev');
    expect(saidFigure(0.0035, 'small-current', 'inch')).toBe('3.5 mA');
    expect(saidFigure(100_000, 'rate', 'metric')).toBe('100 kHz');
    expect(spokenUnit('length', 'metric')).toBe('millimetres');
  });

  test('every figure of the lathe has a typical value inside what makes sense', () => {
    for (const fact of facts) {
      expect(sensibleRange(fact, 'metric')).toMatch(/–/);
      for (const typical of Object.values(fact.typical ?? {})) {
        expect(value(figureOf(typical, fact.show, 'metric'), fact.show)).toBeCloseTo(typical, 3);
      }
    }
  });
});
