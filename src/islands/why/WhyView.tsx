import { useStore } from '@nanostores/preact';
import type { ExplainedInput, Explanation } from '../../calc/why-number.ts';
import { $units } from '../preferences.ts';
import { counted } from '../shared/format.ts';
import { quantityText } from '../shared/quantity.ts';
import { ChangeLink } from './ChangeLink.tsx';
import { Law } from './Law.tsx';
import type { Equations } from './load.ts';

/** More inputs than this are a list of lines: the largest are shown, the others together. */
const MANY = 12;
const LARGEST = 7;

const FROM: Readonly<Record<Explanation['origin'], string>> = {
  answered: 'yours',
  assumed: 'ours',
  chosen: 'from an answer',
  published: 'published',
  derived: 'worked out',
};

interface Props {
  readonly explanation: Explanation;
  readonly equations: Equations;
  /** Every step unfolded, as on the page of its own and on paper. */
  readonly open: boolean;
}

/** Why a number is what it is; each input is explained by the same view, down to the answers. */
export function WhyView({ explanation, equations, open }: Props) {
  const { say, change, inputs } = explanation;
  return (
    <div class="why-view">
      <p>
        {sentences(say)} {change ? <ChangeLink change={change} /> : null}
      </p>
      <Law explanation={explanation} equations={equations} />
      {inputs.length > 0 ? <Inputs inputs={inputs} equations={equations} open={open} /> : null}
    </div>
  );
}

const sizeOf = ({ parts }: ExplainedInput): number => Math.abs(parts[0]?.value ?? 0);

function Inputs({ inputs, ...rest }: { inputs: readonly ExplainedInput[] } & Omit<Props, 'explanation'>) {
  if (inputs.length <= MANY) return <InputList inputs={inputs} {...rest} />;
  const bySize = inputs.toSorted((a, b) => sizeOf(b) - sizeOf(a));
  const [largest, others] = [bySize.slice(0, LARGEST), bySize.slice(LARGEST)];
  return (
    <>
      <InputList inputs={largest} {...rest} />
      <details class="why-more" open={rest.open}>
        <summary>And {counted(others.length, 'smaller line')}</summary>
        <InputList inputs={others} {...rest} />
      </details>
    </>
  );
}

function InputList({ inputs, ...rest }: { inputs: readonly ExplainedInput[] } & Omit<Props, 'explanation'>) {
  return (
    <ul class="why-inputs list-plain">
      {inputs.map((input) =>
        input.word === undefined ? (
          input.parts.map((part, at) => (
            <li key={`${input.name}-${at}`}>
              <Input name={input.name} part={part} {...rest} />
            </li>
          ))
        ) : (
          <li key={input.name}>
            <span class="why-name">{input.name}</span> “{input.word}”
          </li>
        ),
      )}
    </ul>
  );
}

function Head({ name, part }: { name: string; part: Explanation }) {
  const units = useStore($units);
  const { title } = part;
  return (
    <>
      {named(name, title) ? <span class="why-name">{name}</span> : null}{' '}
      {title.charAt(0).toUpperCase() + title.slice(1)}: <b class="figure">{quantityText(part, units)}</b>{' '}
      <span class="why-from">{FROM[part.origin]}</span>
    </>
  );
}

/** The name in the equation is said where it differs from the title. */
const named = (name: string, title: string): boolean =>
  name !== title && name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`) !== title;

/** Reasons come as they stand in the lists of the trade; behind a full stop each begins as a sentence does. */
const sentences = (say: string): string =>
  say.replace(/(^|[.!?] )(\p{Ll})/gu, (_, stop: string, letter: string) => stop + letter.toUpperCase());

function Input({
  name,
  part,
  equations,
  open,
}: { name: string; part: Explanation } & Omit<Props, 'explanation'>) {
  if (part.inputs.length > 0)
    return (
      <details open={open}>
        <summary>
          <Head name={name} part={part} />
        </summary>
        <WhyView explanation={part} equations={equations} open={open} />
      </details>
    );
  return (
    <>
      <Head name={name} part={part} />
      <span class="why-leaf">
        {sentences(part.say)} {part.change ? <ChangeLink change={part.change} /> : null}
      </span>
    </>
  );
}
