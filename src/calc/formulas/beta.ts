/** Terms of the continued fraction; it settles to the last digit well before for the shapes of a PERT band. */
const TERMS = 60;

/**
 * Integral of t^(a-1) (1-t)^(b-1) from 0 to x, by the continued fraction of the incomplete beta function.
 * Settles fast for x up to (a+1)/(a+b+2). Source: Abramowitz and Stegun 26.5.8.
 */
function lowerPart(x: number, a: number, b: number): number {
  let fraction = 1;
  for (let term = TERMS; term >= 1; term -= 1) {
    const even = (term * (b - term) * x) / ((a + 2 * term - 1) * (a + 2 * term));
    const odd = (-(a + term) * (a + b + term) * x) / ((a + 2 * term) * (a + 2 * term + 1));
    fraction = 1 + even / (1 + odd / fraction);
  }
  const first = (-(a + b) * x) / (a + 1);
  return (x ** a * (1 - x) ** b) / (a * (1 + first / fraction));
}

/** Share of a beta distribution with shapes a and b (above zero) that lies below x, 0 to 1. */
export function betaShare(x: number, a: number, b: number): number {
  const turn = (a + 1) / (a + b + 2);
  const whole = lowerPart(turn, a, b) + lowerPart(1 - turn, b, a);
  return x < turn ? lowerPart(x, a, b) / whole : 1 - lowerPart(1 - x, b, a) / whole;
}

/** Quantile of a beta distribution on 0 to 1, by halving, to about 1e-15. */
export function betaQuantile(p: number, a: number, b: number): number {
  let low = 0;
  let high = 1;
  for (let step = 0; step < 52; step += 1) {
    const middle = (low + high) / 2;
    if (betaShare(middle, a, b) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
