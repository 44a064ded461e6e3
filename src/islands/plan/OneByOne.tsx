import type { Ref } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import type { WorstBuild } from '../../calc/worst-builds.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { buildWords } from '../buy/build-words.ts';

const ALL = 20;

interface Props {
  readonly report: Report;
  /** The place of the one that is looked at, 20 for the dearest; undefined while nobody looks. */
  readonly place: number | undefined;
  readonly go: (place: number | undefined) => void;
}

function Said({ build }: { build: WorstBuild | undefined }) {
  if (!build) return <p role="status">Working them out …</p>;
  const { money, standing, reasons } = buildWords(build);
  return (
    <p role="status">
      <b>{money}</b>, {standing}: {reasons}.
    </p>
  );
}

interface StepProps {
  readonly name: string;
  readonly to: number;
  readonly go: (place: number) => void;
  readonly button?: Ref<HTMLButtonElement>;
}

/** At an end it stays where it is, so that the focus does too. */
function Step({ name, to, go, button }: StepProps) {
  const isEnd = to < 1 || to > ALL;
  return (
    <button
      type="button"
      class="button small"
      aria-disabled={isEnd}
      onClick={isEnd ? undefined : () => go(to)}
      {...(button ? { ref: button } : {})}
    >
      {name}
    </button>
  );
}

/** The twenty washers one by one, each with what made it so. */
export function OneByOne({ report, place, go }: Props) {
  const isOpen = place !== undefined;
  const { answer: builds } = useAnswer('dearest', report.path, isOpen);
  const [door, first] = [useRef<HTMLButtonElement>(null), useRef<HTMLButtonElement>(null)];
  const was = useRef(isOpen);
  useEffect(() => {
    // What was pressed is gone: the focus goes on to what stands in its place.
    if (was.current !== isOpen) (isOpen ? first : door).current?.focus();
    was.current = isOpen;
  }, [isOpen]);
  if (!isOpen) {
    return (
      <p class="small no-print">
        <button type="button" class="link-button" ref={door} onClick={() => go(ALL)}>
          The 20 ways one by one, and what makes them dear or cheap
        </button>
      </p>
    );
  }
  return (
    <section class="one-by-one small no-print" aria-label="The 20 ways one by one">
      <Said build={builds?.find((each) => each.place === place)} />
      <p>
        <Step name="Cheaper" to={place - 1} go={go} button={first} />{' '}
        <Step name="Dearer" to={place + 1} go={go} />{' '}
        <button type="button" class="link-button" onClick={() => go(undefined)}>
          Enough<span class="visually-hidden"> of the 20 ways</span>
        </button>
      </p>
      <p class="quiet">
        Set against average prices with nothing going wrong. What comes again among the dear ones is worth
        preventing.
      </p>
    </section>
  );
}
