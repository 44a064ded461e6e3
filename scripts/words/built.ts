import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { HTMLElement, parse } from 'node-html-parser';
import type { Text } from './texts.ts';

/** What is not prose: equations, addresses, what only a program reads; and sources, which spell names of publishers. */
const NOT_READ = 'script, style, math, code, kbd, .sources, .working-law, .topic-list.quiet';
const NOT_READ_PAGES = /^(trust\/sources|formulas)\//;

const textNodes = (node: HTMLElement): string[] =>
  node.childNodes.flatMap((each) => (each instanceof HTMLElement ? textNodes(each) : [each.text]));

/** The text of every page of a built site, piece by piece; the page of sources and the formulas are left out. */
export const builtPages = (dist: string): Text[] =>
  globSync('**/*.html', { cwd: dist })
    .filter((file) => !NOT_READ_PAGES.test(file))
    .toSorted()
    .map((file) => {
      const body = parse(readFileSync(join(dist, file), 'utf8'), {
        blockTextElements: { script: true, style: true },
      }).querySelector('body');
      for (const node of body?.querySelectorAll(NOT_READ) ?? []) node.remove();
      return { where: file.replace(/index\.html$/, ''), blocks: body ? textNodes(body) : [] };
    });
