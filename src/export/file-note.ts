/** Something in a file that could not be used as it stands. Shown once; nothing is dropped silently. */
export interface FileNote {
  readonly kind:
    | 'not-a-file'
    | 'other-version'
    | 'too-large'
    | 'other-edition'
    | 'unknown-id'
    | 'left-out'
    | 'said';
  readonly say: string;
}

/** Largest file that is read, bytes. A path with every answer and every quote is a twentieth of it. */
export const MOST_BYTES = 2_000_000;

/** Longest piece of a file repeated in a note. */
const QUOTED = 60;

/** A value of a file as a note repeats it: short, and never what is inside a list or a group. */
export function quoted(value: unknown): string {
  if (typeof value === 'string') return value.length > QUOTED ? `“${value.slice(0, QUOTED)}…”` : `“${value}”`;
  if (typeof value === 'object' && value !== null)
    return Array.isArray(value) ? 'a list' : 'a group of values';
  return `“${String(value)}”`;
}

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;

/** The same of a file of many paths; browsers keep a fourth of it for a site. */
export const MOST_SHELF_BYTES = 20_000_000;

/** The refusal of a file by its size, before a byte of it is read; undefined when it may be read. */
export function tooLarge(bytes: number, most = MOST_BYTES): FileNote | undefined {
  if (bytes <= most) return undefined;
  return {
    kind: 'too-large',
    say: `This file has ${megabytes(bytes)}; files up to ${megabytes(most)} are read. Nothing was changed.`,
  };
}
