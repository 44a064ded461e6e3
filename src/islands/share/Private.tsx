import type { Compared } from '../../calc/core/compared.ts';
import type { Path } from '../../calc/core/path.ts';
import type { Carried } from '../../link/encode.ts';
import { pathsIn, pricesHeld, progressHeld } from './holds.ts';

interface Kind {
  readonly key: keyof Carried;
  readonly name: string;
  readonly held: (path: Path) => string[];
  readonly none: string;
  readonly never: string;
}

const KINDS: readonly Kind[] = [
  {
    key: 'progress',
    name: 'My ticks, readings and hours',
    held: progressHeld,
    none: 'Nothing is ticked or measured yet.',
    never: 'your notes',
  },
  {
    key: 'prices',
    name: 'My prices, orders and shops’ terms',
    held: pricesHeld,
    none: 'No price, order or shop is typed yet.',
    never: 'names of shops, notes, names of the parts you make',
  },
];

interface Props {
  readonly path: Path;
  readonly others: readonly Compared[];
  readonly also: Carried;
  readonly onAlso: (also: Carried) => void;
}

/** What may go into the link besides the answers, each with all that would be in it and what never is. */
export function Private({ path, others, also, onAlso }: Props) {
  return (
    <fieldset class="send-private">
      <legend>Put in as well</legend>
      {KINDS.map(({ key, name, held, none, never }) => {
        const [mine = [], ...beside] = pathsIn(path, others).map(held);
        const more = beside.some((each) => each.length > 0) ? ['the same of the other columns'] : [];
        const all = [...mine, ...more];
        return (
          <div key={key}>
            <label class="choice">
              <input
                type="checkbox"
                checked={also[key] === true}
                disabled={all.length === 0}
                aria-describedby={`send-${key}`}
                onChange={(event) => onAlso({ ...also, [key]: event.currentTarget.checked })}
              />
              <span>{name}</span>
            </label>
            <div class="send-held" id={`send-${key}`}>
              {all.length === 0 ? (
                <p>{none}</p>
              ) : (
                <>
                  <p>In it:</p>
                  <ul>
                    {all.map((each) => (
                      <li key={each}>{each}</li>
                    ))}
                  </ul>
                </>
              )}
              <p>Never in it: {never}.</p>
            </div>
          </div>
        );
      })}
    </fieldset>
  );
}
