import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { decisions } from '../../src/calc/guide.ts';
import { parts, risks, tasks } from '../../src/calc/trade.ts';
import { glossary } from '../../src/content/glossary.ts';
import { inventedOwners } from '../../src/content/invented-owners.ts';
import { leftOut } from '../../src/content/left-out.ts';
import { safety } from '../../src/content/safety.ts';
import { sectionsOf } from './plain-text.ts';

/** A text of the book: where it stands, and its paragraphs. */
export interface Text {
  readonly where: string;
  readonly blocks: readonly string[];
}

const content = join(import.meta.dirname, '..', '..', 'src', 'content');

/** The sections of all topic pages and introductions of rooms, each by itself: "book/drilling: How to choose". */
export const sections: readonly Text[] = globSync('{book,rooms}/*.mdx', { cwd: content })
  .toSorted()
  .flatMap((file) =>
    sectionsOf(readFileSync(join(content, file), 'utf8')).map(({ heading, blocks }) => ({
      where: `${file.replace(/\.mdx$/, '')}: ${heading}`,
      blocks,
    })),
  );

/** Why each question is asked, and the rule of thumb that goes with it. */
export const whys: readonly Text[] = decisions.map(({ id, why, thumb }) => ({
  where: `question ${id}`,
  blocks: [why, thumb],
}));

/** Every string with a space in some data: what has none is an id or a sign. */
function said(data: unknown): string[] {
  if (typeof data === 'string') return data.includes(' ') ? [data] : [];
  return data && typeof data === 'object' ? Object.values(data).flatMap(said) : [];
}

/** What the trade data and the lists of content say. */
export const lists: readonly Text[] = Object.entries({
  decisions,
  parts,
  tasks,
  risks,
  glossary,
  leftOut,
  safety,
  inventedOwners,
}).map(([where, data]) => ({ where, blocks: said(data) }));
