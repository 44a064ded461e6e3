import { useEffect, useState } from 'preact/hooks';
import { type BuyGroup, type BuyView, buyGroups, buyViews } from '../../calc/buying.ts';
import type { Report } from '../../calc/evaluate.ts';
import { recall, remember } from '../memory.ts';
import { priceRange } from '../plan/words.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { FoldButton, useFold } from '../shared/Fold.tsx';
import { counted, exactText } from '../shared/format.ts';
import { NotHere } from '../shared/NotHere.tsx';
import { askedLine } from '../shared/places.ts';
import { BuyLine } from './BuyLine.tsx';
import { today } from './day.ts';
import { arrive, isFollowed } from './follow.ts';
import { isExact } from './words.ts';

const NAMES: Readonly<Record<BuyView, string>> = {
  order: 'Order by',
  stage: 'Stage',
  room: 'Room',
  seller: 'Shop',
};

const REMEMBERED = 'buy-view';

const isView = (text: string | undefined): text is BuyView => buyViews.some((view) => view === text);

function Switch({ view, onView }: { view: BuyView; onView: (view: BuyView) => void }) {
  return (
    <fieldset class="no-print">
      <legend>Laid out by</legend>
      <span class="segments">
        {buyViews.map((each) => (
          <label key={each}>
            <input type="radio" name="buy-view" checked={each === view} onChange={() => onView(each)} />
            <span>{NAMES[each]}</span>
          </label>
        ))}
      </span>
    </fieldset>
  );
}

/** One group of lines; on a phone all but the first are folded away until asked for. */
function Group({ group, report, first }: { group: BuyGroup; report: Report; first: boolean }) {
  const { name, lines, sum } = group;
  const fold = useFold(first);
  const parts = lines.map(({ part }) => part);
  const joined = parts.join();
  useEffect(() => {
    if (!isFollowed(parts)) return;
    if (!fold.open) fold.toggle();
    requestAnimationFrame(arrive);
  }, [joined]);
  return (
    <section class="buy-group">
      <div class="buy-group-head">
        <h3>{name}</h3>
        <span class="quiet">{counted(lines.length, 'line')}</span>
        {isExact(sum) ? (
          <b>{exactText(sum[1].toFixed(2))}</b>
        ) : (
          <DimensionLine text={priceRange(sum)} length={130} />
        )}
        <FoldButton fold={fold} what={counted(lines.length, 'line')} />
      </div>
      <ul class={`list-plain foldable${fold.shutClass}`}>
        {lines.map((line) => (
          <BuyLine key={line.part} line={line} report={report} />
        ))}
      </ul>
    </section>
  );
}

/** The lines in groups: by the day to order, by stage, by room or by shop. */
export function Views({ report }: { report: Report }) {
  const [view, setView] = useState<BuyView>(() => {
    const kept = recall(REMEMBERED);
    return isView(kept) ? kept : 'order';
  });
  const choose = (next: BuyView) => {
    setView(next);
    remember(REMEMBERED, next);
  };
  const lines = [...report.bill.once, ...report.bill.perYear];
  return (
    <section class="rule-section" id="lines" tabIndex={-1}>
      <h2>What to buy</h2>
      <NotHere kind="part" ids={lines.map(({ part }) => part)} asked={askedLine()} />
      <Switch view={view} onView={choose} />
      {buyGroups(report, view, today()).map((group, at) => (
        <Group key={`${view} ${group.id}`} group={group} report={report} first={at === 0} />
      ))}
    </section>
  );
}
