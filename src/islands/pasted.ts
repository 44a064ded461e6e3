/** The path in a pasted text, or the paths of a comparison, without '#'; undefined where there is none. */
export function fragmentIn(text: string): string | undefined {
  const written = text.trim();
  const fragment = written.includes('#') ? written.slice(written.indexOf('#') + 1) : written;
  return /^\d+\?\S*=/.test(fragment) ? fragment : undefined;
}
