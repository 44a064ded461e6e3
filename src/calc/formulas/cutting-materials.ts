/** Constants of the law of the specific cutting force for one material, each row from one source. */
export interface CuttingMaterial {
  readonly id: string;
  readonly label: string;
  /** Pa, at a chip 1 mm thick and 1 mm wide. */
  readonly kc11: number;
  readonly mc: number;
  readonly source: { readonly ref: string; readonly at: string };
  /** seen: read in the source. memory: the source exists, its figure was quoted from memory. */
  readonly provenance: 'seen' | 'memory';
}

const iscar = (
  id: string,
  label: string,
  megapascal: number,
  mc: number,
  group: string,
): CuttingMaterial => ({
  id,
  label,
  kc11: megapascal * 1e6,
  mc,
  source: { ref: 'ISCAR turning catalogue 2017', at: `p. 558, ${group}` },
  provenance: 'seen',
});

const koenig = (
  id: string,
  label: string,
  megapascal: number,
  mc: number,
  steel: string,
): CuttingMaterial => ({
  id,
  label,
  kc11: megapascal * 1e6,
  mc,
  source: { ref: 'W. König and K. Essel, Spezifische Schnittkraftwerte, 1973', at: steel },
  provenance: 'memory',
});

/**
 * Specific cutting forces by material. Makers differ by 30 to 40 % for the "same" material, so a force worked out
 * from one row is never held against another maker's force. A worn edge adds 30 to 50 %. No source prints plastics.
 */
export const cuttingMaterials: readonly CuttingMaterial[] = [
  iscar('mild-steel', 'Mild steel, under 0.25 % carbon', 1350, 0.21, 'group 1, 125 HB'),
  iscar('medium-carbon-steel', 'Medium-carbon steel, annealed', 1500, 0.22, 'group 2, 190 HB'),
  iscar(
    'toughened-carbon-steel',
    'Medium-carbon steel, hardened and tempered',
    1675,
    0.24,
    'group 3, 250 HB',
  ),
  iscar('alloy-steel-soft', 'Chrome-molybdenum steel, annealed', 1775, 0.24, 'group 6, 200 HB'),
  iscar('alloy-steel-275', 'Low-alloy steel, hardened and tempered to 275 HB', 1675, 0.24, 'group 7, 275 HB'),
  iscar('alloy-steel-300', 'Low-alloy steel, hardened and tempered to 300 HB', 1725, 0.24, 'group 8, 300 HB'),
  iscar('alloy-steel-350', 'Low-alloy steel, hardened and tempered to 350 HB', 1800, 0.24, 'group 9, 350 HB'),
  iscar('stainless-magnetic', 'Stainless steel, magnetic', 1875, 0.21, 'groups 12 and 13'),
  iscar('stainless-austenitic', 'Stainless steel 304 or 316', 2150, 0.2, 'group 14'),
  iscar('aluminium', 'Aluminium bar, not aged', 700, 0.25, 'wrought, not aged'),
  iscar('aluminium-aged', 'Aluminium bar, aged (6061-T6)', 800, 0.25, 'wrought, aged, group 22'),
  iscar('aluminium-cast', 'Cast aluminium, up to 12 % silicon', 700, 0.25, 'cast, 12 % silicon at most'),
  iscar('aluminium-cast-hard', 'Cast aluminium, over 12 % silicon', 750, 0.25, 'cast, over 12 % silicon'),
  iscar('brass', 'Brass and free-cutting copper alloy', 700, 0.27, 'brass, free-cutting copper alloy'),
  iscar('titanium', 'Titanium, alpha-beta', 2110, 0.22, 'alpha-beta titanium'),
  koenig('steel-st42', 'Structural steel St 42', 1780, 0.17, 'St 42'),
  koenig('steel-st50', 'Structural steel St 50', 1990, 0.26, 'St 50'),
  koenig('steel-st60', 'Structural steel St 60', 2110, 0.17, 'St 60'),
  koenig('steel-st70', 'Structural steel St 70', 2260, 0.3, 'St 70'),
  koenig('case-hardening-steel', 'Case-hardening steel 16MnCr5', 2100, 0.26, '16MnCr5'),
  koenig('chrome-molybdenum-steel', 'Chrome-molybdenum steel 42CrMo4', 2500, 0.26, '42CrMo4'),
  koenig('grey-iron', 'Grey cast iron', 1160, 0.26, 'GG-25'),
];

/** Constants of a material by its id; undefined where no source prints them. */
export const cuttingMaterial = (id: string): CuttingMaterial | undefined =>
  cuttingMaterials.find((material) => material.id === id);
