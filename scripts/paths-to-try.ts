// Paths that the builds are held against plain draws on: the five reference paths and twenty drawn at random.
import type { Answer, Path } from '../src/calc/core/path.ts';
import { decisions } from '../src/calc/guide.ts';
import { referencePaths } from '../src/content/reference-paths.ts';

const sizes = ['small', 'medium', 'large'] as const;

/** A repeatable pick that hangs on the question's name only, so that a new question changes no other answer. */
function pickFor(seed: number, name: string, n: number): number {
  let hash = 2166136261 ^ seed;
  for (const letter of name) hash = Math.imul(hash ^ letter.charCodeAt(0), 16777619);
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  return ((hash ^ (hash >>> 13)) >>> 0) % n;
}

/** Every question answered at random; answers that clash fall back to what the rules allow. */
function randomPath(edition: string, seed: number): Path {
  const answers = decisions.map(({ id, options }): [string, Answer] => [
    id,
    [options[pickFor(seed, id, options.length)]!.id],
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
