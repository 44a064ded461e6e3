import { useRef, useState } from 'preact/hooks';
import { exampleOf, type Values, type WorkingFigure } from '../../calc/working-figures/figure.ts';
import { readTyped, shownOf } from './typed.ts';

type Texts = Readonly<Record<string, string>>;

const textsOf = ({ inputs }: WorkingFigure, values: Values): Texts =>
  Object.fromEntries(inputs.map((input) => [input.id, shownOf(input, values[input.id]!)]));

/** What was typed into a figure, the values that hold, and the ways back. A wrong entry leaves the last value standing. */
export function useFigure(figure: WorkingFigure) {
  const [values, setValues] = useState(() => exampleOf(figure));
  const [typed, setTyped] = useState(() => textsOf(figure, values));
  const [touched, setTouched] = useState(false);
  const isTouched = useRef(false);
  const put = (next: Values) => {
    setValues(next);
    setTyped(textsOf(figure, next));
  };
  /** Puts values that come late, but never over what somebody typed meanwhile. */
  const offer = (next: Values) => {
    if (!isTouched.current) put(next);
  };
  const type = (id: string, text: string) => {
    const read = readTyped(figure.inputs.find((input) => input.id === id)!, text);
    isTouched.current = true;
    setTouched(true);
    setTyped({ ...typed, [id]: text });
    if ('value' in read) setValues({ ...values, [id]: read.value });
  };
  return { values, typed, touched, put, offer, type };
}
