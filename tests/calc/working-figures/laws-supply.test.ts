// The figure of the motor supply, held against figures that somebody printed, and laws that hold whatever is put in.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exampleOf } from '../../../src/calc/working-figures/figure.ts';
import { supply } from '../../../src/calc/working-figures/supply.ts';
import { tolerance } from '../../published/row.ts';
import { printed, RUNS, said, within } from './said.ts';

const more = fc.double({ min: 1, max: 4, noNaN: true });

test.each(printed('motor-speed', () => true))('supply: $what', (row) => {
  const { speed: rapid, lead, ratio } = row.inputs as Record<string, number>;
  const ours = said(supply, 'turns', { ...exampleOf(supply), rapid: rapid!, lead: lead!, ratio: ratio! });
  expect(Math.abs(ours - Number(row.printed))).toBeLessThanOrEqual(tolerance(row));
});

test('supply: more volts never leave less torque and never lower the speed that keeps it, more inductance never the other way', () => {
  fc.assert(
    fc.property(within(supply), more, (values, times) => {
      for (const id of ['torque', 'corner']) {
        const now = said(supply, id, values);
        const with_ = (input: string) => said(supply, id, { ...values, [input]: values[input]! * times });
        expect(with_('supply')).toBeGreaterThanOrEqual(now * (1 - 1e-12));
        expect(with_('inductance')).toBeLessThanOrEqual(now * (1 + 1e-12));
      }
    }),
    RUNS,
  );
});

test('supply: torque never grows with speed, and above the corner the power is steady', () => {
  fc.assert(
    fc.property(within(supply), more, (values, times) => {
      const faster = { ...values, rapid: values.rapid! * times };
      const [now, then] = [said(supply, 'torque', values), said(supply, 'torque', faster)];
      expect(then).toBeLessThanOrEqual(now * (1 + 1e-12));
      if (said(supply, 'corner', values) < values.rapid! * 60_000) expect(then * times).toBeCloseTo(now, 9);
    }),
    RUNS,
  );
});

test('supply: the sentence says whether the torque is whole, and when the volts are more than the winding uses', () => {
  fc.assert(
    fc.property(within(supply), (values) => {
      const { say } = supply.answer(values);
      expect(say.includes('all of its')).toBe(
        said(supply, 'corner', values) >= values.rapid! * 60_000 * (1 - 1e-12),
      );
      expect(say.includes('little else')).toBe(values.supply! > said(supply, 'useful', values));
    }),
    RUNS,
  );
});
