/** Where a link is cut or refused on its way, characters of the whole address. Common practice, no source. */
export const lengths = {
  /** Fits every message, address bar and shop-counter telephone. */
  everywhere: 2000,
  /** Some messages and mail programs cut what is longer, or break it over lines. */
  mostly: 4000,
  /** Beyond it even programs that carry long links are not to be relied on. */
  most: 8000,
} as const;

/** Whether a link of this length arrives, in words. */
export function saidLength(length: number): string {
  if (length <= lengths.everywhere) return 'It fits everywhere.';
  if (length <= lengths.mostly)
    return 'Some messages cut a link as long as this. Ask whether it arrived whole, or send it as a code or as a file.';
  if (length <= lengths.most) return 'Many messages cut a link as long as this. A file is safer.';
  return 'This is longer than a link can be relied on to be. Send the file instead.';
}
