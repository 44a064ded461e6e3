import { Decimal } from 'decimal.js';
import type { Formula } from '../core/formula.ts';
import type { Money } from '../core/money.ts';

/** An old sum in today's money: times the ratio of a price index, never plus the difference of its points. Exact. */
export const escalate: Formula<{ amount: Money; indexThen: number; indexNow: number }, Money> = {
  id: 'escalate',
  label: 'An old price in today’s money',
  equation: 'price = amount × indexNow ÷ indexThen',
  tex: 'p = p_0\\,\\frac{I_1}{I_0}',
  inputs: { amount: '$', indexThen: '1', indexNow: '1' },
  unit: '$',
  source: {
    ref: 'US Bureau of Labor Statistics, Using the Consumer Price Index for Escalation, 1989',
    at: 'page 5',
  },
  valid: {},
  compute: ({ amount, indexThen, indexNow }) => amount.times(indexNow).div(indexThen),
};

/** Tax that the till adds to a price, exact; round it where it is printed. `rate` is a fraction of one. */
export const salesTax: Formula<{ amount: Money; rate: number }, Money> = {
  id: 'sales-tax',
  label: 'Sales tax',
  equation: 'tax = amount × rate',
  tex: 't = p\\,r',
  inputs: { amount: '$', rate: '1' },
  unit: '$',
  source: { ref: 'OpenStax Contemporary Mathematics', at: 'sales tax, module m00058' },
  valid: { rate: [0, 0.3] },
  compute: ({ amount, rate }) => amount.times(rate),
};

/** Price without the tax that is already in it, exact. `rate` is a fraction of one. */
export const priceBeforeTax: Formula<{ total: Money; rate: number }, Money> = {
  id: 'price-before-tax',
  label: 'Price before tax',
  equation: 'price = total ÷ (1 + rate)',
  tex: 'p = \\frac{P}{1 + r}',
  inputs: { total: '$', rate: '1' },
  unit: '$',
  source: salesTax.source,
  valid: { rate: [0, 0.3] },
  compute: ({ total, rate }) => total.div(new Decimal(1).plus(rate)),
};

/** What customs work out on a parcel, each figure exact. */
export interface ImportCharges {
  /** Goods, freight and insurance: what duty is taken on. */
  readonly dutyBase: Money;
  readonly duty: Money;
  /** That, duty and local charges: what import tax is taken on. */
  readonly taxBase: Money;
  readonly tax: Money;
  /** Duty and tax: what the buyer pays at the door. */
  readonly charges: Money;
}

/** Duty and import tax on a parcel from abroad. Rates are fractions of one; what they are is the country's affair. */
export const importCharges: Formula<
  {
    goods: Money;
    freight: Money;
    insurance: Money;
    localCharges: Money;
    dutyRate: number;
    taxRate: number;
  },
  ImportCharges
> = {
  id: 'import-charges',
  label: 'Duty and import tax',
  equation:
    'duty = dutyRate × (goods + freight + insurance); tax = taxRate × (goods + freight + insurance + duty + localCharges)',
  tex: 'D = r_d\\,(G + F + I),\\quad T = r_t\\,(G + F + I + D + L)',
  inputs: { goods: '$', freight: '$', insurance: '$', localCharges: '$', dutyRate: '1', taxRate: '1' },
  unit: '$',
  source: { ref: 'Langdon Systems, import VAT and duty', at: 'worked example' },
  valid: { dutyRate: [0, 1], taxRate: [0, 0.3] },
  compute: ({ goods, freight, insurance, localCharges, dutyRate, taxRate }) => {
    const dutyBase = goods.plus(freight).plus(insurance);
    const duty = dutyBase.times(dutyRate);
    const taxBase = dutyBase.plus(duty).plus(localCharges);
    const tax = taxBase.times(taxRate);
    return { dutyBase, duty, taxBase, tax, charges: duty.plus(tax) };
  },
};

/** A sum as it is printed: half a smallest coin goes up. `places` is 2 for dollars and euros, 0 for yen (ISO 4217). */
export const roundMoney: Formula<{ amount: Money; places: number }, Money> = {
  id: 'round-money',
  label: 'A sum as it is printed',
  equation: 'amount to this many places, half up',
  tex: '\\lfloor 10^n p + \\tfrac{1}{2} \\rfloor \\div 10^n',
  inputs: { amount: '$', places: '1' },
  unit: '$',
  source: salesTax.source,
  valid: { places: [0, 4] },
  compute: ({ amount, places }) => amount.toDecimalPlaces(places, Decimal.ROUND_HALF_UP),
};

export const priceFormulas = [escalate, salesTax, priceBeforeTax, importCharges, roundMoney] as const;
