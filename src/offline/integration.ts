import { globSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration, ViteUserConfig } from 'astro';
import { listOf } from './list.ts';

type VitePlugin = Extract<NonNullable<ViteUserConfig['plugins']>[number], { name: string }>;

const WORKER = 'at-hand.js';
/** At the root of the site: a worker reaches no further than its folder, and pages know the other by its name. */
const AT_ROOT = { [WORKER]: './worker.ts', 'at-hand-page.js': '../islands/at-hand/at-hand.ts' };

/** Builds both sides beside the chunks of the pages. */
const workerBeside = (): VitePlugin => ({
  name: 'kept-at-hand',
  apply: 'build',
  applyToEnvironment: ({ name }) => name === 'client',
  buildStart() {
    for (const [fileName, source] of Object.entries(AT_ROOT)) {
      const id = fileURLToPath(new URL(source, import.meta.url));
      this.emitFile({ type: 'chunk', id, fileName });
    }
  },
});

/** Every file below a folder, its path with forward slashes. */
function filesOf(dist: string): string[] {
  const all = globSync(['**/*', '**/.*'], { cwd: dist });
  return all
    .filter((file) => statSync(join(dist, file)).isFile())
    .map((file) => file.split(sep).join('/'))
    .sort();
}

/** The worker as it was built, its list in front. Browsers start it as a plain script, which can import nothing. */
export function withList(worker: string, list: string): string {
  if (/^\s*(?:import|export)\b|[;}]\s*(?:import|export)\s*[{"'`*]/m.test(worker))
    throw new Error(`${WORKER} shares a piece with a page: browsers start it only as one file`);
  return `const KEPT = ${list};\n${worker}`;
}

/** When every file of the site is written: the list of what a device keeps of it, and how much that is. */
export function offline(): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({ vite: { plugins: [workerBeside()] } });
      },
      'astro:build:done': ({ dir, logger }) => {
        const dist = fileURLToPath(dir);
        const built = filesOf(dist).map((file) => ({ file, content: readFileSync(join(dist, file)) }));
        const list = listOf(built);
        const worker = join(dist, WORKER);
        writeFileSync(worker, withList(readFileSync(worker, 'utf8'), JSON.stringify(list)));
        const files = Object.keys(list.files).length;
        writeFileSync(join(dist, 'at-hand.json'), JSON.stringify({ files, bytes: list.bytes }));
        logger.info(`kept on a device: ${files} files, ${(list.bytes / 1e6).toFixed(2)} MB`);
      },
    },
  };
}
