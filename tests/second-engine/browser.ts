import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import type { Found } from './find-firefox.ts';

/** A started browser: where it listens, and how to be rid of it. */
export interface Started {
  readonly address: string;
  readonly end: () => void;
}

/** It asks nobody for anything by itself. */
const SETTINGS = [
  'app.update.enabled',
  'datareporting.policy.dataSubmissionEnabled',
  'network.captive-portal-service.enabled',
];

/** The first match in what a program says; rejects where it ends or says nothing of the kind in time. */
export function said(program: ChildProcess, pattern: RegExp, seconds: number): Promise<string> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(
      () => reject(new Error(`it said nothing in ${seconds} seconds`)),
      seconds * 1000,
    );
    program.once('exit', (code) => reject(new Error(`it ended at once (${code})`)));
    program.once('error', reject);
    for (const input of [program.stdout, program.stderr])
      createInterface({ input: input! }).on('line', (line) => {
        const [, found] = pattern.exec(line) ?? [];
        if (found) resolve(found);
      });
    program.once('exit', () => clearTimeout(timer));
    timer.unref();
  });
}

/** Starts a browser without a window, with a profile that is thrown away. Rejects where it does not start. */
export async function start({ path, env }: Found): Promise<Started> {
  const profile = mkdtempSync(join(tmpdir(), 'second-engine-'));
  writeFileSync(join(profile, 'user.js'), SETTINGS.map((name) => `user_pref("${name}", false);`).join('\n'));
  const rest = ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port=0'];
  const program = spawn(path, rest, { env: { ...process.env, ...env, HOME: profile }, stdio: 'pipe' });
  const end = () => {
    program.kill('SIGKILL');
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    return { address: await said(program, /WebDriver BiDi listening on (ws:\/\/\S+)/, 60), end };
  } catch (fault) {
    end();
    throw fault;
  }
}
