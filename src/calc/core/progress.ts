/** What the make-first list asks of each part. */
export const shelfMarks = ['drawing', 'made', 'measured', 'spare', 'photo'] as const;

export type ShelfMark = (typeof shelfMarks)[number];

/**
 * What the owner has done, measured and spent. Private, like purchases: kept on the device and in files, in a link only
 * on request. Ids that a later plan does not hold are kept: done stays done.
 */
export interface Progress {
  /** Day a task was ticked, ISO 8601, by task id. */
  readonly done: Readonly<Record<string, string>>;
  /** Values in SI (°C for temperatures), by reading id, in the order of the places. */
  readonly values: Readonly<Record<string, readonly number[]>>;
  /** Hours spent so far, by task id, ticked or not. */
  readonly spent: Readonly<Record<string, number>>;
  readonly notes: Readonly<Record<string, string>>;
  /** Ticks of the make-first list, by the id of its line. */
  readonly shelf: Readonly<Record<string, readonly ShelfMark[]>>;
}

export const nothingDone: Progress = { done: {}, values: {}, spent: {}, notes: {}, shelf: {} };
