import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PairSide } from '../../../src/calc/comparing.ts';
import { type Measure, mirrored, saySide, sayTie } from '../../../src/islands/compare/pair-words.ts';

function sideFrom(values: readonly number[]): PairSide {
  const twenty = values.toSorted((a, b) => a - b);
  const [above, below] = [twenty.filter((n) => n > 0).length, twenty.filter((n) => n < 0).length];
  const [p10, p50, p90] = [twenty[2]!, (twenty[9]! + twenty[10]!) / 2, twenty[17]!];
  const reading = p10 === 0 && p90 === 0 ? 'tie' : p10 >= 0 ? 'above' : p90 <= 0 ? 'below' : 'tie';
  const ends = { from: twenty[5]!, to: twenty[14]!, p10, p50, p90 };
  return { above, below, same: 20 - above - below, ...ends, reading, twenty };
}

const anySide = fc
  .array(fc.oneof(fc.integer({ min: -3000, max: 3000 }), fc.constant(0)), { minLength: 20, maxLength: 20 })
  .map(sideFrom);

const figure = (text: string): number => (text === 'nothing' ? 0 : Number(text.replace(/[^\d.]/g, '')));

/** What a sentence claims of the first less the second: the middle half and how often it is the larger. */
function claimOf(sentence: string) {
  const sign = /more than|more hours than/.test(sentence) ? 1 : -1;
  const count = Number(/in (\d+) of 20/.exec(sentence)?.[1]);
  const even = / and (less|fewer) in/.test(sentence);
  const half = sentence.split('half of the time ')[1] ?? '';
  const both = /between (\S+)(?: h)? (?:less|fewer) and (\S+)(?: h)? more/.exec(half);
  const toSame = /between (\S+)(?: h)? (less|fewer|more) and the same/.exec(half);
  const one = /by between (\S+?)(?: h)? and (\S+?)(?: h)?\.$/.exec(half);
  const about = /by about (\S+?)(?: h)?\.$/.exec(half);
  let ends = [0, 0];
  if (both) ends = [-figure(both[1]!), figure(both[2]!)];
  else if (toSame) ends = [0, (toSame[2] === 'more' ? 1 : -1) * figure(toSame[1]!)];
  else if (one) ends = [sign * figure(one[1]!), sign * figure(one[2]!)];
  else if (about) ends = [sign * figure(about[1]!), sign * figure(about[1]!)];
  return { sign: even ? 0 : sign, count, ends: ends.map((n) => n + 0).toSorted((a, b) => a - b) };
}

const turned = ({ sign, count, ends }: ReturnType<typeof claimOf>) => ({
  sign: 0 - sign,
  count,
  ends: ends.map((n) => 0 - n).toSorted((a, b) => a - b),
});

describe('two columns in a sentence', () => {
  test('a clear case, a near tie and a sure one', () => {
    const near = sideFrom([
      -400, -200, -100, -60, -20, 0.5, 20, 40, 60, 80, 100, 120, 150, 200, 250, 260, 300, 400, 500, 600,
    ]);
    expect(saySide('money', near, 'A', 'B')).toBe(
      'A costs more than B in 15 of 20 ways it could turn out; half of the time by between nothing and $250.',
    );
    const sure = sideFrom(Array.from({ length: 20 }, (_, at) => 1000 + 60 * at));
    expect(saySide('money', sure, 'A', 'C')).toBe(
      'A costs more than C in 20 of 20 ways it could turn out; half of the time by between $1,300 and $1,800.',
    );
    const hours = sideFrom([
      -30, -25, -20, -16, -14, -12, -10, -9, -8, -7, -6, -5, -3, -1, 0.2, 2, 3, 4, 5, 6,
    ]);
    expect(saySide('hours', hours, 'A', 'B')).toBe(
      'A takes fewer hours than B in 14 of 20 ways it could turn out; half of the time between 12 h fewer and 0.2 h more.',
    );
    expect(saySide('money', sideFrom(Array(20).fill(0)), 'A', 'B')).toBe(
      'A and B cost the same in all 20 ways it could turn out.',
    );
  });

  test('seen from the other side it claims the same', () => {
    fc.assert(
      fc.property(anySide, fc.constantFrom<Measure>('money', 'hours'), (side, measure) => {
        fc.pre(side.same < 20);
        const back = mirrored({ a: 0, b: 1, money: side, hours: side })[measure];
        const [here, there] = [saySide(measure, side, 'A', 'B'), saySide(measure, back, 'B', 'A')];
        expect(claimOf(there)).toEqual(turned(claimOf(here)));
      }),
    );
  });

  test('a tie is called one, in money, in hours or in both, and says what is left to choose on', () => {
    const tie = sideFrom([-9, -8, -7, -6, -5, -4, -3, -2, -1, -1, 1, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
    const clear = sideFrom(Array.from({ length: 20 }, (_, at) => 100 + at));
    const pair = (money: PairSide, hours: PairSide) => ({ a: 0, b: 1, money, hours });
    expect(sayTie(pair(tie, tie), ['Threads', 'Checks'])).toBe(
      'A tie in money and in hours, within what anyone can know today. Choose on threads, checks and what you like to build.',
    );
    expect(sayTie(pair(tie, clear), [])).toBe(
      'A tie in money, within what anyone can know today. Choose on what you like to build.',
    );
    expect(sayTie(pair(clear, tie), ['Threads'])).toBe('A tie in hours, within what anyone can know today.');
    expect(sayTie(pair(clear, clear), ['Threads'])).toBe('');
  });
});
