import { addBands, type Band, NOTHING } from '../../calc/core/band.ts';

/** Ends and middles of all bands added: all the best and all the worst, never a plausible total. */
export const sumOfBands = (bands: readonly Band[]): Band => bands.reduce(addBands, NOTHING);
