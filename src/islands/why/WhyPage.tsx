import { useEffect, useState } from 'preact/hooks';
import type { Asked } from '../../calc/why-number.ts';
import { Boundary } from '../shared/Boundary.tsx';
import { Notices } from '../shared/Notices.tsx';
import { to } from '../shared/places.ts';
import { start } from '../stores.ts';
import { AnswerView, useAnswer } from './Answer.tsx';
import { askedBy } from './asked.ts';

const askedHere = (): Asked | undefined =>
  askedBy(new URLSearchParams(window.location.search).get('of') ?? '');

function NothingAsked() {
  return (
    <p>
      This address names no number. Open the{' '}
      <a href={to('plan/')} data-keep-path>
        plan
      </a>{' '}
      and press a figure to see where it comes from.
    </p>
  );
}

function Asking({ asked }: { asked: Asked }) {
  const state = useAnswer(asked);
  const title = state.answer?.explanation?.title;
  useEffect(() => {
    if (title) document.title = `Why: ${title} – Halfnut`;
  }, [title]);
  return (
    <>
      <AnswerView asked={asked} state={state} open />
      <p class="print-only small link-text">{window.location.href}</p>
    </>
  );
}

/** One number of the path in the address on a page of its own, every step unfolded: to read, to send or to print. */
export function WhyPage() {
  const [asked, setAsked] = useState<Asked | 'nothing'>();
  useEffect(() => {
    start();
    setAsked(askedHere() ?? 'nothing');
  }, []);
  return (
    <div class="page read why-page">
      <Notices />
      <h1>Why this number</h1>
      <noscript>
        <p>
          The sums need JavaScript. <a href={to('formulas/')}>Every formula with its source and checks</a>{' '}
          reads without it.
        </p>
      </noscript>
      <Boundary what="the explanation">
        {asked === 'nothing' ? <NothingAsked /> : asked ? <Asking asked={asked} /> : null}
      </Boundary>
      <p class="no-print">
        <a href={to('plan/')} data-keep-path>
          Back to the plan
        </a>
      </p>
    </div>
  );
}
