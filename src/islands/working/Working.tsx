import { useEffect, useState } from 'preact/hooks';
import {
  exampleOf,
  type FigureAnswer,
  type Values,
  type WorkingFigure,
} from '../../calc/working-figures/figure.ts';
import { isPath } from '../../link/is-path.ts';
import { namesUnder, recall } from '../memory.ts';
import type { Units } from '../shared/format.ts';
import { useReady } from '../shared/ready.ts';
import { inputText, sentenceOf, writtenText } from './answer-text.ts';
import { InputRow } from './InputRow.tsx';
import { inUnits } from './in-units.ts';
import { Plot } from './Plot.tsx';
import { readTyped, shownOf } from './typed.ts';
import { useFigure } from './use-figure.ts';

/** A screen reader is told the answer once the typing rests, ms. */
const REST = 700;

const mayHavePath = (): boolean => isPath(window.location.hash) || namesUnder('shelf/').length > 0;

const takesOwn = ({ inputs, ownOf }: WorkingFigure): boolean =>
  ownOf !== undefined || inputs.some(({ own }) => own);

/** What the reader's own path brings, or undefined while there is none. All of the trade loads only then. */
function useOwn(figure: WorkingFigure, take: (own: Values) => void): Values | undefined {
  const [own, setOwn] = useState<Values>();
  useEffect(() => {
    if (!takesOwn(figure) || !mayHavePath()) return;
    import('./own-values.ts')
      .then(({ ownValues }) => ownValues(figure))
      .then((found) => {
        if (!found || Object.keys(found).length === 0) return;
        setOwn(found);
        take(found);
      })
      .catch(() => undefined);
  }, []);
  return own;
}

function Spoken({ sentence, wanted }: { sentence: string; wanted: boolean }) {
  const [said, setSaid] = useState('');
  useEffect(() => {
    if (!wanted) return;
    const timer = window.setTimeout(() => setSaid(sentence), REST);
    return () => window.clearTimeout(timer);
  }, [sentence, wanted]);
  return (
    <p class="visually-hidden" role="status">
      {said}
    </p>
  );
}

function AnswerTable({
  figure,
  values,
  answer,
}: {
  figure: WorkingFigure;
  values: Values;
  answer: FigureAnswer;
}) {
  const given = figure.inputs.filter(({ id }) => !answer.rows.some((row) => row.id === id));
  return (
    <table class="working-table" aria-label={`The figures: ${figure.question}`}>
      <tbody>
        {given.map(({ id, label, written }) => (
          <tr key={id}>
            <th scope="row">{label}</th>
            <td>{inputText(values[id]!, written)}</td>
          </tr>
        ))}
        {answer.rows.map(({ id, label, value, written }) => (
          <tr key={id}>
            <th scope="row">{label}</th>
            <td>
              <b>{writtenText(value, written)}</b>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Body({ figure }: { readonly figure: WorkingFigure }) {
  const ready = useReady();
  const { values, typed, touched, put, offer, type } = useFigure(figure);
  const example = exampleOf(figure);
  const own = useOwn(figure, (found) => offer({ ...example, ...found }));
  const answer = figure.answer(values);
  const sentence = sentenceOf(figure, values, answer);
  const isOwn = (id: string) => own?.[id] !== undefined && own[id] === values[id];
  const anyOwn = figure.inputs.some(({ id }) => isOwn(id));
  return (
    <div class="working-body">
      <fieldset class="working-controls" disabled={!ready}>
        <legend class="visually-hidden">{figure.question}</legend>
        {figure.inputs.map((input) => {
          const read = readTyped(input, typed[input.id]!);
          return (
            <InputRow
              key={input.id}
              figure={figure.id}
              input={input}
              typed={typed[input.id]!}
              held={shownOf(input, values[input.id]!)}
              fault={'fault' in read ? read.fault : ''}
              own={isOwn(input.id)}
              onType={(text) => type(input.id, text)}
            />
          );
        })}
        <p class="button-row">
          <button type="button" class="button" onClick={() => put({ ...example, ...own })}>
            Start again
          </button>
          {own ? (
            <button type="button" class="button" onClick={() => put(example)}>
              Show the example
            </button>
          ) : null}
        </p>
      </fieldset>
      <p class="small quiet">
        {anyOwn
          ? 'From your path, where it is marked; the rest is of an example.'
          : touched
            ? 'Your figures; the rest is of an example.'
            : takesOwn(figure)
              ? 'An example: a medium lathe.'
              : 'An example.'}
      </p>
      <Plot figure={figure} answer={answer} sentence={sentence} />
      <p class="working-says">{sentence}</p>
      <Spoken sentence={sentence} wanted={touched} />
      <AnswerTable figure={figure} values={values} answer={answer} />
    </div>
  );
}

/** The units that the reader has chosen elsewhere on the site; metric until the script listens. */
function useUnits(): Units {
  const [units, setUnits] = useState<Units>('metric');
  useEffect(() => {
    if (recall('units') === 'inch') setUnits('inch');
  }, []);
  return units;
}

/** A working figure: values to move, picture, sentence, table. It stands whole as an example before the script listens. */
export function Working({ figure }: { readonly figure: WorkingFigure }) {
  const units = useUnits();
  return <Body key={units} figure={inUnits(figure, units)} />;
}
