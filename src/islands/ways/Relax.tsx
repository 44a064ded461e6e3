import { useStore } from '@nanostores/preact';
import type { Limit } from '../../calc/choosing.ts';
import { $units } from '../preferences.ts';
import { counted, listed } from '../shared/format.ts';
import { sayLimit } from './words.ts';

interface Props {
  readonly sets: readonly (readonly Limit[])[];
  readonly relax: (limits: readonly Limit[]) => void;
}

/** No way keeps to all limits: which would have to give way, each with a button that does it. */
export function Relax({ sets, relax }: Props) {
  const units = useStore($units);
  const size = sets[0]?.length ?? 0;
  if (size === 0)
    return (
      <p>
        Even without a limit there is none: the answers that stand rule each other out. Free more questions,
        or look at the questions to decide again.
      </p>
    );
  return (
    <>
      <p>
        {size === 1
          ? 'It is enough to give up any one of these:'
          : `No single one of them is to blame. At least ${size} have to give way together:`}
      </p>
      <ul class="list-plain ways-relax">
        {sets.map((set) => {
          const words = listed(set.map((limit) => sayLimit(limit, units)));
          return (
            <li class="rule-row" key={words}>
              <span>{words[0]?.toUpperCase() + words.slice(1)}</span>
              <button type="button" class="button small" onClick={() => relax(set)}>
                Take off and search again<span class="visually-hidden">: {words}</span>
              </button>
            </li>
          );
        })}
      </ul>
      <p class="small quiet">
        {counted(sets.length, 'smallest set')} found. A limit need not go altogether: a larger figure may do.
      </p>
    </>
  );
}
