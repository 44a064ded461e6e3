import { useStore } from '@nanostores/preact';
import type { Report, Verdict } from '../../calc/evaluate.ts';
import { tallyOf } from '../guide/tally.ts';
import { $limits } from '../preferences.ts';
import { counted, hoursRange } from '../shared/format.ts';
import { to } from '../shared/places.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { QuestionLinks } from './QuestionLinks.tsx';
import { summaryOf } from './words.ts';

/** What to say where no verdict of the trade speaks up: an outline claims nothing, and stops come before the price. */
function withoutVerdict(report: Report): string {
  if (report.openQuestions.includes('purpose')) {
    return 'You have not said yet what the lathe should make, so this sheet is an outline and no judgement. Answer that question first.';
  }
  return tallyOf(report).stop.length > 0
    ? 'Settle the stops below first. Beyond them nothing that you answered speaks against this conversion; whether it is worth its price is for you to say.'
    : 'Nothing that you answered speaks against this conversion. Whether it is worth its price is for you to say.';
}

const GRAVITY: Readonly<Record<Verdict['weight'], 'ok' | 'look' | 'stop'>> = {
  go: 'ok',
  think: 'look',
  'do-not': 'stop',
};
const WORDS: Readonly<Record<Verdict['weight'], string>> = {
  go: 'fits',
  think: 'think first',
  'do-not': 'do not convert',
};

/** Questions whose answer follows the advice, or takes its reason away. */
const FOLLOWED_BY: Readonly<Record<string, readonly string[]>> = {
  'alternatives-first': ['purpose'],
  'do-not-convert': ['condition'],
  'get-help-first': ['who-wires'],
  'thread-synchroniser': ['control', 'driven-axes'],
};

function Said({ verdict }: { verdict: Verdict }) {
  return (
    <p class="verdict">
      <ResultMark result={GRAVITY[verdict.weight]} word={WORDS[verdict.weight]} /> {verdict.say}{' '}
      {verdict.weight === 'go' ? null : <QuestionLinks decisions={FOLLOWED_BY[verdict.id] ?? []} />}
    </p>
  );
}

function Stops({ report }: { report: Report }) {
  const { stop, look } = tallyOf(report);
  return (
    <p>
      <ResultMark result="stop" word={counted(stop.length, 'stop')} empty={stop.length === 0} />
      {' and '}
      <ResultMark result="look" word={`${look.length} to look at`} />: <a href="#findings">what they are</a>
    </p>
  );
}

/** What the answers say about converting at all, the ranges in one sentence, and how such plans turn out elsewhere. */
export function VerdictRow({ report }: { report: Report }) {
  const { money } = useStore($limits);
  const { money: cost, hours, over, limit } = summaryOf(report, money);
  const [low, , high] = report.hours.planned;
  return (
    <section class="verdict-row" id="verdict" tabIndex={-1} aria-label="Verdict">
      <div>
        {report.verdicts.map((verdict) => (
          <Said key={verdict.id} verdict={verdict} />
        ))}
        {report.verdicts.length === 0 ? <p class="verdict">{withoutVerdict(report)}</p> : null}
        <p class="verdict">
          Half of the ways this could turn out cost <b class="figure">{cost}</b> and take{' '}
          <b class="figure">{hours}</b>; <b>{over}</b> pass {limit}.
        </p>
        <p class="no-print">
          <a href={to('worth-it/')} data-keep-path>
            Is it worth it: your parts, everything else that may answer the wish, and what swings it
          </a>
          <br />
          <a href={to('compare/')} data-keep-path>
            Put it beside another way or something else
          </a>
        </p>
      </div>
      <div class="small">
        <Stops report={report} />
        <p>
          <b>The view from outside:</b> first conversions overrun their first plan by about half (a judgement,
          not a count). The tasks alone add up to {hoursRange(low, high)}, from all quick to all slow. The
          rods count the troubles too; the hours beside a task do not.
        </p>
      </div>
    </section>
  );
}
