/**
 * Logarithm, exponential and normal distribution from the four operations and square root only. The standard library's
 * own may differ in the last digit between machines, and an edition must give the same cents everywhere for ever.
 */

const { LN2, SQRT2 } = Math;

/** Natural logarithm of a positive number, to about 1e-15 relative. Series of artanh; Abramowitz and Stegun 4.1.27. */
export function ln(x: number): number {
  let exponent = 0;
  let mantissa = x;
  while (mantissa > SQRT2) {
    mantissa /= 2;
    exponent += 1;
  }
  while (mantissa < SQRT2 / 2) {
    mantissa *= 2;
    exponent -= 1;
  }
  const s = (mantissa - 1) / (mantissa + 1);
  const square = s * s;
  let sum = 0;
  for (let power = 23; power >= 1; power -= 2) sum = sum * square + 1 / power;
  return exponent * LN2 + 2 * s * sum;
}

/** Exponential, to about 1e-15 relative; zero below -700. Taylor series after halving; Abramowitz and Stegun 4.2.1. */
export function exp(x: number): number {
  if (x < -700) return 0;
  const halvings = Math.round(x / LN2);
  const rest = x - halvings * LN2;
  let sum = 1;
  for (let term = 15; term >= 1; term -= 1) sum = 1 + (rest / term) * sum;
  return sum * powersOfTwo[HALVINGS + halvings]!;
}

/** Powers of two from 2^-1023 up; each is exact, so a product with one only shifts the exponent. */
const HALVINGS = 1023;
const powersOfTwo = powers();

function powers(): Float64Array {
  const table = new Float64Array(2 * HALVINGS + 1);
  table[HALVINGS] = 1;
  for (let at = 1; at <= HALVINGS; at += 1) {
    table[HALVINGS + at] = table[HALVINGS + at - 1]! * 2;
    table[HALVINGS - at] = table[HALVINGS - at + 1]! / 2;
  }
  return table;
}

/** Standard normal distribution function, absolute error under 1e-14 for |z| up to 6. Marsaglia, J. Stat. Software 11(4), 2004. */
export function normalCdf(z: number): number {
  let term = z;
  let sum = z;
  for (let n = 3; n < 200; n += 2) {
    term *= (z * z) / n;
    const next = sum + term;
    if (next === sum) break;
    sum = next;
  }
  return 0.5 + sum * exp(-(z * z) / 2) * 0.3989422804014327;
}

/** Standard normal quantile by bisection on the distribution function, to 1e-12; for tables, not for loops. */
export function normalQuantile(p: number): number {
  let low = -6;
  let high = 6;
  for (let step = 0; step < 48; step += 1) {
    const middle = (low + high) / 2;
    if (normalCdf(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
