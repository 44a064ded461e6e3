import { useEffect } from 'preact/hooks';
import type { Check } from '../../calc/core/check.ts';
import type { Path } from '../../calc/core/path.ts';
import type { PlacedCheck, Report } from '../../calc/evaluate.ts';
import { factById } from '../../calc/facts.ts';
import { checks } from '../../content/told/checks.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import { FoldButton, useFold } from '../shared/Fold.tsx';
import { counted } from '../shared/format.ts';
import { Later } from '../shared/in-turn.tsx';
import { LimitMark } from '../shared/LimitMark.tsx';
import { marginText } from '../shared/margin.ts';
import { NotHere } from '../shared/NotHere.tsx';
import { isAskedFor } from '../shared/places.ts';
import { ReadAbout } from '../shared/ReadAbout.tsx';
import { ResultMark } from '../shared/ResultMark.tsx';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { Limits, Side } from '../why/CheckSides.tsx';
import { Accept } from './Accept.tsx';
import { loadAcceptances } from './acceptances.ts';
import { CheckNeeds } from './CheckNeeds.tsx';
import { checksByRoom, type RoomOfChecks } from './checks-by-room.ts';
import { PaperRow } from './PaperRow.tsx';
import { QuestionLinks } from './QuestionLinks.tsx';
import { WaysToClear } from './WaysToClear.tsx';

const HEADS = ['Check', 'Yours', 'Limit', 'Margin', 'Result'];

interface Shown {
  readonly path: Path;
  /** What each check is called. */
  readonly labels: ReadonlyMap<string, string>;
}

function About({ check, path, labels }: { check: PlacedCheck } & Shown) {
  const { result, remedy, testWhen, decisions } = check;
  return (
    <>
      {result === 'ok' ? null : <span class="task-note">{remedy}</span>}
      <CheckNeeds needs={check.needs} />
      {testWhen ? <span class="task-note">To prove on the machine: {testWhen}</span> : null}
      {result === 'ok' ? null : <QuestionLinks decisions={decisions} />}
      <WaysToClear check={check} path={path} labels={labels} />
      <Accept check={check} />
      <ReadAbout kind="checks" told={checks} id={check.id} room={check.subsystem} />
    </>
  );
}

/** What is still to be measured, and how. */
const neededWords = (needs: readonly string[] = []): string =>
  needs
    .flatMap((id) => factById(id) ?? [])
    .map(({ name, howToMeasure }) => `Needs: ${name}: ${howToMeasure}`)
    .join(' ');

function NotesOnPaper({ check }: { check: Check }) {
  const { result, remedy, testWhen, needs } = check;
  if (result === 'ok' && !testWhen && !needs?.length) return null;
  return (
    <PaperRow across={5}>
      {result === 'ok' ? '' : `${remedy} `}
      {neededWords(needs)}
      {testWhen ? ` To prove on the machine: ${testWhen}` : ''}
    </PaperRow>
  );
}

function Row({ check, ...shown }: { check: PlacedCheck } & Shown) {
  return (
    <>
      <tr {...asRow} class={`is-${check.result}`} id={`check-${check.id}`}>
        <th {...asRowHead}>
          {check.label}
          <About check={check} {...shown} />
        </th>
        <td {...asCell} data-label="Yours">
          <Side check={check} side="value" />
        </td>
        <td {...asCell} data-label="Limit">
          <span>
            <Limits check={check} />
          </span>
        </td>
        <td {...asCell} data-label="Margin" class={check.margin === undefined ? 'is-blank' : undefined}>
          <span>
            <LimitMark check={check} />
            {marginText(check)}
          </span>
        </td>
        <td {...asCell} data-label="Result">
          <ResultMark result={check.result} />
        </td>
      </tr>
      <NotesOnPaper check={check} />
    </>
  );
}

const asksForSomething = ({ result }: Check): boolean => result === 'stop' || result === 'look';

/** A fold hides what is in order; what asks for something stays in sight. */
function RoomFold({
  checks: all,
  fold,
}: Pick<RoomOfChecks, 'checks'> & { fold: ReturnType<typeof useFold> }) {
  const shown = all.filter(asksForSomething).length;
  if (shown === all.length) return null;
  return (
    <FoldButton
      fold={fold}
      what={shown === 0 ? counted(all.length, 'check') : `${all.length - shown} more`}
    />
  );
}

function Room({ room, ...shown }: { room: RoomOfChecks } & Shown) {
  const ids = room.checks.map(({ id }) => id);
  const fold = useFold(isAskedFor('check', ids));
  return (
    <tbody class={`group foldable${fold.shutClass}`}>
      <tr {...asRow}>
        <th {...asRowHead} colSpan={5} class="group-name">
          {room.name} <RoomFold checks={room.checks} fold={fold} />
        </th>
      </tr>
      {room.checks
        .filter((check) => fold.drawn || asksForSomething(check))
        .map((check) => (
          <Later key={check.id}>
            <Row check={check} {...shown} />
          </Later>
        ))}
    </tbody>
  );
}

/** Whether the pieces fit each other: what you have, the limit, and the room between; by room, the gravest first. */
export function Checks({ report }: { report: Report }) {
  useEffect(loadAcceptances, []);
  const labels = new Map(report.checks.map(({ id, label }) => [id, label]));
  return (
    <section class="rule-section" id="checks" tabIndex={-1}>
      <h2>Checks</h2>
      {report.checks.length === 0 ? (
        <p>No check arises on this path.</p>
      ) : (
        <p class="no-print">Press a figure to see where it comes from, down to your answers.</p>
      )}
      <NotHere kind="check" ids={report.checks.map(({ id }) => id)} />
      <table class="table-stack checks" {...asTable} aria-label="Checks">
        <ColumnHeads heads={HEADS} />
        {checksByRoom(report.checks).map((room) => (
          <Room key={room.id} room={room} path={report.path} labels={labels} />
        ))}
      </table>
    </section>
  );
}
