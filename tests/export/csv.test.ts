import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { guarded, type Separator, toCsv, unguarded } from '../../src/export/csv.ts';
import { readCsv } from '../../src/export/csv-reader.ts';

const read = (text: string, separator: Separator = ',') =>
  readCsv(text, separator).rows.map(({ cells }) => cells);

const cell = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 8 }),
  fc
    .array(fc.constantFrom("'", '"', '=', '-', '@', '\t', '\r', '\n', ',', ';', ' ', '7', '.', 'a', '＝'), {
      maxLength: 6,
    })
    .map((marks) => marks.join('')),
);
const written = fc.constantFrom<Separator>(',', ';', '\t');

/** A row without any text is passed over on reading, so the random ones hold some. */
const row = fc.tuple(
  fc.string({ minLength: 1 }).filter((text) => text.trim() !== ''),
  fc.array(cell, { maxLength: 5 }),
);

describe('comma-separated text', () => {
  test('1,000 random lists come back as they went', () => {
    fc.assert(
      fc.property(fc.array(row, { maxLength: 12 }), written, (drawn, separator) => {
        const rows = drawn.map(([first, others]) => [first, ...others]);
        expect(read(toCsv(rows, separator), separator)).toEqual(rows);
      }),
      { numRuns: 1000 },
    );
  });

  test('nothing written starts like a formula, whatever goes in', () => {
    fc.assert(
      fc.property(cell, (text) => {
        const safe = guarded(text);
        expect(unguarded(safe)).toBe(text);
        expect(/^[=+\-@\t\r]/.test(safe) && !/^[+-]?\d+(\.\d+)?$/.test(safe)).toBe(false);
      }),
      { numRuns: 2000 },
    );
  });

  // Each pair by the rules of RFC 4180, section 2.
  it.each([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
    ['a, b ,c', [['a', ' b ', 'c']]],
  ])('reads %j as RFC 4180 has it', (text, rows) => {
    expect(read(text)).toEqual(rows);
  });

  it.each(['=1+1', '+49 30', '-2+3', '@SUM(A1)', '\t=1', '\r=1', ' =1', '＝1', "'=1"])(
    'guards %j',
    (text) => {
      expect(guarded(text)).toBe(`'${text}`);
    },
  );

  it.each(['-12.50', '+3', '7', 'a=b', "'tis", 'x-1', ''])('leaves %j alone', (text) => {
    expect(guarded(text)).toBe(text);
  });

  test('a quotation mark that is never closed is named by its line, and what stands before it is kept', () => {
    const table = readCsv('a,b\nc,d\n"e,f\ng,h\n', ',');
    expect(table.rows.map(({ cells }) => cells)).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
    expect(table.openQuote).toBe(3);
  });

  test('a quotation mark in the middle of a cell stands for itself', () => {
    expect(read('6" chuck,1\n"6"" chuck"x,2')).toEqual([
      ['6" chuck', '1'],
      ['6" chuckx', '2'],
    ]);
  });

  test('a row knows the line it starts in, line ends inside cells counted', () => {
    const { rows } = readCsv('a\r\n"b\nb"\r\n\r\nc', ',');
    expect(rows.map(({ line }) => line)).toEqual([1, 2, 5]);
  });

  test('reading stops at the number of rows asked for, and says so', () => {
    expect(readCsv('a\nb\nc\n', ',', 2)).toMatchObject({
      cut: true,
      rows: [{ cells: ['a'] }, { cells: ['b'] }],
    });
    expect(readCsv('a\nb\n', ',', 2).cut).toBe(false);
  });
});
