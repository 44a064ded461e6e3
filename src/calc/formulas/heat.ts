import type { Formula } from '../core/formula.ts';

export type Mounting =
  | 'free'
  | 'wall'
  | 'free-row-end'
  | 'wall-row-end'
  | 'free-row-middle'
  | 'wall-row-middle'
  | 'wall-row-middle-covered';

/** Which faces give off heat and how well, by how the box stands. IEC 60890, as in a heater maker's sheet. */
const areas: Readonly<Record<Mounting, (h: number, w: number, d: number) => number>> = {
  free: (h, w, d) => 1.8 * h * (w + d) + 1.4 * w * d,
  wall: (h, w, d) => 1.4 * w * (h + d) + 1.8 * d * h,
  'free-row-end': (h, w, d) => 1.4 * d * (h + w) + 1.8 * w * h,
  'wall-row-end': (h, w, d) => 1.4 * h * (w + d) + 1.4 * w * d,
  'free-row-middle': (h, w, d) => 1.8 * w * h + 1.4 * w * d + d * h,
  'wall-row-middle': (h, w, d) => 1.4 * w * (h + d) + d * h,
  'wall-row-middle-covered': (h, w, d) => 1.4 * w * h + 0.7 * w * d + d * h,
};

/** Area of a closed box that gives off heat, square metres; it depends on how the box is mounted. */
export const enclosureArea: Formula<{ height: number; width: number; depth: number; mounting: Mounting }> = {
  id: 'enclosure-area',
  label: 'Cooling area of the cabinet',
  equation: 'free on all sides: area = 1.8 × height × (width + depth) + 1.4 × width × depth',
  tex: 'A = 1.8\\,H\\,(W + D) + 1.4\\,W\\,D',
  inputs: { height: 'm', width: 'm', depth: 'm', mounting: 'case' },
  unit: 'm²',
  source: { ref: 'Stego calculation sheet 0911, after IEC 60890', at: 'formulas by way of mounting' },
  valid: {},
  compute: ({ height, width, depth, mounting }) => areas[mounting](height, width, depth),
};

export type Wall = 'painted-steel' | 'stainless-steel' | 'aluminium' | 'plastic';

/** Watts through a square metre of wall for each kelvin. */
export const wallTransfer: Readonly<Record<Wall, { readonly value: number; readonly source: string }>> = {
  'painted-steel': { value: 5.5, source: 'Rittal data sheet 3171100, page 6' },
  'stainless-steel': { value: 3.6, source: 'Uniklima selection notes' },
  aluminium: { value: 6.5, source: 'Uniklima selection notes' },
  plastic: { value: 3.5, source: 'common practice, no source' },
};

/** Kelvin by which a sealed box gets warmer inside than the room: even heat, no sun, after some hours. */
export const enclosureRise: Formula<{ loss: number; area: number; wall: Wall }> = {
  id: 'enclosure-rise',
  label: 'Temperature rise of a sealed cabinet',
  equation: 'rise = loss ÷ (k × area)',
  tex: '\\Delta T = \\frac{P}{k\\,A}',
  inputs: { loss: 'W', area: 'm²', wall: 'case' },
  unit: 'K',
  source: { ref: 'Rittal data sheet 3171100', at: 'page 6, k = 5.5 W/m²K for painted sheet steel' },
  valid: {},
  unverified:
    'Makers print the constant and the areas, but no worked rise that uses them is known. A selection curve of another maker reads about a fifth higher.',
  compute: ({ loss, area, wall }) => loss / (wallTransfer[wall].value * area),
};

/** Heat that a cubic metre of standard air takes up for each kelvin, J: 0.075 lb/ft³ and 0.24 Btu/lb°F. */
const AIR_HEAT = ((0.075 * 0.45359237) / 0.3048 ** 3) * 0.24 * 4186.8;

/** Air that must really pass through the box to carry the heat off at this rise, cubic metres a second. */
export const enclosureAirflow: Formula<{ loss: number; rise: number }> = {
  id: 'enclosure-airflow',
  label: 'Air needed through the cabinet',
  equation: 'airflow = loss ÷ (1207 J/m³K × rise)',
  tex: '\\dot V = \\frac{P}{\\rho\\,c\\,\\Delta T}',
  inputs: { loss: 'W', rise: 'K' },
  unit: 'm³/s',
  source: { ref: 'Comair Rotron, fan selection notes', at: 'standard air, 0.075 lb/ft³ and 0.24 Btu/lb°F' },
  valid: { rise: [1, 50] },
  compute: ({ loss, rise }) => loss / (AIR_HEAT * rise),
};

/** Kelvin by which the air warms on its way through the box; `airflow` is what really passes. */
export const ventilatedRise: Formula<{ loss: number; airflow: number }> = {
  id: 'ventilated-rise',
  label: 'Temperature rise with a fan',
  equation: 'rise = loss ÷ (1207 J/m³K × airflow)',
  tex: '\\Delta T = \\frac{P}{\\rho\\,c\\,\\dot V}',
  inputs: { loss: 'W', airflow: 'm³/s' },
  unit: 'K',
  source: enclosureAirflow.source,
  valid: {},
  compute: ({ loss, airflow }) => loss / (AIR_HEAT * airflow),
};

/** What a fan still moves through its filter and grille, cubic metres a second. */
export const filteredAirflow: Formula<{ freeAir: number }> = {
  id: 'filtered-airflow',
  label: 'Air that a fan moves through filters',
  equation: 'airflow = freeAir ÷ 2',
  tex: '\\dot V = \\tfrac{1}{2}\\,\\dot V_0',
  inputs: { freeAir: 'm³/s' },
  unit: 'm³/s',
  source: { ref: 'common practice, no source', at: 'half of the free-air figure with filters on' },
  valid: {},
  unverified: 'A rule of thumb; the fan’s own pressure curve with the filter decides.',
  compute: ({ freeAir }) => freeAir / 2,
};

/** Share of the back plate that the devices cover, their clearances included; 0.70 to 0.75 is full. */
export const panelFill: Formula<{ devices: readonly number[]; plate: number }> = {
  id: 'panel-fill',
  label: 'How full the back plate is',
  equation: 'fill = sum of devices ÷ plate',
  tex: 'f = \\frac{\\sum A_i}{A}',
  inputs: { devices: 'm²', plate: 'm²' },
  unit: '1',
  source: { ref: 'common practice, no source', at: 'leave 25 to 30 % of the back plate free' },
  valid: {},
  unverified: 'A sum of areas; nothing is published to compare it with.',
  compute: ({ devices, plate }) => devices.reduce((total, device) => total + device, 0) / plate,
};

export const heatFormulas = [
  enclosureArea,
  enclosureRise,
  enclosureAirflow,
  ventilatedRise,
  filteredAirflow,
  panelFill,
] as const;
