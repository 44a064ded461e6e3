import { execFileSync } from 'node:child_process';
import { existsSync, globSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const CACHE = join(import.meta.dirname, '..', '..', 'node_modules', '.cache', 'firefox');
const NAMES = ['firefox-esr', 'firefox'];
const PLACES = [
  '/Applications/Firefox.app/Contents/MacOS/firefox',
  'C:\\Program Files\\Mozilla Firefox\\firefox.exe',
];

/** A Firefox, and what has to stand in the environment for it to start. */
export interface Found {
  readonly path: string;
  readonly env: Readonly<Record<string, string>>;
}

function installed(): Found | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter);
  const all = [
    process.env.FIREFOX_PATH ?? '',
    ...folders.flatMap((each) => NAMES.map((name) => join(each, name))),
  ];
  const path = [...all, ...PLACES].find((each) => each !== '' && existsSync(each));
  return path === undefined ? undefined : { path, env: {} };
}

function unpacked(): Found | undefined {
  const root = join(CACHE, 'root');
  const [path] = NAMES.flatMap((name) => globSync(`usr/lib/${name}/${name}`, { cwd: root }));
  const libraries = globSync('usr/lib/*-linux-gnu', { cwd: root }).map((each) => join(root, each));
  return path ? { path: join(root, path), env: { LD_LIBRARY_PATH: libraries.join(':') } } : undefined;
}

/** Debian's own package with what it needs, unpacked into a folder of ours: nothing of the machine is changed. */
function fetched(): Found | undefined {
  const lists = join(CACHE, 'lists');
  const store = join(CACHE, 'store');
  for (const folder of [join(lists, 'partial'), join(store, 'archives', 'partial')])
    mkdirSync(folder, { recursive: true });
  const own = [
    '-qq',
    '-o',
    `Dir::State::Lists=${lists}`,
    '-o',
    `Dir::Cache=${store}`,
    '-o',
    'APT::Sandbox::User=root',
  ];
  const apt = (...rest: string[]) =>
    execFileSync('apt-get', [...own, ...rest], {
      cwd: CACHE,
      encoding: 'utf8',
      stdio: 'pipe',
      timeout: 60_000,
    });
  apt('update');
  const plan = apt('install', '--simulate', '--no-install-recommends', 'firefox-esr');
  const names = [...plan.matchAll(/^Inst (\S+)/gm)].map(([, name]) => name!);
  apt('download', ...names);
  // Under its name only when it is whole: a run that was stopped leaves no half browser behind.
  const part = join(CACHE, 'part');
  rmSync(part, { recursive: true, force: true });
  for (const file of globSync('*.deb', { cwd: CACHE })) {
    execFileSync('dpkg-deb', ['--extract', join(CACHE, file), part], { stdio: 'pipe' });
    rmSync(join(CACHE, file));
  }
  renameSync(part, join(CACHE, 'root'));
  return unpacked();
}

/**
 * FIREFOX_PATH, an installed one, one that was fetched before; with `fetch` Debian's package. In words why there is none,
 * where there is none.
 */
export function findFirefox(fetch: boolean): Found | string {
  const found = installed() ?? unpacked();
  if (found) return found;
  if (!fetch) return 'no Firefox is installed here, and none was to be fetched';
  try {
    return fetched() ?? 'the package that was fetched holds no Firefox';
  } catch (fault) {
    const [said = ''] = String(fault instanceof Error ? fault.message : fault).split('\n');
    return `Firefox could not be fetched from Debian (${said.slice(0, 120)})`;
  }
}
