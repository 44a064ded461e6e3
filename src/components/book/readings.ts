import { usesIn } from '../../content/gloss.ts';

/** A page of the book with its text in Markdown. */
export interface WrittenPage {
  readonly place: string;
  readonly title: string;
  readonly body: string;
}

/** For each word of the trade the pages that link to it: first the one that uses it most, then in their own order. */
export function readingsOf(pages: readonly WrittenPage[]): ReadonlyMap<string, readonly WrittenPage[]> {
  const found = new Map<string, { page: WrittenPage; uses: number }[]>();
  for (const page of pages)
    for (const [word, uses] of usesIn(page.body))
      found.set(word, [...(found.get(word) ?? []), { page, uses }]);
  const ranked = [...found].map(([word, list]) => {
    const sorted = list.toSorted((a, b) => b.uses - a.uses);
    return [word, sorted.map(({ page }) => page)] as const;
  });
  return new Map(ranked);
}
