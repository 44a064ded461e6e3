// Random paths for property tests.
import fc from 'fast-check';
import type { SizeClass } from '../src/calc/core/machine.ts';
import type { Answer, Path } from '../src/calc/core/path.ts';
import { facts } from '../src/calc/facts.ts';
import { decisions } from '../src/calc/guide.ts';
import { parts } from '../src/calc/trade.ts';
import { currentEdition } from '../src/content/edition.ts';

function anAnswer(options: readonly string[], many: boolean): fc.Arbitrary<Answer | undefined> {
  const one = fc.constantFrom(...options).map((option): Answer => [option]);
  const several = fc.subarray([...options], { minLength: 1 }).map((ticked): Answer => ticked);
  return fc.oneof(
    { weight: 5, arbitrary: many ? several : one },
    { weight: 1, arbitrary: fc.constant<Answer>([]) },
    { weight: 2, arbitrary: fc.constant(undefined) },
  );
}

const answers = fc
  .record(
    Object.fromEntries(
      decisions.map((decision) => [
        decision.id,
        anAnswer(
          decision.options.map((option) => option.id),
          decision.many === true,
        ),
      ]),
    ),
  )
  .map(
    (drawn) =>
      Object.fromEntries(Object.entries(drawn).filter(([, answer]) => answer !== undefined)) as Record<
        string,
        Answer
      >,
  );

const measured = fc
  .record(
    Object.fromEntries(
      facts.map((fact) => [
        fact.id,
        fc.oneof(
          { weight: 3, arbitrary: fc.constant(undefined) },
          {
            weight: 1,
            arbitrary: fc
              .double({ min: fact.sense[0], max: fact.sense[1], noNaN: true })
              .map((v) => Number(v.toPrecision(6))),
          },
        ),
      ]),
    ),
  )
  .map(
    (drawn) =>
      Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined)) as Record<
        string,
        number
      >,
  );

/** Any path an owner could have said, contradictions included. */
export const anyPath: fc.Arbitrary<Path> = fc.record({
  edition: fc.constant(currentEdition.edition),
  size: fc.constantFrom<SizeClass>('small', 'medium', 'large'),
  facts: measured,
  answers,
  owned: fc
    .subarray(
      parts.map((part) => part.id),
      { maxLength: 12 },
    )
    .map((ids) => [...ids].sort()),
});
