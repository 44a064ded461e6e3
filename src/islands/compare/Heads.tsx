import type { ComparedColumn } from '../../calc/comparing.ts';
import { encodePath } from '../../link/encode.ts';
import { withOwn } from '../own-part.ts';
import { to } from '../shared/places.ts';
import { asCell, asColumnHead, asRow } from '../shared/table-roles.ts';
import { exchange, makeOpen, takeAway } from './columns.ts';
import type { Called } from './names.ts';

/** A column as it stands in the table: where it stands among all, what it is called, what it says. */
export interface Shown {
  readonly place: number;
  readonly called: Called;
  readonly column: ComparedColumn;
}

interface ActionsProps extends Shown {
  /** The plan of an alternative that is worked out as one can be opened, and does not stand beside as a path. */
  readonly isPath: boolean;
}

function Action({ words, about, act }: { words: string; about: string; act: () => void }) {
  return (
    <button type="button" class="link-button" onClick={act}>
      {words}
      <span class="visually-hidden">: {about}</span>
    </button>
  );
}

function Actions({ place, called, column, isPath }: ActionsProps) {
  const about = `${called.letter}, ${called.name}`;
  const { path } = column;
  return (
    <div class="compare-actions no-print">
      {path ? (
        <a href={`${to('plan/')}#${encodePath(withOwn(path, {}))}`} data-keep-path={place === 0 || undefined}>
          {place === 0 ? 'The whole plan' : 'Its plan'}
          <span class="visually-hidden">: {about}</span>
        </a>
      ) : null}
      {place > 0 && isPath ? (
        <Action words="Make this the open path" about={about} act={() => makeOpen(place)} />
      ) : null}
      {place > 1 ? (
        <Action words="Move to the left" about={about} act={() => exchange(place, place - 1)} />
      ) : null}
      {place > 0 ? <Action words="Take away" about={about} act={() => takeAway(place)} /> : null}
    </div>
  );
}

function About({ place, called, column, editionsDiffer }: Shown & { editionsDiffer: boolean }) {
  const isPath = column.alternative === undefined;
  return (
    <td {...asCell}>
      <p>{called.means}</p>
      {place === 0 ? <p>The open path: what you change elsewhere changes here.</p> : null}
      {column.alternative?.first ? <p>Looked at first, because {column.alternative.first}.</p> : null}
      {editionsDiffer ? <p>Prices of edition {column.edition}.</p> : null}
      <Actions place={place} called={called} column={column} isPath={isPath} />
    </td>
  );
}

interface Props {
  readonly shown: readonly Shown[];
  readonly editionsDiffer: boolean;
}

/** Letters and names, pinned while the rows scroll; what each is, and what to do with it, scrolls away. */
export function Heads({ shown, editionsDiffer }: Props) {
  return (
    <>
      <thead class="compare-names">
        <tr {...asRow}>
          <td {...asCell} class="beside-corner">
            Same rows, same scales, the same 20 ways.
          </td>
          {shown.map(({ called }) => (
            <th key={called.id} {...asColumnHead}>
              <span class="compare-name">
                <span class="compare-letter">{called.letter}</span>
                <span>{called.name}</span>
              </span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody class="compare-about">
        <tr {...asRow}>
          <th scope="row">
            <span class="visually-hidden">What it is</span>
          </th>
          {shown.map((each) => (
            <About key={each.called.id} {...each} editionsDiffer={editionsDiffer} />
          ))}
        </tr>
      </tbody>
    </>
  );
}
