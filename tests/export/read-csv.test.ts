import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { parts } from '../../src/calc/trade.ts';
import { decodeText, readFileText } from '../../src/export/file-text.ts';
import { readQuotes } from '../../src/export/read-csv.ts';

const wanted = parts.slice(0, 40).map(({ id }) => id);
const [first, second] = parts as [(typeof parts)[0], (typeof parts)[0]];
const read = (text: string, currency = 'EUR') => readQuotes(text, { wanted, currency });
const says = ({ notes }: { notes: readonly { say: string }[] }) => notes.map(({ say }) => say).join('\n');

describe('a list of quotes', () => {
  test('of our own is matched by id', () => {
    const text = `Item id,Item,State,Your price,Per,Currency,Quantity,Seller,Date,Note\r\n${first.id},${first.name},ordered,12.50,pack,USD,3,Corner shop,2026-11-03,blue one\r\n`;
    const { matched, unmatched, sellers, notes } = read(text);
    expect(unmatched).toEqual([]);
    expect(notes).toEqual([]);
    expect(sellers).toEqual(['Corner shop']);
    expect(matched).toEqual([
      {
        part: first.id,
        how: 'id',
        row: 2,
        remarks: [],
        purchase: {
          state: 'ordered',
          price: '12.50',
          per: 'pack',
          currency: 'USD',
          qty: 3,
          date: '2026-11-03',
          seller: 'Corner shop',
          note: 'blue one',
        },
      },
    ]);
  });

  test('of a shop, with semicolons, commas for cents and an address above, is matched by whole name', () => {
    const text = `Eisenwaren am Eck\nBestellung 4711\n\nArtikel;Menge;Einzelpreis (EUR);Gesamtpreis\n"${first.name.toUpperCase()}";2;1.012,50;2.025,00\nVersand;1;4,90;4,90\n`;
    const { matched, unmatched } = read(text, 'USD');
    expect(matched).toEqual([
      {
        part: first.id,
        how: 'name',
        row: 5,
        remarks: [],
        purchase: { state: 'quoted', price: '1012.50', per: 'unit', currency: 'EUR', qty: 2 },
      },
    ]);
    expect(unmatched).toHaveLength(1);
    expect(unmatched[0]).toMatchObject({ row: 6, reason: 'No part of the list bears this name.' });
  });

  test('with a total and no unit price is the price of the line', () => {
    const { matched, notes } = read(`item\tqty\ttotal\n${first.name}\t4\t80.00`);
    expect(matched[0]?.purchase).toEqual({
      state: 'quoted',
      price: '80.00',
      per: 'line',
      currency: 'EUR',
      qty: 4,
    });
    expect(says({ notes })).toMatch(/without a currency were read as EUR/);
  });

  test('words in common only suggest', () => {
    const [one] = first.name.split(' ');
    const { matched, unmatched } = read(`item,price\n${one} bar bracket thing,5.00`);
    expect(matched).toEqual([]);
    expect(unmatched[0]?.suggestions).toContain(first.id);
    expect(unmatched[0]?.purchase).toMatchObject({ price: '5.00' });
  });

  test('a part named twice is taken once, and the second row is listed with its price', () => {
    const { matched, unmatched } = read(`item,price\n${first.name},5.00\n${first.name},6.00`);
    expect(matched.map(({ purchase }) => purchase.price)).toEqual(['5.00']);
    expect(unmatched[0]).toMatchObject({
      row: 3,
      purchase: { price: '6.00' },
      reason: expect.stringContaining('row 2'),
    });
  });

  test('where unit price and total disagree it is asked about', () => {
    const { matched } = read(`item,qty,price,total\n${first.name},10,5.00,5.00`);
    expect(matched[0]?.remarks).toEqual([
      '5.00 × 10 is 50.00, and the row says 5.00. Is the price for a pack?',
    ]);
  });

  test('a part that the plan does not want is said', () => {
    const other = parts.at(-1)!;
    expect(read(`item id,item,price\n${other.id},x,1.00`).matched[0]?.remarks).toEqual([
      'This part is not on the buy list of this plan.',
    ]);
  });

  test('a day that could be two is left out and said', () => {
    const { matched } = read(`item,price,date\n${first.name},1.00,03/04/2026`);
    expect(matched[0]?.purchase.date).toBeUndefined();
    expect(matched[0]?.remarks[0]).toMatch(/day or month first/);
  });

  test('the money of the whole file tells the mark of the cents; where it contradicts itself nothing is guessed', () => {
    expect(read(`item;price\n${first.name};1.234\n${second.name};9,50`).matched[0]?.purchase.price).toBe(
      '1234',
    );
    const torn = read(`item;price\n${first.name};1.234\n${second.name};9,50\nx;9.50`);
    expect(torn.unmatched.map(({ row, reason }) => [row, reason])[0]).toEqual([
      2,
      '“1.234” can be read in two ways.',
    ]);
  });

  it.each([
    ['twelve', 'not a number'],
    ['-5.00', 'below zero'],
    ['NaN', 'not a number'],
    ['1e999', 'not a number'],
    ['=2+3', 'not'],
    ['¥5', 'more than one currency'],
  ])('a price of %s is listed with its row and the reason', (price, reason) => {
    const { matched, unmatched } = read(`item,price\n${first.name},${price}`);
    expect(matched).toEqual([]);
    expect(unmatched[0]).toMatchObject({ row: 2, reason: expect.stringContaining(reason) });
  });

  it.each([
    ['no heads', 'a,b\n1,2', /No row of heads/],
    ['nothing', '', /No row of heads/],
    ['heads only', 'item,price\n', /no rows below/],
    [
      'a quotation mark never closed',
      `item,price\n${first.name},5.00\n"x,6.00\ny,7.00`,
      /row 3 is never closed/,
    ],
    ['5,001 rows', `item,price\n${'x,1\n'.repeat(5001)}`, /more than 5000 rows/],
    ['10 MB', `item,price\n${'x,1\n'.repeat(2_500_000)}`, /10\.0 MB/],
  ])('with %s comes to a message', (_, text, message) => {
    expect(says(read(text))).toMatch(message);
  });

  test('prototype names as cells and heads reach nothing', () => {
    const text = '__proto__,item,price,constructor\nx,__proto__,5.00,y\nx,constructor,5.00,y\n';
    const { matched, unmatched } = read(`${text}`);
    expect(matched).toEqual([]);
    expect(unmatched).toHaveLength(2);
    expect(read(`item,price,seller\n${first.name},5.00,constructor`).unmatched[0]?.reason).toMatch(/seller/);
  });

  test('random text never throws and never gives a purchase that a saved path could not hold', () => {
    const bit = fc.constantFrom(
      'item',
      'price',
      'qty',
      ',',
      ';',
      '\n',
      '"',
      "'",
      '=',
      '5',
      '1.234',
      first.name,
      '\t',
      '€',
      'x',
    );
    fc.assert(
      fc.property(fc.array(bit, { maxLength: 40 }), (bits) => {
        const { matched, unmatched, notes } = read(`item,price\n${bits.join('')}`);
        expect(matched.length + unmatched.length + notes.length).toBeGreaterThan(0);
        for (const { purchase } of matched) expect(purchase.price ?? '0').toMatch(/^\d{1,12}(\.\d{1,6})?$/);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('the bytes of a file', () => {
  const word = 'Träger für 5 € – “x”';
  const bytes = (...values: number[]) => new Uint8Array(values);
  const utf16 = (text: string, low: boolean) => {
    const units = [0xfeff, ...Array.from(text, (_, at) => text.charCodeAt(at))];
    return bytes(...units.flatMap((unit) => (low ? [unit & 255, unit >> 8] : [unit >> 8, unit & 255])));
  };

  test('are read as UTF-8, as UTF-16 where marked so, else as Windows-1252, which is said', () => {
    const plain = new TextEncoder().encode(word);
    expect(decodeText(plain)).toEqual({ text: word, notes: [] });
    expect(decodeText(bytes(0xef, 0xbb, 0xbf, ...plain)).text).toBe(word);
    expect(decodeText(utf16(word, true)).text).toBe(word);
    expect(decodeText(utf16(word, false)).text).toBe(word);
    const western = decodeText(bytes(0x54, 0x72, 0xe4, 0x67, 0x65, 0x72, 0x20, 0x80));
    expect(western.text).toBe('Träger €');
    expect(says(western)).toMatch(/Windows-1252/);
  });

  it.each([
    ['NUL bytes', bytes(0x61, 0, 0x62)],
    ['half of a UTF-16 letter', bytes(0xff, 0xfe, 0x61)],
    ['a zip archive', bytes(0x50, 0x4b, 3, 4, 0, 0, 8, 0)],
  ])('with %s are refused with a message', (_, damaged) => {
    expect(decodeText(damaged).text).toBeUndefined();
    expect(says(decodeText(damaged))).toMatch(/Nothing was changed/);
  });

  test('a file of 10 MB is refused before it is read', async () => {
    const file = {
      size: 10_000_000,
      arrayBuffer: () => Promise.reject(new Error('read')),
    } as unknown as Blob;
    expect(says(await readFileText(file))).toMatch(/10\.0 MB/);
  });

  test('a file that cannot be read is said', async () => {
    const file = { size: 1, arrayBuffer: () => Promise.reject(new Error('gone')) } as unknown as Blob;
    expect(says(await readFileText(file))).toMatch(/could not read/);
  });

  test('random bytes never throw', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), (some) => void decodeText(some)),
      { numRuns: 1000 },
    );
  });
});
