// How hard the book is to read, page by page, and what is misspelled on the built pages. Exits non-zero for a misspelled
// word. With --short: the sum of it only, as the build prints it.
import { join } from 'node:path';
import { builtPages } from './words/built.ts';
import { type Reading, readingOf } from './words/grade.ts';
import { misspelled } from './words/spelling.ts';
import { sections, whys } from './words/texts.ts';

const short = process.argv.includes('--short');
const dist = join(import.meta.dirname, '..', 'dist');

const pageOf = ({ where }: { where: string }): string => where.replace(/:.*/, '');
const pages = Object.entries(Object.groupBy(sections, pageOf)).map(([page, parts = []]) => ({
  page,
  whole: readingOf(parts.flatMap(({ blocks }) => blocks)),
  hardest: Math.max(...parts.map(({ blocks }) => readingOf(blocks).grade)),
}));

const perSentence = ({ words, sentences }: Reading): string => (words / sentences).toFixed(1);
const row = (page: string, whole: Reading, hardest: number): string =>
  `${page.padEnd(32)}${String(whole.words).padStart(7)}${perSentence(whole).padStart(13)}${whole.grade.toFixed(1).padStart(8)}${hardest.toFixed(1).padStart(10)}`;

if (!short) {
  console.log(`${'page'.padEnd(32)}  words  words/sentence   grade   hardest section`);
  for (const { page, whole, hardest } of pages) console.log(row(page, whole, hardest));
}
const why = readingOf(whys.flatMap(({ blocks }) => blocks));
const all = readingOf(sections.flatMap(({ blocks }) => blocks));
const hardest = Math.max(...pages.map((each) => each.hardest));
console.log(
  `Reading grade (Flesch–Kincaid; age is about five more): book ${all.grade.toFixed(1)} over ${all.words} words, hardest section ${hardest.toFixed(1)}; whys of the questions ${why.grade.toFixed(1)}`,
);

const faults = builtPages(dist).flatMap(({ where, blocks }) =>
  misspelled(blocks.join('\n')).map((word) => `${where || 'home'}: ${word}`),
);
console.log(`Spelling: ${faults.length} words that neither the dictionary nor our list knows`);
if (!short) for (const fault of faults) console.log(`  ${fault}`);
if (!short && faults.length) process.exitCode = 1;
