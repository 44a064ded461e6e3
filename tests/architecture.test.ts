import { globSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { faultsOf, importsOf, roomOf } from './architecture/imports.ts';

const src = join(import.meta.dirname, '..', 'src');
const files = globSync('**/*.{ts,tsx,astro}', { cwd: src }).filter((path) => !path.endsWith('.d.ts'));
const sources = files.map((path) => ({
  path: path.split(sep).join('/'),
  text: readFileSync(join(src, path), 'utf8'),
}));

test('imports run one way: core, formulas, subsystems, planning, evaluate, link, islands, pages', () => {
  expect(sources.length).toBeGreaterThan(0);
  expect(faultsOf(sources)).toEqual([]);
});

describe('the import check itself', () => {
  const faults = (path: string, text: string) => faultsOf([{ path, text }]);

  it.each([
    [
      'calc/core/band.ts',
      "import { pitch } from '../formulas/screw.ts';",
      'calc/core must not import calc/formulas',
    ],
    [
      'calc/formulas/belt.ts',
      "export * from '../subsystems/motors/design.ts';",
      'must not import calc/subsystems',
    ],
    ['calc/subsystems/motors/parts.ts', "import '../../guide.ts';", 'must not import calc/guide'],
    ['calc/cost/draw.ts', "import type { Report } from '../evaluate.ts';", 'must not import calc/evaluate'],
    ['calc/evaluate.ts', "import { decode } from '../link/decode.ts';", 'calc/evaluate must not import link'],
    [
      'calc/cost/price.ts',
      "import book from '../../content/prices/x.json' with { type: 'json' };",
      'import content',
    ],
    [
      'calc/paths/search.ts',
      "const later = () => import('../../islands/stores.ts');",
      'must not import islands',
    ],
    ['calc/core/money.ts', "import { readFileSync } from 'node:fs';", 'package node:fs'],
    ['calc/core/money.ts', "import { band } from './band';", 'lacks its file extension'],
    ['calc/schedule/calendar.ts', 'const today = new Date();', 'depend on a clock'],
    ['calc/cost/draw.ts', 'const u = Math.random();', 'depend on chance'],
    ['link/encode.ts', "import { csv } from '../export/csv.ts';", 'link must not import export'],
    [
      'islands/guide/Guide.tsx',
      "import { belt } from '../../calc/formulas/belt.ts';",
      'import calc/formulas',
    ],
    ['islands/guide/Guide.tsx', "import Page from '../../layouts/Page.astro';", 'import layouts'],
    ['components/Foot.astro', "---\nimport Home from '../pages/index.astro';\n---\n<p />", 'import pages'],
    ['components/Foot.astro', "<script>import '../pages/x.ts';</script>", 'import pages'],
    ['pages/index.astro', "---\nimport Page from '/src/layouts/Page.astro';\n---", 'relative import'],
    ['helpers/misc.ts', '', 'is in no room'],
  ])('objects in %s to %s', (path, text, complaint) => {
    expect(faults(path, text)).toEqual([expect.stringContaining(complaint)]);
  });

  it.each([
    ['calc/core/money.ts', "import { Decimal } from 'decimal.js';\nimport { band } from './band.ts';"],
    ['calc/subsystems/motors/design.ts', "import { torque } from '../../formulas/motor.ts';"],
    ['calc/choices.ts', "import { guide } from './guide.ts'; // not new Date()"],
    ['calc/schedule/calendar.ts', 'const start = new Date(Date.UTC(2026, 0, 1));'],
    [
      'islands/stores.ts',
      "import { evaluate } from '../calc/evaluate.ts';\nimport { atom } from 'nanostores';",
    ],
    ['content.config.ts', "import { guide } from './calc/guide.ts';\nimport { z } from 'astro/zod';"],
    ['pages/plan/index.astro', "---\nimport Plan from '../../islands/plan/Plan.tsx';\n---\n<Plan />"],
    ['calc/core/words.ts', 'const said = "import { x } from \'../../pages/x.ts\'";'],
  ])('accepts %s with %s', (path, text) => {
    expect(faults(path, text)).toEqual([]);
  });

  it('sees type imports, re-exports and dynamic imports', () => {
    const text = "import type { A } from './a.ts'; export { b } from './b.ts'; const c = import('./c.ts');";
    expect(importsOf({ path: 'link/x.ts', text })).toEqual(['./a.ts', './b.ts', './c.ts']);
  });

  it('knows the room of a file from its path', () => {
    expect(roomOf('calc/guide.ts')).toBe('calc/guide');
    expect(roomOf('calc/cost/packs.ts')).toBe('calc/cost');
    expect(roomOf('calc/guidebook.ts')).toBeUndefined();
  });
});
