import { useState } from 'preact/hooks';
import type { Check } from '../../calc/core/check.ts';
import type { Path } from '../../calc/core/path.ts';
import type { WayToClear } from '../../calc/evaluate.ts';
import { decisionById, optionById } from '../../calc/guide.ts';
import { counted, hoursDifference, listed, moneyDifference, moneyRange } from '../shared/format.ts';
import { placeOfQuestion } from '../shared/question-place.ts';

/** More than these are a list to read, not a way out. */
const SHOWN = 5;

const nameOf = (id: string): string => decisionById(id)?.name ?? id;

function answerOf({ decision, option, ticked }: WayToClear): string {
  const asked = decisionById(decision);
  const label = (asked && optionById(asked, option)?.label) ?? option;
  return ticked ? label : `without ${label}`;
}

/** What it costs against the plan as it is, in the same builds: "$160 more, 2 h less". */
function costOf({ money, hours }: WayToClear): string {
  const sure = Math.sign(money.p10) === Math.sign(money.p90);
  const price = sure
    ? moneyDifference(money.p50)
    : `no clear difference in money (${moneyRange(money.p10, money.p90)})`;
  return `${price}, ${hoursDifference(hours.p50)}`;
}

function Way({ way, labels }: { way: WayToClear; labels: ReadonlyMap<string, string> }) {
  const worse = way.worse.map((id) => labels.get(id) ?? id);
  return (
    <li>
      <a href={placeOfQuestion(way.decision)} data-keep-path>
        {nameOf(way.decision)}: {answerOf(way)}
      </a>
      {` – ${way.clears ? 'clears it' : 'makes it better'}; ${costOf(way)}.`}
      {worse.length > 0 ? ` Then look again at: ${listed(worse)}.` : ''}
      {way.follows.length > 0 ? ` Moves along: ${listed(way.follows.map(nameOf))}.` : ''}
    </li>
  );
}

function Ways({ ways, labels }: { ways: readonly WayToClear[]; labels: ReadonlyMap<string, string> }) {
  if (ways.length === 0)
    return (
      <p>No single other answer does. Change two, measure what is assumed, or ask less of the machine.</p>
    );
  const left = ways.length - SHOWN;
  return (
    <>
      <ul>
        {ways.slice(0, SHOWN).map((way) => (
          <Way key={`${way.decision} ${way.option}`} way={way} labels={labels} />
        ))}
      </ul>
      {left > 0 ? <p class="small quiet">And {counted(left, 'more way')} of less use.</p> : null}
    </>
  );
}

interface Props {
  readonly check: Check;
  readonly path: Path;
  /** What each check is called. */
  readonly labels: ReadonlyMap<string, string>;
}

/** Which single other answers would clear a check, worked out when somebody asks. */
export function WaysToClear({ check, path, labels }: Props) {
  const [found, setFound] = useState<{ path: Path; ways: readonly WayToClear[] }>();
  if (check.result !== 'stop' && check.result !== 'look') return null;
  const ask = async (): Promise<void> => {
    const { waysFor } = await import('./ways-to-clear.ts');
    setFound({ path, ways: waysFor(path, check.id) });
  };
  const fresh = found?.path === path ? found : undefined;
  return (
    <div class="ways" aria-live="polite">
      {fresh ? (
        <Ways ways={fresh.ways} labels={labels} />
      ) : (
        <button type="button" class="button small no-print" onClick={ask}>
          Which answer would clear it?<span class="visually-hidden"> ({check.label})</span>
        </button>
      )}
    </div>
  );
}
