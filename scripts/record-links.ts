// Records what the kept links open to today, for those that have no record yet. Nothing recorded is ever written anew.
import { appendFileSync, existsSync, writeFileSync } from 'node:fs';
import { keptLinks } from '../tests/links/corpus.ts';
import { FIGURES, figuresOf, recorded } from '../tests/links/figures.ts';

if (!existsSync(FIGURES)) writeFileSync(FIGURES, '');
const known = recorded();
for (const { what, fragment } of keptLinks()) {
  if (known.has(what)) continue;
  appendFileSync(FIGURES, `# ${what}\n${figuresOf(fragment)}\n`);
  console.log(`recorded: ${what}`);
}
