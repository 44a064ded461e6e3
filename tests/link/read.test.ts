import { describe, expect, it } from 'vitest';
import { facts } from '../../src/calc/facts.ts';
import { decisions } from '../../src/calc/guide.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { decodeComparison, decodePath } from '../../src/link/decode.ts';
import { encodePath } from '../../src/link/encode.ts';
import { pairsOf, splitColumns } from '../../src/link/pairs.ts';

const { edition } = currentEdition;
const fact = facts.find(({ show }) => show === 'length')!;
const one = decisions.find(({ many }) => !many)!;
const [answer, another] = one.options.map(({ id }) => id) as [string, string];
const long = 'x'.repeat(61);
const noted = (link: string) => {
  const { notes, readable } = decodePath(link);
  return { kinds: notes.map(({ kind }) => kind), say: notes.map(({ say }) => say).join(' '), readable };
};

describe('a link that cannot be read as it stands', () => {
  it.each(['hello', '?size=small', 'x1?size=small', '1x?size=small', '12345?', '<b>1?'])(
    'is no path: %s',
    (link) => {
      expect(noted(link)).toEqual({
        kinds: ['not-a-path'],
        say: `This link does not hold a path: “${link}”. An empty sheet is open instead.`,
        readable: false,
      });
      expect(decodePath(link).path.size).toBe('medium');
    },
  );

  it('says which version it is written in', () => {
    const { kinds, say, readable } = noted('12?size=small');
    expect({ kinds, readable }).toEqual({ kinds: ['other-version'], readable: false });
    expect(say).toContain('version 12 of the links; this site reads version 1.');
  });

  it('is repeated in sixty letters at the most', () => {
    expect(noted(long).say).toContain(`“${'x'.repeat(60)}…”`);
    expect(noted('x'.repeat(60)).say).toContain(`“${'x'.repeat(60)}”`);
  });

  it.each([
    [`${long}=1`, 'unknown-key', '…” is not a question or a figure'],
    ['edition=2001-01', 'other-edition', 'The prices of edition “2001-01” are not here.'],
    ['size=huge', 'unknown-answer', 'size of lathe: “huge” is not an answer'],
    ['size', 'unknown-answer', 'size of lathe: “” is not an answer'],
    ['=small', 'unknown-key', '“” is not a question'],
    ['have=no-such-part', 'unknown-answer', 'what you already have: “no-such-part”'],
    [`${fact.id}=12mm`, 'not-a-number', `${fact.name}: “12mm” is not a number. The typical figure is used.`],
    [`${one.id}=no-such-answer`, 'unknown-answer', `${one.name}: “no-such-answer” is not an answer`],
    [`${one.id}=${answer},${another}`, 'unknown-answer', `“${another}” is not an answer`],
    ['size=small&size=large', 'twice', '“size” stands in the link twice. The first is used.'],
    ['done=x:2027', 'unknown-answer', 'What was done: “x:2027” cannot be read. It was left out.'],
    ['allowance=2', 'unknown-answer', 'The allowance for trouble: “2” cannot be read. It was left out.'],
  ])('names the piece and leaves it out: %s', (pair, kind, say) => {
    const read = noted(`1?${pair}`);
    expect({ kinds: read.kinds, readable: read.readable }).toEqual({ kinds: [kind], readable: true });
    expect(read.say).toContain(say);
  });

  it.each(['12mm', 'x12', '', '1,5', '.', '--1', '1e1234', '.x', '1e'])('has no figure in “%s”', (text) =>
    expect(decodePath(`1?${fact.id}=${text}`).path.facts).toEqual({}),
  );
});

describe('a link', () => {
  it.each([
    ['500', 0.5],
    ['+500', 0.5],
    ['.25', 0.00025],
    ['.125', 0.000125],
    ['5e2', 0.5],
    ['5e-1', 0.0005],
  ])('holds lengths in millimetres: %s', (text, metres) => {
    const { path, notes } = decodePath(`1?${fact.id}=${text}`);
    expect(notes).toEqual([]);
    expect(path.facts[fact.id]).toBeCloseTo(metres, 12);
  });

  it('keeps the first of two answers where there is one to give', () => {
    expect(decodePath(`1?${one.id}=${answer},${another}`).path.answers).toEqual({ [one.id]: [answer] });
  });

  it('takes no notice of gaps', () => {
    const { path, notes } = decodePath('1?&size=small&&have=,&');
    expect(notes).toEqual([]);
    expect([path.size, path.owned]).toEqual(['small', []]);
  });

  it('of a path says what is owned in order, and nothing of what is not', () => {
    const { path } = decodePath('1?');
    expect(encodePath(path)).toBe(`1?edition=${edition}&size=medium`);
    const owned = ['way-oil', 'bench-drill'];
    expect(encodePath({ ...path, owned })).toContain('have=bench-drill,way-oil');
    expect(owned[0]).toBe('way-oil');
  });

  it('falls into pairs, the first of two alike counting', () => {
    expect(pairsOf('1?a=1&b&&a=2&=c&d=x=y')).toEqual([
      ['a', '1'],
      ['b', ''],
      ['', 'c'],
      ['d', 'x=y'],
    ]);
    expect(splitColumns('#a#b;c%3Bd%3be')).toEqual(['a#b', 'c', 'd', 'e']);
  });
});

describe('a comparison', () => {
  it('without a first path has no columns', () => {
    const read = decodeComparison('hello;size=small');
    expect([read.others, read.readable, read.notes.map(({ kind }) => kind)]).toEqual([
      [],
      false,
      ['not-a-path'],
    ]);
  });

  it.each([
    [1, 'holds 1 more than the 4 columns that fit. It was left out.'],
    [2, 'holds 2 more than the 4 columns that fit. They were left out.'],
  ])('says how many columns are over: %s', (over, say) => {
    const { others, notes } = decodeComparison(`1?${';size=small'.repeat(3 + over)}`);
    expect(others).toHaveLength(3);
    expect(notes.map((note) => note.say).join()).toContain(say);
  });

  it('says once what is odd in the first path, and of which column the rest is', () => {
    const { notes } = decodeComparison('1?size=huge;edition=2001-01');
    expect(notes.map(({ say }) => say)).toEqual([
      expect.stringMatching(/^size of lathe: “huge”/),
      expect.stringMatching(/^Column B: The prices of edition “2001-01”/),
    ]);
  });

  it('repeats no more than sixty letters of an alternative that it does not know', () => {
    const [note] = decodeComparison(`1?;alternative=${'y'.repeat(70)}`).notes;
    expect(note?.say).toContain(`Column B: “${'y'.repeat(60)}” is not an alternative`);
  });
});
