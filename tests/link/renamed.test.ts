import { describe, expect, it, vi } from 'vitest';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodeComparison } from '../../src/link/comparison.ts';
import { decodeComparison, decodePath } from '../../src/link/decode.ts';
import { encodePath } from '../../src/link/encode.ts';
import { calledIn } from '../../src/link/grammar.ts';

/** Ids that were never in use, as if the trade had renamed them: a question, an option, a figure, a part, a task. */
const { fake } = vi.hoisted(() => ({
  fake: {
    'what-drives-it': 'control',
    'card-in-a-computer': 'motion-card-pc',
    'over-the-bed': 'swing',
    'clock-gauge': 'clock',
    clock: 'dial-indicator',
    'first-list': 'write-job-list',
  } as Record<string, string>,
}));

vi.mock('../../src/link/grammar.ts', async (original) => {
  const grammar = await original<typeof import('../../src/link/grammar.ts')>();
  return { ...grammar, renamed: fake, nowCalled: (id: string) => grammar.calledIn(fake, id) };
});

const { path: whole } = referencePaths[0]!;
const path = { ...whole, edition: currentEdition.edition, owned: ['dial-indicator'] };
const link = encodePath(path);

describe('a link from before a word was renamed', () => {
  it('opens to the words of today, in every kind of piece', () => {
    const old =
      '1?what-drives-it=card-in-a-computer&over-the-bed=250&have=clock-gauge&done=first-list:20270104&orders=clock-gauge:quoted/12';
    const { path: read, notes } = decodePath(old);
    expect(notes).toEqual([]);
    expect(read.answers).toEqual({ control: ['motion-card-pc'] });
    expect(read.facts).toEqual({ swing: 0.25 });
    expect(read.owned).toEqual(['dial-indicator']);
    expect(read.progress?.done).toEqual({ 'write-job-list': '2027-01-04' });
    expect(read.purchases).toEqual({ 'dial-indicator': { state: 'quoted', price: '12' } });
  });

  it('says the same in a comparison, and of two names for one thing the first counts', () => {
    const [first, other] = [path, { ...path, size: 'small' as const }];
    const now = encodeComparison(first, [{ kind: 'path', path: other }]);
    const old = now.replace('control=', 'what-drives-it=').replace('have=dial-indicator', 'have=clock-gauge');
    expect(old).not.toBe(now);
    expect(decodeComparison(old)).toEqual(decodeComparison(now));
    const { path: read, notes } = decodePath('1?what-drives-it=card-in-a-computer&control=small-board');
    expect(read.answers).toEqual({ control: ['motion-card-pc'] });
    expect(notes).toHaveLength(1);
  });
});

describe('a link with a word that is no longer in use', () => {
  const untouched = encodePath(decodePath(link).path);

  it.each([
    ['a question', `${link}&gone-question=gone-option`, ['“gone-question”']],
    ['a figure', `${link}&gone-figure=12.5`, ['“gone-figure”']],
    ['a part', link.replace('have=', 'have=gone-part,'), ['“gone-part”']],
    ['a part on order', `${link}&orders=gone-part:quoted/12`, ['“gone-part:quoted/12”']],
    ['a risk', `${link}&chances=gone-risk:0.5`, ['“gone-risk:0.5”']],
  ])('%s: it is listed, and nothing else is lost', (_, old, said) => {
    const { path: read, notes } = decodePath(old);
    expect(notes.map(({ say }) => say)).toEqual(said.map((word) => expect.stringContaining(word)));
    expect(encodePath(read)).toBe(untouched);
    expect(evaluate(read, currentEdition).money).toEqual(evaluate(path, currentEdition).money);
  });

  it('an option: it is listed, the question is open, and every other answer stands', () => {
    const { path: read, notes } = decodePath(link.replace(/control=[^&]+/, 'control=gone-option'));
    const { control: _, ...others } = path.answers;
    expect(notes.map(({ say }) => say)).toEqual([expect.stringMatching(/“gone-option”.*question is open/)]);
    expect(read.answers).toEqual(others);
  });
});

describe('the table of old and new names', () => {
  it('leads from the oldest name to the newest, and goes round no circle for ever', () => {
    expect(calledIn(fake, 'clock-gauge')).toBe('dial-indicator');
    expect(calledIn(fake, 'control')).toBe('control');
    expect(calledIn(fake, 'toString')).toBe('toString');
    expect(['a', 'b']).toContain(calledIn({ a: 'b', b: 'a' }, 'a'));
  });
});
