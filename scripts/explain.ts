// Prints what follows from a link: for bug reports, scripts and tests. Exit code 2 for a link that cannot be read at all.
import { evaluate } from '../src/calc/evaluate.ts';
import { currentEdition, editionByName } from '../src/content/edition.ts';
import { asText } from '../src/export/text.ts';
import { decodePath } from '../src/link/decode.ts';

const words = process.argv.slice(2).filter((word) => word !== '--json');
const link = words[0] ?? '';
const hash = link.indexOf('#');
const fragment = hash >= 0 ? link.slice(hash + 1) : link;
const { path, notes, readable } = decodePath(fragment);

for (const note of notes) console.error(note.say);
if (!readable || words.length !== 1) {
  console.error("Usage: npm run explain -- '<link or fragment>' [--json]");
  process.exitCode = 2;
} else {
  const report = evaluate(path, editionByName(path.edition) ?? currentEdition);
  console.log(process.argv.includes('--json') ? JSON.stringify(report, null, 2) : asText(report));
}
