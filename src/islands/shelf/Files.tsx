import { useState } from 'preact/hooks';
import { today } from '../buy/day.ts';
import { fileTypes, saveFile } from '../save-file.ts';
import { counted } from '../shared/format.ts';
import { $open, $path } from '../stores.ts';
import type { BroughtIn } from './file-work.ts';
import { sayBroughtIn } from './words.ts';

const work = () => import('./file-work.ts');

async function saveAll(isKept: boolean): Promise<string> {
  const { wholeShelf } = await work();
  const open = isKept ? undefined : { id: $open.get().id, path: $path.get() };
  const { text, count } = await wholeShelf(today(), open);
  saveFile(`paths-${today()}.json`, text, fileTypes.json);
  return `Saved ${counted(count, 'path')}, with prices, ticks and notes. This file is the safe copy.`;
}

const unreadable = (name: string): BroughtIn => ({
  ...{ added: [], already: [], without: [] },
  notes: [`${name} could not be read. Nothing was changed.`],
});

interface Props {
  /** False while the open path is not on the shelf and holds something. */
  readonly isKept: boolean;
  /** True while there is nothing to be saved. */
  readonly isEmpty: boolean;
}

/** All paths into one file, and a file onto the shelf. */
export function Files({ isKept, isEmpty }: Props) {
  const [said, setSaid] = useState('');
  const [came, setCame] = useState<BroughtIn>();
  const save = () => {
    setCame(undefined);
    saveAll(isKept).then(setSaid, () =>
      setSaid('This browser could not make the file. Your paths are still here.'),
    );
  };
  const pick = async ({ currentTarget: field }: { currentTarget: HTMLInputElement }) => {
    const picked = field.files?.[0];
    if (!picked) return;
    setCame(undefined);
    setSaid('Reading …');
    const { bringIn } = await work();
    const found = await bringIn(picked).catch(() => unreadable(picked.name));
    setCame(found);
    setSaid(`${picked.name}: ${sayBroughtIn(found)}`);
    field.value = '';
  };
  return (
    <section class="rule-section" id="files" tabIndex={-1}>
      <h2>In and out</h2>
      <p>
        Your paths stay on this device; nobody else has them. A browser can lose them, so save a file now and
        then. What a file brings in is added; nothing that is here is written over.
      </p>
      <p class="shelf-actions">
        <button type="button" class="button" disabled={isEmpty} onClick={save}>
          Save all as one file
        </button>
        <label class="button file-button">
          Bring in a file
          <input type="file" class="visually-hidden" accept=".json,application/json" onChange={pick} />
        </label>
      </p>
      <p role="status">{said}</p>
      {came && came.notes.length > 0 ? (
        <div class="notice look">
          <p>
            <b>Part of the file could not be read as it stands.</b> The rest was.
          </p>
          <ul>
            {came.notes.map((say, at) => (
              <li key={at}>{say}</li>
            ))}
          </ul>
        </div>
      ) : null}
    </section>
  );
}
