/** Parts that are alike enough to be made from one program: what the owner makes of them and how long it takes. */
export interface Family {
  /** The owner's name for it: "knurled knobs". */
  readonly name: string;
  readonly piecesPerBatch: number;
  readonly batchesPerYear: number;
  /** Hours to set up a batch and to make one piece, as the lathe is now. */
  readonly byHand: { readonly setUp: number; readonly piece: number };
  /**
   * The same by program: `firstSetUp` with the program still to be written, `setUp` when it comes back, and of each
   * piece only the time that somebody stands by.
   */
  readonly byProgram: { readonly firstSetUp: number; readonly setUp: number; readonly attended: number };
  /** Drill, turn and part off; or curves, several diameters, threads. Missing: not said. */
  readonly shape?: 'plain' | 'shaped';
  /** Dollars that somebody outside asks for one piece, set-up shared out; missing: nobody was asked. */
  readonly outsidePrice?: number;
}

/**
 * Hours of a practised owner on a small converted lathe, for a piece that takes 20 minutes by hand: what a family starts
 * from. Common practice, no source.
 */
export const usualFamily: Omit<Family, 'name'> = {
  piecesPerBatch: 30,
  batchesPerYear: 12,
  byHand: { setUp: 0.4, piece: 20 / 60 },
  byProgram: { firstSetUp: 2, setUp: 0.4, attended: 6 / 60 },
};

/** True for a family of finite figures, none below zero, with at least one piece a batch. */
export function isFamily({
  piecesPerBatch,
  batchesPerYear,
  byHand,
  byProgram,
  outsidePrice = 0,
}: Family): boolean {
  const times = [...Object.values(byHand), ...Object.values(byProgram)];
  return (
    piecesPerBatch >= 1 &&
    [piecesPerBatch, batchesPerYear, outsidePrice, ...times].every((n) => Number.isFinite(n) && n >= 0)
  );
}
