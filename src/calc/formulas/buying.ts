import { Decimal } from 'decimal.js';
import type { Formula } from '../core/formula.ts';

/** Whole packs that cover a need; need and pack in one unit. Worked in decimals, so that 1.1 of 0.1 is eleven. */
export const packsToBuy: Formula<{ need: number; pack: number }> = {
  id: 'packs-to-buy',
  label: 'Packs to buy',
  equation: 'packs = need ÷ pack, rounded up',
  tex: 'n = \\left\\lceil \\frac{N}{P} \\right\\rceil',
  inputs: { need: '1', pack: '1' },
  unit: '1',
  source: { ref: 'plain counting, no source', at: 'whole packs only' },
  valid: {},
  unverified: 'A division rounded up; nothing is published to compare it with.',
  compute: ({ need, pack }) => new Decimal(need).div(pack).ceil().toNumber(),
};

/** Beyond this the question is another drill, not more of them. */
const MOST_TOOLS = 10_000;

/** Chances that 0, 1, 2 … tools break before all the holes are done, added up as it goes. */
function* breakageShares(holes: number, breakChance: number): Generator<number> {
  let chance = (1 - breakChance) ** holes;
  let share = 0;
  for (let broken = 0; ; broken += 1) {
    share += chance;
    yield share;
    chance *= ((holes + broken) / (broken + 1)) * breakChance;
  }
}

const negativeBinomial = {
  ref: 'Negative binomial distribution, standard texts',
  at: 'failures before the last success',
} as const;

/** Chance (0 to 1) that this many drills or taps do for all the holes, when a broken one's hole is tried again. */
export const sparesChance: Formula<{ holes: number; breakChance: number; tools: number }> = {
  id: 'spares-chance',
  label: 'Chance that the drills last out',
  equation: 'chance of fewer than this many breakages before every hole is done',
  tex: 'P = \\sum_{k=0}^{D-1} \\binom{n+k-1}{k} (1-p)^n p^k',
  inputs: { holes: '1', breakChance: '1', tools: '1' },
  unit: '1',
  source: negativeBinomial,
  valid: { breakChance: [0, 0.95] },
  compute: ({ holes, breakChance, tools }) => {
    if (!(tools <= MOST_TOOLS)) return Number.NaN;
    if (tools < 1) return holes > 0 ? 0 : 1;
    let had = 0;
    for (const share of breakageShares(holes, breakChance)) if (++had >= tools) return share;
    return Number.NaN;
  },
};

/** Drills or taps to have, the one in use among them, to finish the holes with this confidence (0 to below 1). */
export const sparesFor: Formula<{ holes: number; breakChance: number; confidence: number }> = {
  id: 'spares-for',
  label: 'Drills to have at hand',
  equation: 'smallest number of tools whose chance to last out reaches the confidence',
  tex: 'D = \\min\\{D : P(D) \\ge c\\}',
  inputs: { holes: '1', breakChance: '1', confidence: '1' },
  unit: '1',
  source: negativeBinomial,
  valid: { breakChance: [0, 0.95], confidence: [0, 0.9999] },
  compute: ({ holes, breakChance, confidence }) => {
    let tools = 0;
    for (const share of breakageShares(holes, breakChance)) {
      tools += 1;
      if (share >= confidence) return tools;
      if (tools === MOST_TOOLS) return Number.NaN;
    }
    return Number.NaN;
  },
};

/**
 * Kilograms that a carrier charges for: the real weight or that of the box at the carrier's density, whichever is
 * more. A divisor of 5000 cm³ a kilogram is 200 kg/m³. Carriers then round up to their own step.
 */
export const chargeableWeight: Formula<{
  weight: number;
  length: number;
  width: number;
  height: number;
  density: number;
}> = {
  id: 'chargeable-weight',
  label: 'Weight that is charged for',
  equation: 'charged = larger of weight and length × width × height × density',
  tex: 'W = \\max(m,\\ \\rho\\,L\\,B\\,H)',
  inputs: { weight: 'kg', length: 'm', width: 'm', height: 'm', density: 'kg/m³' },
  unit: 'kg',
  source: {
    ref: 'Carriers’ terms, volumetric weight',
    at: 'cubic centimetres a kilogram: 4000, 5000 or 6000',
  },
  valid: { density: [100, 300] },
  compute: ({ weight, length, width, height, density }) =>
    Math.max(weight, length * width * height * density),
};

export const buyingFormulas = [packsToBuy, sparesChance, sparesFor, chargeableWeight] as const;
