import { readFileSync } from 'node:fs';
import { evaluate, type Spread } from '../../src/calc/evaluate.ts';
import { editionByName } from '../../src/content/edition.ts';
import { middleHalf } from '../../src/islands/shared/format.ts';
import { decodeComparison } from '../../src/link/decode.ts';

/** What each kept link opened to when it was added; append-only like the links: `npm run record-links`. */
export const FIGURES = new URL('./v1-figures.txt', import.meta.url);

const five = ({ p10, p50, p90, twenty }: Spread): string => {
  const { from, to } = middleHalf(twenty);
  return [p10, from, p50, to, p90].map((value) => value.toFixed(4)).join(' ');
};

/**
 * The figures of every path in a link, one line: dollars, hours and weeks out of use; of each the tenth of a hundred, the
 * middle half, the typical one within it, and the ninetieth.
 */
export function figuresOf(fragment: string): string {
  const { first, others } = decodeComparison(fragment);
  const paths = [first, ...others.flatMap((each) => (each.kind === 'path' ? [each.path] : []))];
  return paths
    .map((path) => {
      const { money, hours, weeksOut } = evaluate(path, editionByName(path.edition)!);
      return `money ${five(money)}, hours ${five(hours)}, out of use ${five(weeksOut)}`;
    })
    .join('; ');
}

/** What was recorded, by what the link is. */
export function recorded(): ReadonlyMap<string, string> {
  const lines = readFileSync(FIGURES, 'utf8').split('\n');
  return new Map(
    lines.flatMap((line, at) =>
      line.startsWith('# ') ? [[line.slice(2), lines[at + 1] ?? ''] as const] : [],
    ),
  );
}

/** The middle half that was recorded of a link's first path, for a screen to show again. */
export function halvesOf(what: string): Readonly<Record<'money' | 'hours' | 'out of use', [number, number]>> {
  const [first = ''] = (recorded().get(what) ?? '').split('; ');
  const said = first.split(', ').map((each) => /^(.*?) ([\d.]+(?: [\d.]+)*)$/.exec(each)!);
  return Object.fromEntries(
    said.map(([, name, figures]) => [
      name,
      figures!
        .split(' ')
        .map(Number)
        .filter((_, at) => at === 1 || at === 3),
    ]),
  ) as ReturnType<typeof halvesOf>;
}
