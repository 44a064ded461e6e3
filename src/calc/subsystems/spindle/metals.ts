import type { Look } from '../../core/figure.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { type CuttingMaterial, cuttingMaterial } from '../../formulas/cutting-materials.ts';
import { type Metal, metalsToCut } from '../purpose/metals.ts';

export interface ChosenMetal {
  readonly id: string;
  readonly kc11: Quantity;
  readonly mc: Quantity;
  readonly surfaceSpeed: Quantity;
}

function asChosen(look: Look, metal: Metal, row: CuttingMaterial): ChosenMetal {
  const why = `${row.label}: ${row.source.ref}, ${row.source.at}`;
  const speed = 'carbide on a light lathe; from memory of the trade';
  return {
    id: metal.id,
    kc11: chosen(row.kc11, 'Pa', 'materials', metal.id, why),
    mc: chosen(row.mc, '1', 'materials', metal.id, why),
    surfaceSpeed:
      look.measured('surface-speed') ?? chosen(metal.surfaceSpeed, 'm/s', 'materials', metal.id, speed),
  };
}

/** The metals that this machine shall cut, each with its constants. */
export const chosenMetals = (look: Look): ChosenMetal[] =>
  metalsToCut(look).map((metal) => asChosen(look, metal, cuttingMaterial(metal.cut)!));
