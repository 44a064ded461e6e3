import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import type { Path } from '../../calc/core/path.ts';
import type { Asked, Explanation } from '../../calc/why-number.ts';
import { $units } from '../preferences.ts';
import { hours, money, type Units, weeks } from '../shared/format.ts';
import { quantityText } from '../shared/quantity.ts';
import { $path } from '../stores.ts';
import { type Answer, answerOf } from './load.ts';
import { saidOnce } from './once.ts';
import { WhyView } from './WhyView.tsx';

type State = { readonly answer?: Answer; readonly fault?: unknown };

/** The explanation of a number on this path; empty until it is worked out. */
export function useAnswer(asked: Asked | undefined): State {
  const path: Path = useStore($path);
  const [state, setState] = useState<State>({});
  useEffect(() => {
    let wanted = true;
    setState({});
    if (asked)
      answerOf(path, asked).then(
        (answer) => wanted && setState({ answer }),
        (fault) => wanted && setState({ fault }),
      );
    return () => {
      wanted = false;
    };
  }, [path, asked]);
  return state;
}

/** Prices move totals and risks only: there the edition and its date are part of the source. */
function Edition({ asked, answer }: { asked: Asked; answer: Answer }) {
  if (asked.kind !== 'total' && asked.kind !== 'risk') return null;
  const { id, date } = answer.edition;
  return (
    <p class="small quiet">
      Prices and hours: edition {id} of {date}, planning figures from memory of the trade, not quotations.
    </p>
  );
}

/** A total is rounded as it is on the rods: its steps below add up to the dollar, which nobody can know it to. */
function headFigure(asked: Asked, explanation: Explanation, units: Units): string {
  const say = asked.kind === 'total' ? { money, hours, 'weeks-out': weeks }[asked.id] : undefined;
  return say ? `about ${say(explanation.value)}` : quantityText(explanation, units);
}

/** What the reader is shown of a number: the figure, then why; or what stands in the way of it. */
export function AnswerView({ asked, state, open }: { asked: Asked; state: State; open: boolean }) {
  const units = useStore($units);
  const { answer, fault } = state;
  if (fault !== undefined)
    return (
      <p>
        The explanation could not be loaded. The page may be out of reach: try again when you are connected.
      </p>
    );
  if (!answer) return <p role="status">Working it out …</p>;
  const { explanation, equations } = answer;
  if (!explanation)
    return <p>This number does not arise on this path, or a figure that it needs is still missing.</p>;
  return (
    <>
      <p class="why-value">
        {explanation.title}: <b class="figure">{headFigure(asked, explanation, units)}</b>
      </p>
      <WhyView explanation={open ? saidOnce(explanation) : explanation} equations={equations} open={open} />
      <Edition asked={asked} answer={answer} />
    </>
  );
}
