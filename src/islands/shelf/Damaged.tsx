import { useStore } from '@nanostores/preact';
import { saveFile } from '../save-file.ts';
import { counted } from '../shared/format.ts';
import { $damaged, remove } from './kept-paths.ts';

/** Texts on the shelf that are no path any more: shown, offered as files, and gone only when the owner says so. */
export function Damaged() {
  const damaged = useStore($damaged);
  if (damaged.length === 0) return null;
  return (
    <section class="rule-section" aria-labelledby="damaged-title">
      <h2 id="damaged-title">Could not be read</h2>
      <p>
        {damaged.length === 1 ? 'This text stands' : 'These texts stand'} among your paths and is not what
        this site writes; something has damaged it. Save it: somebody who reads it may still find your
        answers.
      </p>
      <ul class="list-plain shelf-list">
        {damaged.map(({ id, text }) => (
          <li class="shelf-path" key={id}>
            <h3>
              “{id}”, {counted(text.length, 'letter')}
            </h3>
            <p class="shelf-text">
              {text.slice(0, 120)}
              {text.length > 120 ? ' …' : ''}
            </p>
            <p class="shelf-actions">
              <button
                type="button"
                class="button small"
                onClick={() => saveFile(`damaged-${id.slice(0, 40)}.txt`, text)}
              >
                Save the text<span class="visually-hidden"> of “{id}”</span>
              </button>
              <button type="button" class="button small" onClick={() => remove(id)}>
                Delete<span class="visually-hidden"> “{id}”</span>
              </button>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
