import type { Path } from '../../calc/core/path.ts';
import type { Values, WorkingFigure } from '../../calc/working-figures/figure.ts';
import type { Own } from '../../export/own.ts';
import { decodePath } from '../../link/decode.ts';
import { isPath } from '../../link/is-path.ts';
import { firstOf } from '../../link/pairs.ts';
import { lastLine } from '../address.ts';
import { ask } from '../ask/ask.ts';
import { checkedOwn } from '../kept-lines.ts';
import { recall } from '../memory.ts';
import { keptAs, lastOpen } from '../shelf/open-path.ts';

/** What only its owner knows of a path that is kept here; nothing where that cannot be read. */
async function ownPart(id: string): Promise<Own> {
  const text = recall(`own/${id}`);
  if (text === undefined) return {};
  const { own } = await checkedOwn(text).catch(() => ({ own: {} }));
  return own;
}

/** The path of the address, else the one last open on this device. */
async function pathInHand(): Promise<Path | undefined> {
  const here = firstOf(window.location.hash.replace(/^#/, ''));
  const kept = isPath(here) ? keptAs(here, lastLine()) : lastOpen(lastLine());
  const fragment = isPath(here) ? here : kept?.record.fragment;
  if (fragment === undefined) return undefined;
  return { ...decodePath(fragment).path, ...(kept ? await ownPart(kept.id) : {}) };
}

/** What the design and the words of the reader's path have for the inputs of a figure, SI; undefined without a path. */
export async function ownValues({ inputs, ownWith, ownOf }: WorkingFigure): Promise<Values | undefined> {
  const path = await pathInHand();
  if (!path) return undefined;
  const said = ownOf?.(path) ?? {};
  const wanted = [...inputs.flatMap(({ own }) => own ?? []), ...(ownWith ? [ownWith] : [])];
  const design = wanted.length > 0 ? await ask('design', path, wanted) : {};
  if (ownWith && !design[ownWith]) return undefined;
  return Object.fromEntries(
    inputs.flatMap(({ id, own, written, low, high }) => {
      const value = said[id] ?? (own ? design[own]?.value : undefined);
      const isWithin = value !== undefined && value * written.per >= low && value * written.per <= high;
      return isWithin ? [[id, value] as const] : [];
    }),
  );
}
