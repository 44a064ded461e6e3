import { readFileSync } from 'node:fs';

/** A link that somebody may have kept, and what it is. */
export interface KeptLink {
  readonly what: string;
  readonly fragment: string;
}

/** The append-only corpus: "# what it is", then the link on a line of its own. */
export function keptLinks(): KeptLink[] {
  const lines = readFileSync(new URL('./v1.txt', import.meta.url), 'utf8').split('\n');
  return lines.flatMap((line, at) => {
    const before = lines[at - 1] ?? '';
    return line !== '' && !line.startsWith('#') ? [{ what: before.replace(/^# /, ''), fragment: line }] : [];
  });
}
