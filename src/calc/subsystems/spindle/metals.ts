import type { Look } from '../../core/figure.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { type CuttingMaterial, cuttingMaterial } from '../../formulas/cutting-materials.ts';

/** A metal of the question about metals: its row in the table of cutting forces, and the speed it is turned at. */
interface Metal {
  readonly id: string;
  readonly row: string;
  /** Carbide on a light lathe, m/s; from memory of the trade. */
  readonly surfaceSpeed: number;
}

const perMinute = (metres: number): number => metres / 60;

/**
 * Bar sold as mild steel is often cold drawn and cuts like annealed medium-carbon steel, so the heavier row stands
 * for it; the row of low-carbon steel stands for free-cutting steel, whose own is not printed.
 */
const metals: readonly Metal[] = [
  { id: 'brass', row: 'brass', surfaceSpeed: perMinute(120) },
  { id: 'aluminium', row: 'aluminium-aged', surfaceSpeed: perMinute(150) },
  { id: 'free-cutting-steel', row: 'mild-steel', surfaceSpeed: perMinute(100) },
  { id: 'mild-steel', row: 'medium-carbon-steel', surfaceSpeed: perMinute(80) },
  { id: 'cast-iron', row: 'grey-iron', surfaceSpeed: perMinute(60) },
  { id: 'alloy-steel', row: 'stainless-austenitic', surfaceSpeed: perMinute(50) },
];

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

/** The metals that this machine shall cut, each with its constants; mild steel where none is named. */
export function chosenMetals(look: Look): ChosenMetal[] {
  const named = metals.filter(({ id }) => look.chosen('materials', id));
  const all = named.length > 0 ? named : metals.filter(({ id }) => id === 'mild-steel');
  return all.map((metal) => asChosen(look, metal, cuttingMaterial(metal.row)!));
}
