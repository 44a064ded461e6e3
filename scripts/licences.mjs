// Lists what goes to the browser and under which licence, as the build found it, and what is only used to build, counted by
// licence. Exits with 1 where a licence is unknown, or not one that lets us build with it. The build itself ends where
// something that is sent asks for more than to be named.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const list = join(root, 'dist', 'licences.txt');
/** Tools and data that stay on the machine that builds; nothing of them is handed on. */
const TO_BUILD_WITH =
  /^(?:MIT|ISC|0BSD|BSD|BSD-[23]-Clause|Apache-2\.0|BlueOak-1\.0\.0|BSL-1\.0|CC0-1\.0|CC-BY-4\.0|Python-2\.0|MPL-2\.0|LGPL-3\.0-or-later)$/;

if (!existsSync(list)) {
  console.error('Nothing built yet: run `npm run build` first.');
  process.exit(1);
}
const [head = ''] = readFileSync(list, 'utf8').split(/\n-{80}\n/);
console.log(head);

const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
const installed = Object.entries(packages).filter(([place]) => place !== '');
const counts = new Map();
for (const [, { license = 'not said' }] of installed) counts.set(license, (counts.get(license) ?? 0) + 1);
const fits = (licence) =>
  licence
    .replaceAll(/[()]/g, '')
    .split(/ (?:AND|OR) /)
    .every((each) => TO_BUILD_WITH.test(each));

console.log(`Installed to build and to test, ${installed.length} packages:\n`);
for (const [licence, count] of [...counts].toSorted((a, b) => b[1] - a[1]))
  console.log(
    `  ${String(count).padStart(4)}  ${licence}${fits(licence) ? '' : '   not one that we build with'}`,
  );
process.exitCode = [...counts.keys()].every(fits) ? 0 : 1;
