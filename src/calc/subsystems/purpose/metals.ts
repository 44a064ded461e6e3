import type { Look } from '../../core/figure.ts';
import type { DrillMaterial } from '../../formulas/drill-materials.ts';

/** A metal of the question about metals: its rows in the tables of force, and the speed it is turned at. */
export interface Metal {
  readonly id: string;
  /** Row of the table of cutting forces. */
  readonly cut: string;
  readonly drill: DrillMaterial;
  /** Carbide on a light lathe, m/s; from memory of the trade. */
  readonly surfaceSpeed: number;
}

const perMinute = (metres: number): number => metres / 60;

/**
 * Where a name covers several metals, the heavier ordinary one: bar sold as mild steel is seldom under a quarter of a
 * percent of carbon and often cold drawn, and "alloy" holds stainless as well. Free-cutting steel has no row of its own
 * in the table of cutting forces and takes that of low-carbon steel.
 */
const metals: readonly Metal[] = [
  { id: 'brass', cut: 'brass', drill: 'brass-leaded', surfaceSpeed: perMinute(120) },
  { id: 'aluminium', cut: 'aluminium-aged', drill: 'aluminium', surfaceSpeed: perMinute(150) },
  { id: 'free-cutting-steel', cut: 'mild-steel', drill: 'free-cutting-steel', surfaceSpeed: perMinute(100) },
  { id: 'mild-steel', cut: 'medium-carbon-steel', drill: 'mild-steel', surfaceSpeed: perMinute(80) },
  { id: 'cast-iron', cut: 'grey-iron', drill: 'grey-iron', surfaceSpeed: perMinute(60) },
  {
    id: 'alloy-steel',
    cut: 'stainless-austenitic',
    drill: 'chrome-molybdenum-steel',
    surfaceSpeed: perMinute(50),
  },
];

/** The metals that this machine shall cut; mild steel where none is named. */
export function metalsToCut(look: Look): readonly Metal[] {
  const named = metals.filter(({ id }) => look.chosen('materials', id));
  return named.length > 0 ? named : metals.filter(({ id }) => id === 'mild-steel');
}
