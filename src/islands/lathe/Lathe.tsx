import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import { decisionById } from '../../calc/guide.ts';
import { Receipt } from '../guide/Receipt.tsx';
import { RunningCard } from '../guide/RunningCard.tsx';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { EditionNote } from '../shared/EditionNote.tsx';
import { Notices } from '../shared/Notices.tsx';
import { questionPlace, to } from '../shared/places.ts';
import { $path, start } from '../stores.ts';
import { Drawer } from './Drawer.tsx';
import { Figures, SizeClassChoice } from './Figures.tsx';
import { LatheQuestions } from './LatheQuestions.tsx';

/** Moves to a question or to the field of a figure, out of whatever folds it away. */
function showAsked(id: string | null): void {
  if (id === null) return;
  const target = document.getElementById(`ask-${id}`) ?? document.getElementById(id);
  const folded = target?.closest('details.fact-group');
  if (folded instanceof HTMLDetailsElement) folded.open = true;
  target?.scrollIntoView();
  target?.focus({ preventScroll: true });
}

/** A plain anchor such as "#swing"; a path in the fragment is none. */
const anchorOf = (hash: string): string | null => (/^#[a-z0-9-]+$/.test(hash) ? hash.slice(1) : null);

function Foot({ back }: { back: string | undefined }) {
  const returning = back ? decisionById(back) : undefined;
  return (
    <p class="button-row">
      {returning ? (
        <a class="button" href={questionPlace(returning.id)} data-keep-path>
          Return to: {returning.name}
        </a>
      ) : null}
      <a class="button primary" href={to('questions/')} data-keep-path>
        On to the questions
      </a>
    </p>
  );
}

/** Takes up the path, then shows the question that the address asks for; tells where to return to. */
function useAddress(): string | undefined {
  const [back, setBack] = useState<string>();
  useEffect(() => {
    const { hash } = window.location;
    start();
    const query = new URLSearchParams(window.location.search);
    setBack(query.get('back') ?? undefined);
    showAsked(query.get('at') ?? anchorOf(hash));
  }, []);
  return back;
}

/** The owner's lathe and workshop: size, figures, facts to pick, and what is already there. */
export function Lathe() {
  const back = useAddress();
  useStore($path);
  return (
    <div class="grid-lathe">
      <div class="centre">
        <Boundary what="the lathe page">
          <Notices />
          <EditionNote />
          <h1>Your lathe</h1>
          <p class="lede">
            What you know of it makes every later figure narrower. Nothing here has to be filled in.{' '}
            <a href={to('questions/')} data-keep-path>
              On to the questions
            </a>
          </p>
          <SizeClassChoice />
          <Figures />
          <LatheQuestions />
          <Drawer />
          <Receipt />
          <Foot back={back} />
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
