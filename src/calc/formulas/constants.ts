/** Standard gravity, m/s² (SI brochure, 9th edition: the value agreed in 1901). */
export const gravity = 9.80665;

/** Steel of screw shafts as the makers' catalogues take it: modulus in Pa, density in kg/m³. */
export const steel = { modulus: 2.06e11, density: 7800 } as const;

/** Second moment of area of a round shaft, m⁴, from its diameter in m. */
export const roundSection = (diameter: number): number => (Math.PI * diameter ** 4) / 64;

/** Area of a round shaft, m², from its diameter in m. */
export const roundArea = (diameter: number): number => (Math.PI * diameter ** 2) / 4;

/** Sum of a list. */
export const sum = (figures: readonly number[]): number =>
  figures.reduce((total, figure) => total + figure, 0);
