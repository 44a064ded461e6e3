// Worked by hand, no published source: tools in line on a slide of 120 mm that loses 25 to its new nut.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checksOf } from '../../../src/calc/checks.ts';
import { near } from '../formulas/near.ts';
import { checkOf, designWith, figureOf } from './plans.ts';

const answers = {
  'driven-axes': ['both-slides'],
  compound: ['slotted-slide-plate'],
  'tool-holding': ['gang-tools'],
  'cross-screw': ['ball-screw-12'],
};
const design = (facts: Record<string, number>, other: Record<string, string[]> = {}) =>
  designWith('medium', { 'cross-travel': 0.12, ...facts }, { ...answers, ...other });

describe('tools in line', () => {
  test('95 mm are left, and serve three tools', () => {
    near(figureOf(design({}), 'cross-travel-left'), 0.095);
    expect(figureOf(design({}), 'gang-tools')).toBe(3);
  });

  test.each([
    [2, 0.0515, 'ok'],
    [3, 0.0865, 'ok'],
    [4, 0.1215, 'stop'],
  ])('%d tools need %d m: %s', (tools, needed, result) => {
    const look = design({ 'gang-tools-wanted': tools });
    near(figureOf(look, 'gang-travel-needed'), needed);
    expect(checkOf(look, 'gang-travel').result).toBe(result);
  });

  test('the screw that stays costs no travel', () => {
    const kept = design({}, { 'cross-screw': ['original-cross-screw'] });
    near(figureOf(kept, 'cross-travel-left'), 0.12);
  });
});

describe('one tool', () => {
  test('from 1.5 mm past the centre to 5 mm clear of a 40 mm bar: 26.5 mm', () => {
    near(figureOf(design({ 'cut-diameter': 0.04 }), 'cross-reach-needed'), 0.0265);
    expect(checkOf(design({ 'cut-diameter': 0.04 }), 'cross-reach').result).toBe('ok');
    expect(checkOf(design({ 'cut-diameter': 0.2 }), 'cross-reach').result).toBe('stop');
  });

  test('0.2 mm off height, zeroed at 20 mm: 0.0226 mm too large at 3 mm', () => {
    const facts = { 'tool-height-offset': 0.2e-3, 'cut-diameter': 0.02, 'smallest-diameter': 0.003 };
    const look = design({ ...facts, 'tolerance-on-diameter': 0.05e-3 });
    near(figureOf(look, 'tool-height-error'), 0.0226e-3);
    expect(checkOf(look, 'tool-height').result).toBe('stop');
  });

  test('past the centre is measured, not assumed', () => {
    expect(checkOf(design({}), 'reach-past-centre').needs).toEqual(['reach-past-centre']);
    expect(checkOf(design({ 'reach-past-centre': 0.001 }), 'reach-past-centre').result).toBe('stop');
    expect(checkOf(design({ 'reach-past-centre': 0.002 }), 'reach-past-centre').result).toBe('ok');
  });
});

describe('bar through the spindle', () => {
  const bar = { 'bar-feed': ['bar-against-stop'] };

  test('three diameters are the most without a tube, and nothing is assumed', () => {
    expect(checkOf(design({}, bar), 'bar-overhang').result).toBe('not-yet');
    const out = (overhang: number) =>
      checkOf(design({ 'bar-overhang': overhang, 'bar-diameter': 0.01 }, bar), 'bar-overhang').result;
    expect([out(0.029), out(0.031), out(0.9)]).toEqual(['ok', 'stop', 'stop']);
  });

  test('sawn blanks leave nothing behind the headstock', () => {
    const blanks = checksOf(design({}, { 'bar-feed': ['cut-blanks'] }));
    expect(blanks.some(({ id }) => id === 'bar-overhang')).toBe(false);
  });
});

describe('homing', () => {
  const switches = { 'home-limits': ['home-switches'] };
  const spread = (slide: string, mm: number) =>
    checkOf(design({ [`${slide}-home-spread`]: mm / 1000 }, switches), `${slide}-homing`).result;

  test('a hundredth across, five along; the spread that was measured decides', () => {
    expect([spread('cross', 0.005), spread('cross', 0.02)]).toEqual(['ok', 'stop']);
    expect([0.05, 0.06].map((mm) => spread('carriage', mm))).toEqual(['ok', 'stop']);
  });

  test('without switches it is a look and never a stop', () => {
    const none = design({}, { 'home-limits': ['no-homing'], purpose: ['one-off-repairs'] });
    expect(checkOf(none, 'cross-homing').result).toBe('look');
  });
});

test('more travel never carries fewer tools', () => {
  const travel = fc.double({ min: 0.04, max: 0.3, noNaN: true });
  fc.assert(
    fc.property(travel, travel, (one, other) => {
      const tools = (metres: number) => figureOf(design({ 'cross-travel': metres }), 'gang-tools');
      expect(tools(Math.max(one, other))).toBeGreaterThanOrEqual(tools(Math.min(one, other)));
    }),
    { numRuns: 60 },
  );
});
