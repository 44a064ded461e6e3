import { useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import { counted } from '../shared/format.ts';
import { $path, openNew } from '../stores.ts';
import type { QuoteProposal, ReadFile } from './file-work.ts';
import { Proposal } from './Proposal.tsx';

type Read =
  | { readonly kind: 'path'; readonly file: ReadFile; readonly name: string }
  | { readonly kind: 'quotes'; readonly proposal: QuoteProposal; readonly name: string }
  | { readonly kind: 'nothing'; readonly say: readonly string[]; readonly name: string };

const looksLikeJson = (text: string): boolean => /^\uFEFF?\s*[{[]/.test(text);

async function readPicked(picked: File, report: Report): Promise<Read> {
  const { readFileText, readPathFile, readQuotes } = await import('./file-work.ts');
  const { name } = picked;
  const { text, notes } = await readFileText(picked);
  if (text === undefined) return { kind: 'nothing', say: notes.map(({ say }) => say), name };
  if (looksLikeJson(text)) {
    const file = readPathFile(text);
    return file.readable
      ? { kind: 'path', file, name }
      : { kind: 'nothing', say: file.notes.map(({ say }) => say), name };
  }
  const wanted = report.bill.once.map(({ part }) => part);
  const proposal = readQuotes(text, { wanted, currency: $path.get().currency?.code ?? 'USD' });
  return { kind: 'quotes', proposal: { ...proposal, notes: [...notes, ...proposal.notes] }, name };
}

function PathFound({ file, onDone }: { file: ReadFile; onDone: (say: string) => void }) {
  const { path, saved, notes } = file;
  const open = () => {
    openNew(path);
    onDone('Opened and kept as a new path. What was here is kept beside it, under “Your paths”.');
  };
  return (
    <div class="notice">
      <p>
        This file holds a whole path{saved ? `, saved on ${saved}` : ''}:{' '}
        {counted(Object.keys(path.answers).length, 'answer')},{' '}
        {counted(Object.keys(path.facts).length, 'figure')},{' '}
        {counted(Object.keys(path.purchases ?? {}).length, 'price or order', 'prices and orders')}. It opens
        as a new path; what is open now stays among yours.
      </p>
      {notes.length > 0 ? (
        <>
          <p>
            <b>Part of it could not be read</b> and is left out:
          </p>
          <ul>
            {notes.map(({ say }, at) => (
              <li key={at}>{say}</li>
            ))}
          </ul>
        </>
      ) : null}
      <p class="notice-actions">
        <button type="button" class="button primary small" onClick={open}>
          Open it
        </button>
        <button type="button" class="button small" onClick={() => onDone('Left as it was.')}>
          Leave everything as it is
        </button>
      </p>
    </div>
  );
}

/** A list of prices or a saved path from the owner's disk; nothing changes before it has been looked at. */
export function BringIn({ report }: { report: Report }) {
  const [read, setRead] = useState<Read>();
  const [said, setSaid] = useState('');
  const pick = async (event: { currentTarget: HTMLInputElement }) => {
    const field = event.currentTarget;
    const picked = field.files?.[0];
    if (!picked) return;
    setRead(undefined);
    setSaid('Reading …');
    const found = await readPicked(picked, report).catch(
      (): Read => ({
        kind: 'nothing',
        say: ['This file could not be read. Nothing was changed.'],
        name: picked.name,
      }),
    );
    setSaid(
      found.kind === 'nothing'
        ? `${found.name}: ${found.say.join(' ')}`
        : `${found.name} was read. Look at it below; nothing has changed yet.`,
    );
    setRead(found);
    field.value = '';
  };
  const done = (say: string) => {
    setRead(undefined);
    setSaid(say);
  };
  return (
    <>
      <h3>Bring in a file</h3>
      <p>
        A list of prices as CSV, your own or a shop’s, or a path that was saved here. It is read on this
        device and goes nowhere.
      </p>
      <p>
        <label class="button file-button">
          Choose a file
          <input
            type="file"
            class="visually-hidden"
            accept=".csv,.tsv,.txt,.json,text/csv,application/json"
            onChange={pick}
          />
        </label>
      </p>
      <p role="status">{said}</p>
      {read?.kind === 'path' ? <PathFound file={read.file} onDone={done} /> : null}
      {read?.kind === 'quotes' ? <Proposal proposal={read.proposal} report={report} onDone={done} /> : null}
    </>
  );
}
