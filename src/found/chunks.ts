/** What the bundler tells of a module, as far as it is asked here. */
interface ModuleInfo {
  readonly isEntry: boolean;
  readonly importers: readonly string[];
}

interface Bundle {
  getModuleInfo(id: string): ModuleInfo | null;
}

/** From how many places of each kind a module is reached. */
interface Roots {
  /** The search of the book, which sends for least. */
  readonly search: number;
  /** Working figures of a topic. */
  readonly figures: number;
  /** Pages that are drawn from the owner's path. */
  readonly pages: number;
  /** What is worked out beside a page; the sums of a report are sent for everywhere. */
  readonly beside: number;
  readonly sums: number;
  readonly all: number;
}

const KINDS: Readonly<Record<Exclude<keyof Roots, 'all'>, RegExp>> = {
  search: /\/islands\/find\/Find/,
  figures: /\/islands\/working\/[A-Z]/,
  pages: /\/islands\/(?!find|working)[a-z-]+\/[A-Z]/,
  beside: /\/islands\/(ask\/answers-[a-z]+|ways\/search-worker)\.ts$/,
  sums: /\/islands\/ask\/answers-report\.ts$/,
};

/** With fewer pages a chunk of many pages is not worth what the others send for in vain. */
const MANY = 4;

interface Chunk {
  readonly name: string;
  readonly holds: (roots: Roots, id: string) => boolean;
  /** Divided by what wants it: too much to send for where only a part is wanted. */
  readonly divided?: true;
}

/** What several places share, each before what may import it. What is worked out beside a page never meets what draws it. */
const CHUNKS: readonly Chunk[] = [
  { name: 'preload', holds: (_, id) => id.includes('preload-helper') },
  {
    name: 'views',
    holds: ({ figures, search }, id) => figures + search > 0 && id.includes('/node_modules/'),
  },
  { name: 'small', holds: ({ search }) => search > 0 },
  { name: 'core', holds: ({ figures, pages, beside }) => figures > 0 && pages >= MANY && beside > 0 },
  { name: 'formulas', holds: ({ figures, beside }) => figures > 0 && beside > 0 },
  { name: 'base', holds: ({ figures }) => figures > 0 },
  { name: 'guide', holds: ({ pages, beside }) => pages >= MANY && beside > 0 },
  { name: 'sheet', holds: ({ pages }) => pages >= MANY },
  { name: 'shared', holds: ({ pages, beside }) => pages > 0 && beside > 0, divided: true },
  { name: 'sums', holds: ({ sums }) => sums > 0 },
];

/**
 * How modules that several pages use are put together: by what sends for them, in few files. Whatever a module imports is
 * reached from at least where it is reached itself, so that no two chunks import each other.
 */
export function chunkGroups() {
  const known = new Map<string, Roots>();
  function rootsOf(id: string, bundle: Bundle): Roots {
    const found = known.get(id) ?? counted(id, bundle);
    known.set(id, found);
    return found;
  }
  const chunkOf = (id: string, bundle: Bundle): string | undefined => {
    const roots = rootsOf(id, bundle);
    return roots.all < 2 ? undefined : CHUNKS.find(({ holds }) => holds(roots, id))?.name;
  };
  return CHUNKS.map(({ name, divided = false }, at) => ({
    priority: CHUNKS.length - at,
    entriesAware: divided,
    name: (id: string, bundle: Bundle): string | null => (chunkOf(id, bundle) === name ? name : null),
  }));
}

/** Follows the imports back to where each begins. */
function counted(id: string, bundle: Bundle): Roots {
  const reached = new Set([id]);
  const roots = { search: 0, figures: 0, pages: 0, beside: 0, sums: 0, all: 0 };
  for (const each of reached) {
    const info = bundle.getModuleInfo(each);
    const kinds = (Object.keys(KINDS) as (keyof typeof KINDS)[]).filter((kind) => KINDS[kind].test(each));
    const isRoot = info?.isEntry || kinds.includes('beside');
    if (isRoot) for (const kind of [...kinds, 'all'] as const) roots[kind] += 1;
    for (const importer of info?.importers ?? []) reached.add(importer);
  }
  return roots;
}
