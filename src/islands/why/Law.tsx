import type { Explanation } from '../../calc/why-number.ts';
import { listed } from '../shared/format.ts';
import { to } from '../shared/places.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import type { Equations } from './load.ts';
import { substituted } from './substitute.ts';

type LawOf = NonNullable<Explanation['law']>;

/** The equation as it is printed in books; its plain text where there is none, or none could be fetched. */
function Equation({ law, equations }: { law: LawOf; equations: Equations }) {
  const math = equations[law.id];
  if (!math) return null;
  // Made from our own TeX when the site was built.
  return <div class="equation" dangerouslySetInnerHTML={{ __html: math }} />;
}

function Trust({ law }: { law: LawOf }) {
  const { outside, unverified } = law;
  return (
    <>
      {outside.length > 0 ? (
        <p class="why-trust">
          <ResultMark result="look" word="outside" /> {capital(listed(outside.map(spaced)))}{' '}
          {outside.length === 1 ? 'lies' : 'lie'} outside what the source speaks of. Take the result as a
          hint.
        </p>
      ) : null}
      {unverified ? (
        <p class="why-trust">
          <ResultMark result="not-yet" word="not verified" /> No published figure stands beside this formula:{' '}
          {unverified}
        </p>
      ) : null}
    </>
  );
}

/** "beltEfficiency" → "belt efficiency". */
const spaced = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function Source({ law }: { law: LawOf }) {
  if (!law.source) return null;
  return (
    <p class="small quiet">
      Source: {law.source.ref}, {law.source.at}.{' '}
      <a class="no-print" href={to(`formulas/#${law.id}`)}>
        {law.unverified ? 'Its valid range' : 'Its valid range and published checks'}
      </a>
    </p>
  );
}

/** The law a number was worked out with: equation, the figures in it, source, and how far to trust it. */
export function Law({ explanation, equations }: { explanation: Explanation; equations: Equations }) {
  const { law } = explanation;
  if (!law) return null;
  const figures = substituted(explanation);
  return (
    <div class="why-law">
      <Equation law={law} equations={equations} />
      {law.source || !figures ? <p class="equation-plain">{law.equation}</p> : null}
      {figures ? (
        <p class="equation-figures">
          <span class="quiet small">With the figures, in SI units: </span>
          {figures}
        </p>
      ) : null}
      <Trust law={law} />
      <Source law={law} />
    </div>
  );
}
