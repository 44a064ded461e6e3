import { useLayoutEffect, useState } from 'preact/hooks';
import type { Receipt as Told } from '../../calc/choosing.ts';
import type { Path } from '../../calc/core/path.ts';
import { ask } from '../ask/ask.ts';
import type { Receipt } from '../receipts.ts';

export type { Receipt as Told } from '../../calc/choosing.ts';

/** Asked once for each change; a path is a new object with every change. */
const asked = new WeakMap<Path, Promise<Told>>();

function tell({ pathBefore, pathNow }: Receipt): Promise<Told> {
  const told = asked.get(pathNow) ?? ask('receipt', pathNow, pathBefore);
  asked.set(pathNow, told);
  return told;
}

interface Held {
  readonly path: Path;
  readonly told: Told | 'lost';
}

/**
 * What a change moved, worked out beside the page; undefined until it is known. It is asked for before the page is
 * painted, and so ahead of the strips: the owner looks for the receipt first.
 */
export function useTold(receipt: Receipt | undefined): Told | 'lost' | undefined {
  const [held, setHeld] = useState<Held>();
  const path = receipt?.pathNow;
  useLayoutEffect(() => {
    if (!receipt) return;
    let isWanted = true;
    const hold = (told: Held['told']) => {
      if (isWanted) setHeld({ path: receipt.pathNow, told });
    };
    tell(receipt).then(hold, () => hold('lost'));
    return () => {
      isWanted = false;
    };
  }, [path]);
  return held?.path === path ? held?.told : undefined;
}
