import { globSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration, ViteUserConfig } from 'astro';
import { type BuiltPage, readBuilt } from './built-page.ts';
import { gathering, licencesText, notAllowed, readPackage } from './licences.ts';
import { foreignInStyles, policyFaults, policyFaultsSaid, policyFirst, policyOf } from './policy.ts';

type VitePlugin = NonNullable<ViteUserConfig['plugins']>[number];

const fileOf = (page: string): string => (page === '404/' ? '404.html' : `${page}index.html`);

/** A page as it was built, its policy put in front. */
function guarded(page: string, dist: string): BuiltPage {
  const file = join(dist, fileOf(page));
  const html = policyFirst(readFileSync(file, 'utf8'));
  writeFileSync(file, html);
  return readBuilt(page, html);
}

/** Ends the build where a link of a page leads nowhere, or to a word that does not lead back. */
async function refuseDeadLinks(pages: readonly BuiltPage[], dist: string, base: string): Promise<void> {
  const { deadLinks, deadLinksSaid } = await import('./links.ts');
  const hasFile = (path: string) => !!statSync(join(dist, path), { throwIfNoEntry: false })?.isFile();
  const { oneWayWords } = await import('./word-links.ts');
  const dead = [...deadLinks(pages, { base, hasFile }), ...oneWayWords(pages, base)];
  if (dead.length > 0) throw new Error(deadLinksSaid(dead));
}

/** Ends the build where a page holds or fetches what its policy refuses, or a style sheet asks another place on the web. */
function refuseForeign(pages: readonly BuiltPage[], dist: string): void {
  const styles = globSync('**/*.css', { cwd: dist }).flatMap((page) =>
    foreignInStyles(readFileSync(join(dist, page), 'utf8')).map((url) => ({ page, says: `leads to ${url}` })),
  );
  const faults = [...policyFaults(pages), ...styles];
  if (faults.length > 0) throw new Error(policyFaultsSaid(faults));
}

/** Writes licences.txt, and ends the build where something goes to the browser that asks for more than to be named. */
function writeLicences(names: ReadonlySet<string>, dist: string, root: string): void {
  const shipped = [...names].map((name) => readPackage(name, root));
  const odd = notAllowed(shipped).map(({ name, licence }) => `${name} (${licence})`);
  if (odd.length > 0) throw new Error(`Not to be sent under their licence: ${odd.join(', ')}`);
  writeFileSync(
    join(dist, 'licences.txt'),
    licencesText(readFileSync(join(root, 'LICENSE'), 'utf8'), shipped),
  );
}

/** When the pages are built: a look at their links, a picture for each, robots.txt, and a sitemap where the site knows its address. */
export function found(): AstroIntegration {
  let root = '';
  let base = '/';
  let home: string | undefined;
  // The builder's own small scripts stand in the pages themselves.
  const names = new Set(['astro']);
  const shipped = () => gathering(names) as unknown as VitePlugin;
  return {
    name: 'found',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({ vite: { plugins: [shipped()], worker: { plugins: () => [shipped()] } } });
      },
      'astro:config:done': ({ config }) => {
        root = fileURLToPath(config.root);
        base = config.base.replace(/\/?$/, '/');
        home = config.site && new URL(base, config.site).href;
      },
      'astro:build:done': async ({ dir, pages, logger }) => {
        const { writeHeaders, writeLists, writePictures } = await import('./write.ts');
        const dist = fileURLToPath(dir);
        const built = pages
          .map(({ pathname }) => guarded(pathname, dist))
          .sort((a, b) => (a.page < b.page ? -1 : 1));
        writeLicences(names, dist, root);
        await refuseDeadLinks(built, dist, base);
        refuseForeign(built, dist);
        const start = performance.now();
        const bytes = await writePictures(built, dist, root);
        writeLists(built, dist, home);
        writeHeaders(policyOf(built[0]!.html)!, base, dist, root);
        const seconds = ((performance.now() - start) / 1000).toFixed(1);
        logger.info(`pictures: ${(bytes / 1e6).toFixed(2)} MB in ${seconds} s`);
      },
    },
  };
}
