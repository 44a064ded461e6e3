// What a check of a slide says while a figure is missing: which one, and how to get it.
import { describe, expect, test } from 'vitest';
import { checks as carriageChecks } from '../../../../src/calc/subsystems/carriage/checks.ts';
import { checks as crossChecks } from '../../../../src/calc/subsystems/cross-slide/checks.ts';
import { type Bench, finder, over } from './bench.ts';

const rooms = [
  ['carriage', finder(carriageChecks)],
  ['cross', finder(crossChecks)],
] as const;
const answers = { 'axis-motor': 'closed-loop-stepper' };

describe.each(rooms)('%s', (slide, find) => {
  const figures = (numbers: Record<string, number>, rest: Bench = {}): Bench =>
    over(rest, {
      answers,
      figures: Object.fromEntries(
        Object.entries(numbers).map(([name, value]) => [`${slide}-${name}`, value]),
      ),
    });
  const check = (id: string, bench: Bench) => find(`${slide}-${id}`, bench)!;

  test.each([
    ['lead and torque', {}, ['lead', 'motor-torque']],
    ['the torque', { lead: 0.005 }, ['motor-torque']],
    ['the lead', { 'motor-torque': 2 }, ['lead']],
  ])('push: %s', (_, known, names) => {
    const needs = names.map((name) => `${slide}-${name}`);
    const bench = figures({ 'push-turning': 400, ...known });
    expect(check('turning', bench)).toMatchObject({ result: 'not-yet', margin: undefined, needs });
    expect(check('turning', bench).remedy).toMatch(/^Needs /);
    expect(check('turning', bench).remedy.includes(' and ')).toBe(names.length > 1);
    expect(check('turning', bench).remedy.includes('torque')).toBe(names.includes('motor-torque'));
  });

  test('push: nothing to ask for where lead and torque are there', () => {
    const known = check('turning', figures({ 'push-turning': 400, lead: 0.005, 'motor-torque': 2 }));
    expect(known.result).toBe('not-yet');
    expect(known).not.toHaveProperty('needs');
    expect(known.remedy).not.toMatch(/^Needs /);
  });

  test('push: nothing to ask for where both sides are known', () => {
    expect(check('turning', figures({ 'push-turning': 400, thrust: 300 }))).not.toHaveProperty('needs');
  });

  test('a limit that is missing asks as well', () => {
    const bench = figures({ 'nut-stiffness': 1e8, 'buckling-load': 4000 });
    expect(check('buckling', bench)).toMatchObject({ needs: [`${slide}-lead`, `${slide}-motor-torque`] });
  });

  test('a screw that is not known well is tried on the machine', () => {
    const rapid = (known: Record<string, number>) => check('rapid', figures({ 'motor-torque': 2, ...known }));
    expect(rapid({ lead: 0.005 }).testWhen).toMatch(/under power/);
    expect(rapid({ lead: 0.005 }).remedy).toMatch(/not known well/);
    expect(rapid({ lead: 0.005, 'load-inertia': 1e-5 }).testWhen).toBeUndefined();
    expect(rapid({}).testWhen).toBeUndefined();
  });

  test('a screw to be bought or that was bought', () => {
    const drawn = figures({ 'nut-stiffness': 1e8, 'screw-thread': 0.4, 'screw-length': 0.5 });
    const open = check('screw-length', drawn);
    expect(open).toMatchObject({ result: 'not-yet', needs: [`${slide}-screw-bought`] });
    expect(open.remedy).toMatch(/^Needs /);
    const bought = check('screw-length', over(drawn, { measured: { [`${slide}-screw-bought`]: 0.6 } }));
    expect(bought.remedy).not.toMatch(/^Needs /);
    expect(bought).not.toHaveProperty('needs');
  });

  test('the give is asked for until it is expected or measured, and what was measured stands before', () => {
    const open = check('give', figures({}));
    expect(open).toMatchObject({ result: 'not-yet', needs: [`${slide}-give`] });
    expect(open.remedy).toMatch(/^Needs /);
    const expected = figures({ 'give-expected': 10e-6 });
    expect(check('give', expected).remedy).not.toMatch(/^Needs /);
    const measured = over(expected, { measured: { [`${slide}-give`]: 25e-6 } });
    expect(check('give', measured).margin).toBeCloseTo(0.8, 9);
  });

  describe.each(['motor', 'screw'])('bore on the %s', (place) => {
    const [shaft, bore] = place === 'motor' ? ['motor-shaft', 'motor-bore'] : ['screw-end', 'screw-bore'];
    const fitted = (measured: Record<string, number>, rest: Bench = {}) =>
      find(
        `${slide}-${place}-fit`,
        over(rest, {
          figures: { [`${slide}-drive-efficiency`]: 0.9 },
          measured: Object.fromEntries(
            Object.entries(measured).map(([name, value]) => [`${slide}-${name}`, value]),
          ),
        }),
      );

    test.each([
      [7.999, 'stop'],
      [8, 'ok'],
      [8.0299, 'ok'],
      [8.031, 'stop'],
    ])('%d mm on a shaft of 8 mm: %s', (size, result) => {
      const check = fitted({ [shaft!]: 0.008, [bore!]: size / 1000 })!;
      expect(check.result).toBe(result);
      expect(check).not.toHaveProperty('needs');
      expect(check.remedy).not.toMatch(/^Needs /);
      expect(check.decisions).toContain('motor-size');
      expect(check.decisions.length).toBe(2);
    });

    test('what was not measured is asked for', () => {
      expect(fitted({})).toMatchObject({
        result: 'not-yet',
        needs: [`${slide}-${shaft}`, `${slide}-${bore}`],
      });
      expect(fitted({ [shaft!]: 0.008 })?.needs).toEqual([`${slide}-${bore}`]);
      expect(fitted({ [bore!]: 0.008 })?.needs).toEqual([`${slide}-${shaft}`]);
      expect(fitted({})?.remedy).toMatch(/^Needs /);
    });

    test('does not arise where the drive came with the machine, or where there is none', () => {
      expect(fitted({}, { answers: { 'which-lathe': 'dead-training-machine' } })).toBeUndefined();
      expect(find(`${slide}-${place}-fit`, { answers })).toBeUndefined();
    });
  });
});
