import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chunkGroups } from '../../src/found/chunks.ts';

/** Modules by name, each with what it imports. */
type Imports = Readonly<Record<string, readonly string[]>>;

const PAGES = ['plan/Plan', 'buy/BuyList', 'bench/Bench', 'guide/Guide', 'ways/Ways'].map(
  (name) => `/src/islands/${name}.tsx`,
);
const BESIDE = ['report', 'time'].map((name) => `/src/islands/ask/answers-${name}.ts`);
const FIGURES = ['Belt', 'Play'].map((name) => `/src/islands/working/${name}.tsx`);
const SEARCH = '/src/islands/find/Find.tsx';
const ROOTS = [...PAGES, ...BESIDE, ...FIGURES, SEARCH];

/** The name of the chunk of a module, or undefined where it is left with its page. */
function chunksOf(imports: Imports): (id: string) => string | undefined {
  const groups = chunkGroups();
  const getModuleInfo = (id: string) => ({
    isEntry: ROOTS.includes(id) && !BESIDE.includes(id),
    importers: Object.keys(imports).filter((importer) => imports[importer]?.includes(id)),
  });
  return (id) => groups.map(({ name }) => name(id, { getModuleInfo })).find((name) => name !== null);
}

const all = (roots: readonly string[], id: string): Imports =>
  Object.fromEntries(roots.map((root) => [root, [id]]));

describe('how modules are put together', () => {
  test('what one page uses alone stays with it', () => {
    expect(
      chunksOf({ [PAGES[0]!]: ['/src/islands/plan/own.ts'] })('/src/islands/plan/own.ts'),
    ).toBeUndefined();
  });

  test('what most pages draw, what is worked out beside them, and what both use never share a chunk', () => {
    const draws = chunksOf(all(PAGES, '/src/islands/shared/Rod.tsx'))('/src/islands/shared/Rod.tsx');
    const works = chunksOf(all(BESIDE, '/src/calc/evaluate.ts'))('/src/calc/evaluate.ts');
    const both = chunksOf(all([...PAGES, ...BESIDE], '/src/calc/guide.ts'))('/src/calc/guide.ts');
    expect([draws, works, both]).toEqual(['sheet', 'sums', 'guide']);
  });

  test('the search of the book sends for nothing that only figures or pages use', () => {
    const chunkOf = chunksOf({
      [SEARCH]: ['/a.ts'],
      [FIGURES[0]!]: ['/a.ts', '/b.ts'],
      [BESIDE[0]!]: ['/b.ts'],
    });
    expect([chunkOf('/a.ts'), chunkOf('/b.ts')]).toEqual(['small', 'formulas']);
  });

  test('no two chunks import each other, whatever imports what', () => {
    const order = [
      'preload',
      'views',
      'small',
      'core',
      'formulas',
      'base',
      'guide',
      'sheet',
      'shared',
      'sums',
    ];
    const modules = Array.from({ length: 8 }, (_, at) => `/src/calc/m${at}.ts`);
    const graph = fc.record({
      roots: fc.array(fc.tuple(fc.constantFrom(...ROOTS), fc.constantFrom(...modules)), { maxLength: 20 }),
      edges: fc.array(fc.tuple(fc.nat(7), fc.nat(7)), { maxLength: 16 }),
    });
    fc.assert(
      fc.property(graph, ({ roots, edges }) => {
        // Only onwards, so that modules themselves do not import each other.
        const onwards = edges.filter(([a, b]) => a < b).map(([a, b]) => [modules[a]!, modules[b]!] as const);
        const pairs = Map.groupBy([...roots, ...onwards], ([from]) => from);
        const imports = Object.fromEntries([...pairs].map(([from, to]) => [from, to.map(([, id]) => id)]));
        const chunkOf = chunksOf(imports);
        for (const [a, b] of onwards) {
          const [from, to] = [chunkOf(a), chunkOf(b)];
          if (from === undefined) continue;
          expect(order).toContain(to);
          expect(order.indexOf(to!)).toBeLessThanOrEqual(order.indexOf(from));
        }
      }),
    );
  });
});
