import type { Values, WorkingFigure } from '../../calc/working-figures/figure.ts';
import { decodePath } from '../../link/decode.ts';
import { firstOf } from '../../link/pairs.ts';
import { lastLine } from '../address.ts';
import { ask } from '../ask/ask.ts';
import { lastOpen } from '../shelf/open-path.ts';

const isPath = (fragment: string): boolean => /^\d+\?/.test(fragment);

/** The path of the address, else the one last open on this device. */
function fragmentInHand(): string | undefined {
  const here = firstOf(window.location.hash.replace(/^#/, ''));
  return isPath(here) ? here : lastOpen(lastLine())?.record.fragment;
}

/** What the design of the reader's path has for the inputs of a figure, SI; undefined without a path. */
export async function ownValues({ inputs, ownWith }: WorkingFigure): Promise<Values | undefined> {
  const fragment = fragmentInHand();
  if (fragment === undefined) return undefined;
  const { path } = decodePath(fragment);
  const wanted = inputs.flatMap(({ own }) => (own ? [own] : []));
  const design = await ask('design', path, ownWith ? [...wanted, ownWith] : wanted);
  if (ownWith && !design[ownWith]) return undefined;
  return Object.fromEntries(
    inputs.flatMap(({ id, own, written, low, high }) => {
      const value = own ? design[own]?.value : undefined;
      const isWithin = value !== undefined && value * written.per >= low && value * written.per <= high;
      return isWithin ? [[id, value] as const] : [];
    }),
  );
}
