/** Which mark stands before the cents: told by the rest of the file, or unknown where nothing tells. */
export type DecimalMark = '.' | ',' | undefined;

/** A figure of a file: decimal text with a point, the currency that stood beside it, or why it cannot be read. */
export interface ReadAmount {
  readonly amount?: string;
  readonly currency?: string;
  readonly fault?: string;
}

const SIGNS: Readonly<Record<string, string>> = {
  ...{ $: 'USD', US$: 'USD', '€': 'EUR', '£': 'GBP' },
  ...{ Kč: 'CZK', zł: 'PLN', '₹': 'INR', '₩': 'KRW' },
};
const SHARED_SIGNS = ['¥', 'kr', 'kr.'];

/** Longest whole part and longest part after the mark that are taken for a price or a quantity. */
const WHOLE = 12;
const CENTS = 6;

const GAPS = /[\s\u00A0\u2009\u202F'’]/g;

/** A longer cell is no figure, whatever stands in it. */
const LETTERS = 60;

/** The digits and marks of a cell, and what stands before or behind them. */
function split(cell: string): { readonly figure: string; readonly around: string } {
  const tight = cell.length > LETTERS ? '' : cell.replace(GAPS, '');
  const [figure = ''] = /[+\-−]?[\d.,]*\d[\d.,]*/.exec(tight) ?? [];
  return { figure: figure.replace('−', '-'), around: tight.replace(figure, '') };
}

/** The decimal mark that a cell cannot but have, or undefined where it could be either. */
export function markOf(cell: string): DecimalMark {
  const { figure } = split(cell);
  const last = /[.,](?=\d*$)/.exec(figure)?.[0] as DecimalMark;
  if (last === undefined) return undefined;
  const behind = figure.length - 1 - figure.lastIndexOf(last);
  if (figure.includes('.') && figure.includes(',')) return last;
  if (figure.split(last).length > 2) return last === '.' ? ',' : '.';
  return behind === 3 && !/^[+-]?0[.,]/.test(figure) ? undefined : last;
}

/** Whether three capitals are a currency of ISO 4217 that is in use. */
export const isCurrency = (code: string): boolean => currencies.has(code);

const currencies: ReadonlySet<string> = new Set(Intl.supportedValuesOf('currency'));

/** A quantity with or without a short word behind it: "5", "5 pcs", "2,5 m". */
export function readQuantity(cell: string, mark: DecimalMark): ReadAmount {
  return readAmount(cell.replace(/(\d)\s*[a-z²³.]{1,8}$/i, '$1'), mark);
}

function currencyOf(around: string): ReadAmount {
  const said = around.replace(/^-|\.-$|,-$/g, '');
  if (said === '') return {};
  const sign = Object.hasOwn(SIGNS, said) ? SIGNS[said] : undefined;
  if (sign) return { currency: sign };
  if (SHARED_SIGNS.includes(said)) return { fault: `“${said}” stands for more than one currency` };
  if (isCurrency(said.toUpperCase())) return { currency: said.toUpperCase() };
  return { fault: `“${said.slice(0, 30)}” beside the figure is not known` };
}

/**
 * Reads a price or a quantity as shops write it: with a currency sign or code, thousands marked, a comma or a point before
 * the cents. Nothing is guessed: what could be read in two ways, is below zero or in words is a fault.
 */
export function readAmount(cell: string, mark: DecimalMark): ReadAmount {
  const shown = `“${cell.trim().slice(0, 30)}”`;
  const { figure, around } = split(cell);
  if (figure === '' || /\d[eE][+-]?\d/.test(cell)) return { fault: `${shown} is not a number` };
  if (figure.startsWith('-')) return { fault: `${shown} is below zero` };
  const own = markOf(cell);
  const decimal = own ?? mark;
  if (/[.,]/.test(figure) && decimal === undefined) return { fault: `${shown} can be read in two ways` };
  const amount = plainDecimal(figure.replace('+', ''), decimal ?? '.');
  if (amount === undefined) return { fault: `${shown} is not a number` };
  const currency = currencyOf(around);
  return currency.fault ? currency : { amount, ...currency };
}

function plainDecimal(figure: string, mark: '.' | ','): string | undefined {
  const thousands = mark === '.' ? ',' : '.';
  const [whole = '', cents, ...more] = figure.split(mark);
  const grouped =
    whole === '' || /^\d+$/.test(whole) || new RegExp(`^\\d{1,3}(\\${thousands}\\d{3})+$`).test(whole);
  if (!grouped || more.length > 0 || (cents !== undefined && !/^\d*$/.test(cents))) return undefined;
  const digits = whole.replaceAll(thousands, '').replace(/^0+(?=\d)/, '') || '0';
  if (digits.length > WHOLE || (cents?.length ?? 0) > CENTS) return undefined;
  return cents ? `${digits}.${cents}` : digits;
}
