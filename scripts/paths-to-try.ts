// Paths that the builds are held against plain draws on: the five reference paths and twenty drawn at random.
import type { Answer, Path } from '../src/calc/core/path.ts';
import { decisions } from '../src/calc/guide.ts';
import { referencePaths } from '../src/content/reference-paths.ts';

const sizes = ['small', 'medium', 'large'] as const;

/** A repeatable stream of whole numbers below `n`: multiplicative congruence of Park and Miller. */
function picker(seed: number): (n: number) => number {
  let state = seed;
  return (n) => {
    state = (state * 48271) % 2147483647;
    return state % n;
  };
}

/** Every question answered at random; answers that clash fall back to what the rules allow. */
function randomPath(edition: string, seed: number): Path {
  const pick = picker(seed);
  const answers = decisions.map(({ id, options }): [string, Answer] => [
    id,
    [options[pick(options.length)]!.id],
  ]);
  return { edition, size: sizes[seed % 3]!, facts: {}, answers: Object.fromEntries(answers), owned: [] };
}

export function pathsToTry(edition: string): { name: string; path: Path }[] {
  const drawn = Array.from({ length: 20 }, (_, at) => ({
    name: `random ${at + 1}`,
    path: randomPath(edition, 1000 + 7 * at),
  }));
  return [...referencePaths.map(({ id, path }) => ({ name: id, path })), ...drawn];
}
