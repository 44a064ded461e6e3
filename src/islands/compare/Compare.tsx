import { useStore } from '@nanostores/preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Comparison } from '../../calc/comparing.ts';
import { CONVERSION } from '../../calc/core/alternative.ts';
import type { Report } from '../../calc/evaluate.ts';
import { tailOf } from '../../link/comparison.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { Pickers } from '../beside/Pickers.tsx';
import { useNarrow } from '../beside/use-narrow.ts';
import { PHONE_COLUMNS } from '../beside/words.ts';
import { Receipt } from '../guide/Receipt.tsx';
import { Outline, OutlineToCome } from '../plan/Outline.tsx';
import { Send } from '../share/Send.tsx';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { EditionNote } from '../shared/EditionNote.tsx';
import { Later } from '../shared/in-turn.tsx';
import { Notices } from '../shared/Notices.tsx';
import { PaperHead } from '../shared/PaperHead.tsx';
import { $open, $path, $report } from '../stores.ts';
import { Against } from './Against.tsx';
import { $others, forSums, startColumns } from './columns.ts';
import { type Called, calledAll } from './names.ts';
import { PutBeside } from './PutBeside.tsx';
import { sortedRows } from './rows.ts';
import { $shelfOwn } from './shelf-own.ts';
import { SameRows, Table } from './Table.tsx';

const TITLES = [
  '',
  'One way so far',
  'Two ways, side by side',
  'Three ways, side by side',
  'Four ways, side by side',
];

/** Until something stands beside the path, the first two that speak for themselves do. */
const OFFERED = 2;

/** The places of the columns that are shown: all on a sheet, two on a phone. */
function useShown(called: readonly Called[]) {
  const narrow = useNarrow();
  const [picked, setPicked] = useState<readonly string[]>([]);
  const all = called.map(({ id }) => id);
  const kept = picked.filter((id) => all.includes(id));
  const two = kept.length === PHONE_COLUMNS ? kept : all.slice(0, PHONE_COLUMNS);
  return { narrow, ids: narrow ? two : all, setPicked };
}

function Sheet({ comparison }: { comparison: Comparison }) {
  const path = useStore($path);
  const others = useStore($others) ?? [];
  const { record } = useStore($open);
  const [all, setAll] = useState(false);
  const called = calledAll(comparison.columns, path, [
    record?.name ?? (record ? 'Your plan' : 'The open path'),
    ...others.map(({ name }) => name),
  ]);
  const { narrow, ids, setPicked } = useShown(called);
  const places = ids.map((id) => called.findIndex((each) => each.id === id));
  const shown = places.map((place) => ({
    place,
    called: called[place]!,
    column: comparison.columns[place]!,
  }));
  const groups = sortedRows(shown.map(({ column }) => column));
  const pickable = called.map(({ id, letter, name }) => ({ id, name: `${letter}: ${name}` }));
  return (
    <>
      {narrow && called.length > PHONE_COLUMNS ? (
        <Pickers all={pickable} shown={ids} onShown={setPicked} />
      ) : null}
      {called.length > 1 ? <SameRows groups={groups} all={all} onAll={setAll} /> : null}
      <Table shown={shown} groups={groups} all={all} editionsDiffer={comparison.editionsDiffer} />
      {called.length > 1 ? (
        <Later>
          <Against
            comparison={comparison}
            called={called}
            usual={narrow ? [places[0] ?? 0, places[1] ?? 1] : undefined}
          />
        </Later>
      ) : null}
    </>
  );
}

/** Alternatives in their order, asked for while nobody has put anything beside, or looks for something to put there. */
function useOffers(isWanted: boolean) {
  const path = useStore($path);
  const others = useStore($others);
  const { answer: side } = useAnswer('side-by-side', path, isWanted || others === undefined);
  useEffect(() => {
    if (side && $others.get() === undefined) {
      const first = side.order.filter((id) => id !== CONVERSION).slice(0, OFFERED);
      $others.set(first.map((id) => ({ compared: { kind: 'alternative', id }, own: false })));
    }
  }, [side]);
  return side;
}

function WithReport({ report }: { report: Report }) {
  const path = useStore($path);
  const others = useStore($others);
  const [isOpen, setOpen] = useState(others === undefined || others.length === 0);
  const shelfOwn = useStore($shelfOwn);
  const side = useOffers(isOpen);
  const beside = useMemo(() => forSums(path, others ?? [], shelfOwn), [path, others, shelfOwn]);
  const { answer: comparison, isOld } = useAnswer('comparison', path, others !== undefined, beside);
  const tail = tailOf(
    path,
    (others ?? []).map(({ compared }) => compared),
  );
  const isLate = isOld || comparison?.columns.length !== beside.length + 1;
  return (
    <>
      <PaperHead report={report} title="Side by side" page="compare/" tail={tail} />
      <h1>{TITLES[(others?.length ?? 0) + 1]}</h1>
      <Outline report={report} />
      <p class="no-print">
        <Send path={path} others={beside} page="compare/" />
      </p>
      <PutBeside report={report} side={side} isOpen={isOpen} onToggle={setOpen} />
      {comparison ? (
        <div aria-busy={isLate}>
          <Boundary what="the comparison">
            <Sheet comparison={comparison} />
          </Boundary>
        </div>
      ) : (
        <p role="status">Working out every column in the same 20 ways …</p>
      )}
    </>
  );
}

/** Two to four answers to the same wish in the same rows, and why two of them differ. */
export function Compare() {
  const report = useStore($report);
  useEffect(startColumns, []);
  return (
    <div class="page compare">
      <Notices />
      <EditionNote />
      <WithFigures what="this page">
        {report ? (
          <WithReport report={report} />
        ) : (
          <>
            <p role="status">Working out your plan first …</p>
            <OutlineToCome />
          </>
        )}
        <Receipt />
      </WithFigures>
    </div>
  );
}
