// Runs `npm ci` only when the lock file is newer than the last install.
import { spawnSync } from 'node:child_process';
import { statSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
// npm writes both files in one go, in no promised order.
const tolerance = 2000;

/** Time of last change in ms since 1970, or 0 when the file is not there. */
function changedAt(path) {
  return statSync(join(root, path), { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

const installed = changedAt('node_modules/.package-lock.json');
if (changedAt('package-lock.json') > installed + tolerance) {
  console.log('Installing packages (once, until package-lock.json changes) …');
  const options = { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' };
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], options);
  process.exitCode = status ?? 1;
}
