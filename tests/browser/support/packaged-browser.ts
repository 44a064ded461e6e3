import { existsSync } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '..', '..', '..');
const PACKAGE = join(ROOT, 'node_modules', '@sparticuz', 'chromium', 'package.json');

const fontsConf = (folder: string) => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${join(folder, 'fonts')}</dir>
  <cachedir>${join(folder, 'font-cache')}</cachedir>
</fontconfig>
`;

/** Unpacks beside the final folder and renames, so that an interrupted run leaves no half browser behind. */
async function unpack(folder: string): Promise<void> {
  const part = `${folder}.part-${process.pid}`;
  const before = { TMPDIR: process.env.TMPDIR, LD_LIBRARY_PATH: process.env.LD_LIBRARY_PATH };
  await mkdir(part, { recursive: true });
  // Both are read while the package is being imported: this runtime name makes it bring its own libraries.
  process.env.AWS_LAMBDA_JS_RUNTIME = 'nodejs24.x';
  process.env.TMPDIR = part;
  const { default: packaged } = await import('@sparticuz/chromium');
  await packaged.executablePath();
  for (const [name, value] of Object.entries(before)) {
    if (value === undefined) delete process.env[name];
    else process.env[name] = value;
  }
  await writeFile(join(part, 'fonts.conf'), fontsConf(folder));
  // Another run may have been quicker: its folder is as good.
  await rename(part, folder).catch(() => rm(part, { recursive: true }));
}

/** The browser that comes as a package, unpacked once per version under node_modules/.cache. */
export async function packagedBrowser() {
  const { version } = JSON.parse(await readFile(PACKAGE, 'utf8'));
  const folder = join(ROOT, 'node_modules', '.cache', `chromium-${version}`);
  if (!existsSync(folder)) await unpack(folder);
  const env = {
    ...process.env,
    TMPDIR: folder,
    FONTCONFIG_FILE: join(folder, 'fonts.conf'),
    LD_LIBRARY_PATH: join(folder, 'al2023', 'lib'),
  } as Record<string, string>;
  return { executablePath: join(folder, 'chromium'), env };
}
