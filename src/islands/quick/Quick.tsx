import { useStore } from '@nanostores/preact';
import { useEffect } from 'preact/hooks';
import { decisionById } from '../../calc/guide.ts';
import { Receipt } from '../guide/Receipt.tsx';
import { RunningCard } from '../guide/RunningCard.tsx';
import { SizeClassChoice } from '../lathe/Figures.tsx';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { EditionNote } from '../shared/EditionNote.tsx';
import { Notices } from '../shared/Notices.tsx';
import { to } from '../shared/places.ts';
import { $path, start } from '../stores.ts';
import { nine, type QuickGroup } from './nine.ts';
import { QuickQuestion } from './QuickQuestion.tsx';
import { WideBecause } from './WideBecause.tsx';

function Group({ group, number }: { group: QuickGroup; number: number }) {
  const decisions = group.decisions.flatMap((id) => decisionById(id) ?? []);
  const takesSize = group.decisions.includes('which-lathe');
  return (
    <section class="rule-page quick-group">
      <h2>
        <span class="quiet">{number}</span> {group.ask}
      </h2>
      <p class="field-hint">{group.why}</p>
      <div class="quick-questions">
        {takesSize ? <SizeClassChoice /> : null}
        {decisions.map((decision) => (
          <QuickQuestion
            key={decision.id}
            decision={decision}
            isAlone={decisions.length === 1 && !takesSize}
          />
        ))}
      </div>
    </section>
  );
}

function Sheet() {
  return (
    <>
      <Notices />
      <EditionNote />
      <h1>Quick sheet</h1>
      <p class="lede">
        Nine topics, some twenty short questions and a few minutes for a true, wide range. Leave out what you
        do not know: “not sure yet” is an answer, and whatever stays open keeps its whole width.
      </p>
      {nine.map((group, at) => (
        <Group key={group.ask} group={group} number={at + 1} />
      ))}
      <Receipt />
      <WithFigures what="why the answer is this wide">
        <WideBecause />
      </WithFigures>
      <p class="button-row">
        <a class="button" href={to('questions/')} data-keep-path>
          Every question
        </a>
        <a class="button" href={to('worth-it/')} data-keep-path>
          Is it worth it
        </a>
        <a class="button primary" href={to('plan/')} data-keep-path>
          To the plan
        </a>
      </p>
    </>
  );
}

/** Nine topics on one sheet, the range beside them, and what keeps it wide. */
export function Quick() {
  useEffect(start, []);
  useStore($path);
  return (
    <div class="grid-lathe">
      <div class="centre">
        <Boundary what="the quick sheet">
          <Sheet />
        </Boundary>
      </div>
      <aside class="card" aria-label="Running card">
        <WithFigures what="the running card">
          <RunningCard />
        </WithFigures>
      </aside>
    </div>
  );
}
