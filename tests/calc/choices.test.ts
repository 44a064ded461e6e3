import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blocksOf } from '../../src/calc/choices/blocks.ts';
import { exclusions, isViolated } from '../../src/calc/choices/exclusions.ts';
import { emptyPath, type Path } from '../../src/calc/core/path.ts';
import { planState } from '../../src/calc/cost/ways.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { machineOf } from '../../src/calc/facts.ts';
import { decisions } from '../../src/calc/guide.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { anyPath } from '../arbitrary.ts';
import { quickly } from '../cases.ts';

const nothing = emptyPath(currentEdition.edition);
const plan = (path: Path) => planState(path, machineOf(path.size, path.facts));
const withAnswers = (answers: Path['answers']): Path => ({ ...nothing, answers });

describe('choices', () => {
  test('the reference answers break no rule', () => {
    const { state, status } = plan(nothing);
    expect(exclusions.filter((exclusion) => isViolated(exclusion, state)).map(({ rule }) => rule.id)).toEqual(
      [],
    );
    const others = decisions.filter(
      (d, at) =>
        status[at] !== 'not-asked' &&
        d.assume[0] !== d.options.find((_, bit) => (state.masks[at]! >> bit) & 1)?.id,
    );
    expect(others.map((d) => d.id)).toEqual([]);
  });

  test('whatever is answered, what stands breaks no rule', () => {
    fc.assert(
      fc.property(anyPath, (path) => {
        const { state } = plan(path);
        expect(
          exclusions.filter((exclusion) => isViolated(exclusion, state)).map(({ rule }) => rule.id),
        ).toEqual([]);
      }),
      { numRuns: quickly(3000) },
    );
  });

  test('a single answer on an empty sheet always stands, unless it is one we call incomplete', () => {
    const refused = decisions.flatMap((decision) =>
      decision.options
        .filter((option) => !option.incomplete)
        .filter((option) => {
          const { status, state } = plan(withAnswers({ [decision.id]: [option.id] }));
          const at = decisions.indexOf(decision);
          return status[at] === 'clash' || (status[at] === 'answered' && state.masks[at] === 0);
        })
        .map((option) => `${decision.id}/${option.id}`),
    );
    expect(refused).toEqual([]);
  });

  test('every option that may be chosen is reachable: some path asks its question and lets it stand', () => {
    const reached = new Set<string>();
    const note = (path: Path): void => {
      for (const choice of evaluateChoices(path))
        for (const option of choice.options) reached.add(`${choice.decision}/${option}`);
    };
    for (const decision of decisions)
      for (const option of decision.options) note(withAnswers({ [decision.id]: [option.id] }));
    for (const path of fc.sample(anyPath, { numRuns: 2000, seed: 11 })) note(path);
    const missing = decisions.flatMap((d) =>
      d.options.filter((o) => !o.incomplete && !reached.has(`${d.id}/${o.id}`)).map((o) => `${d.id}/${o.id}`),
    );
    expect(missing).toEqual([]);
  });

  test('an incomplete option is always blocked, with its reason', () => {
    const { state, status } = plan(nothing);
    decisions.forEach((decision, at) => {
      const incomplete = decision.options.filter((option) => option.incomplete).map((option) => option.id);
      if (status[at] === 'not-asked') return;
      const blocked = blocksOf(state, status, at).map((block) => block.option);
      for (const id of incomplete) expect(blocked, decision.id).toContain(id);
    });
  });

  test('an answer that clashes with an earlier one is kept and shown', () => {
    const report = evaluate(
      withAnswers({ 'carriage-drive': ['ball-screw-front'], apron: ['keep-apron'] }),
      currentEdition,
    );
    const apron = report.choices.find((choice) => choice.decision === 'apron')!;
    expect(apron.status).toBe('clash');
    expect(apron.refused).toEqual(['keep-apron']);
    expect(apron.blocked.find((block) => block.option === 'keep-apron')?.reasons[0]?.clash).toContain(
      'carriage-drive',
    );
  });
});

function evaluateChoices(path: Path) {
  const { state, status } = plan(path);
  return decisions.map((decision, at) => ({
    decision: decision.id,
    options:
      status[at] === 'not-asked'
        ? []
        : decision.options.filter((_, bit) => (state.masks[at]! >> bit) & 1).map((o) => o.id),
  }));
}
