/** How a twist drill is ground and how it stands; `worn` and `worn-out` bracket a drill in need of grinding. */
export type DrillPoint = 'sharp' | 'split' | 'piloted' | 'worn' | 'worn-out';

/**
 * What the point does to the thrust, against an ordinary sharp point. The chisel edge makes 50 to 70 % of the
 * thrust, which a split point lessens and a pilot hole as wide as the web takes away. Common practice, no source.
 */
export const pointFactors: Readonly<Record<DrillPoint, number>> = {
  sharp: 1,
  split: 0.7,
  piloted: 0.5,
  worn: 1.3,
  'worn-out': 1.5,
};

/** Materials of the catalogue method. */
export type DrillMaterial =
  | ('aluminium' | 'brass-leaded' | 'brass' | 'free-cutting-steel' | 'mild-steel' | 'alloy-steel')
  | ('chrome-molybdenum-steel' | 'grey-iron-soft' | 'grey-iron' | 'grey-iron-hard');

const catalogue = 'Tungaloy catalogue p. L068';
const practice = 'common practice, no source';

/** Material factor K of the catalogue method. Brass is not in the catalogue and says so. */
export const drillMaterials: Readonly<
  Record<DrillMaterial, { label: string; factor: number; source: string; provenance: 'seen' | 'practice' }>
> = {
  aluminium: { label: 'Aluminium', factor: 1.01, source: catalogue, provenance: 'seen' },
  'brass-leaded': { label: 'Leaded brass', factor: 0.7, source: practice, provenance: 'practice' },
  brass: { label: 'Plain brass', factor: 1.4, source: practice, provenance: 'practice' },
  'free-cutting-steel': { label: 'Free-cutting steel', factor: 1.42, source: catalogue, provenance: 'seen' },
  'mild-steel': { label: 'Mild steel', factor: 2.22, source: catalogue, provenance: 'seen' },
  'alloy-steel': { label: 'Low-alloy steel (SCM430)', factor: 2.1, source: catalogue, provenance: 'seen' },
  'chrome-molybdenum-steel': {
    label: 'Chrome-molybdenum steel (SCM440)',
    factor: 2.41,
    source: catalogue,
    provenance: 'seen',
  },
  'grey-iron-soft': { label: 'Grey iron, 177 HB', factor: 1, source: catalogue, provenance: 'seen' },
  'grey-iron': {
    label: 'Grey iron, ordinary casting, 198 HB',
    factor: 1.39,
    source: catalogue,
    provenance: 'seen',
  },
  'grey-iron-hard': { label: 'Grey iron, 224 HB', factor: 1.88, source: catalogue, provenance: 'seen' },
};

/** Work factors Kd of the handbook method, from memory of its table 6; never used with the catalogue method. */
export const handbookWorkFactors: Readonly<Record<string, number>> = {
  'steel-200': 24000,
  'steel-300': 31000,
  'steel-400': 34000,
  'free-cutting-steel': 12000,
  aluminium: 7000,
  'brass-leaded': 7000,
  brass: 14000,
  'grey-iron-150': 14000,
  'stainless-austenitic': 24000,
  'stainless-hardened': 35000,
};
