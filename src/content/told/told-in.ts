import type { sectionFor } from '../book-topic.ts';
import { heads } from './heads.ts';

/** For each thing of a kind, which topics tell of it: their places in the list of topics. */
export type ToldIn = Readonly<Record<string, readonly number[]>>;

export function toldIn(kind: keyof typeof sectionFor): ToldIn {
  const found: Record<string, number[]> = {};
  for (const [at, { head }] of heads.entries())
    for (const id of head[kind]) {
      found[id] ??= [];
      found[id].push(at);
    }
  return found;
}
