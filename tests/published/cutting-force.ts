import { specificCuttingForce } from '../../src/calc/formulas/cutting.ts';
import { cuttingMaterial } from '../../src/calc/formulas/cutting-materials.ts';
import { type PublishedRow, row } from './row.ts';

const chuckMaker = { ref: 'Röhm Norm RN 1391', at: 'p. 43, table 2, 45° entering angle' };
const chuckFeeds = [0.16, 0.25, 0.4, 0.63, 1, 1.6];
/** Material of the classic constants, name in the table, kN/mm² as printed, how far the table may lie off. */
const chuckTable: readonly (readonly [string, string, readonly string[], number])[] = [
  ['chrome-molybdenum-steel', '42CrMo4', ['4.35', '3.90', '3.45', '3.10', '2.75', '2.45'], 0.02],
  ['steel-st42', 'St 42', ['2.60', '2.40', '2.20', '2.05', '1.90', '1.80'], 0.035],
  ['steel-st50', 'St 50-2', ['3.50', '3.10', '2.75', '2.45', '2.15', '1.95'], 0.02],
  ['case-hardening-steel', '16MnCr5', ['3.75', '3.30', '2.95', '2.60', '2.30', '2.05'], 0.02],
  ['grey-iron', 'GG 25', ['2.05', '1.80', '1.60', '1.45', '1.30', '1.15'], 0.03],
];

const chuckRows = chuckTable.flatMap(([id, name, column, by]) =>
  column.map((printed, at) =>
    row(specificCuttingForce, {
      what: `${name}, ${chuckFeeds[at]} mm a turn`,
      source: chuckMaker,
      provenance: 'seen',
      inputs: {
        kc11: cuttingMaterial(id)!.kc11,
        mc: cuttingMaterial(id)!.mc,
        feed: chuckFeeds[at]! / 1000,
        enteringAngle: Math.PI / 4,
      },
      as: (pascal) => pascal / 1e9,
      printed,
      unit: 'kN/mm²',
      looser: {
        by,
        because:
          'the table goes in steps of 0.05; the constants for the metal are quoted from memory of another book',
      },
    }),
  ),
);

const insertMaker = {
  ref: 'Mitsubishi Materials, technical information',
  at: 'cutting power for turning, Kc table',
};
const insertFeeds = [0.1, 0.2, 0.3, 0.4, 0.6];
/** Name, kc11 in MPa and mc fitted through the source's own five figures, MPa as printed, how far it may lie off. */
const insertTable: readonly (readonly [string, number, number, readonly string[], number])[] = [
  ['chrome-molybdenum steel 730 MPa', 2497, 0.261, ['4500', '3900', '3400', '3150', '2850'], 0.03],
  ['mild steel 520 MPa', 1988, 0.263, ['3610', '3100', '2720', '2500', '2280'], 0.025],
  ['grey iron 200 HB', 1139, 0.271, ['2110', '1800', '1600', '1400', '1330'], 0.045],
];

const insertRows = insertTable.flatMap(([name, megapascal, mc, column, by]) =>
  column.map((printed, at) =>
    row(specificCuttingForce, {
      what: `${name}, ${insertFeeds[at]} mm a turn`,
      source: insertMaker,
      provenance: 'seen',
      inputs: { kc11: megapascal * 1e6, mc, feed: insertFeeds[at]! / 1000, enteringAngle: Math.PI / 2 },
      as: (pascal) => pascal / 1e6,
      printed,
      unit: 'MPa',
      looser: {
        by,
        because: 'measured figures rounded to 50 or 20 MPa; one pair of constants is fitted through all five',
      },
    }),
  ),
);

export const cuttingForceRows: readonly PublishedRow[] = [...chuckRows, ...insertRows];
