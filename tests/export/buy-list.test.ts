import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { buyColumns, buyTable } from '../../src/export/buy-columns.ts';
import { buyListCsv, buyListJson } from '../../src/export/buy-files.ts';
import { type BuyRow, buyList, type Paid, SUM_OF } from '../../src/export/buy-list.ts';
import { readCsv } from '../../src/export/csv-reader.ts';
import { pathFile } from '../../src/export/json.ts';
import { buyMessage } from '../../src/export/message.ts';
import { fileShape } from '../../src/export/path-schema.ts';
import { readQuotes } from '../../src/export/read-csv.ts';
import { readPathFile } from '../../src/export/read-json.ts';
import { buyListXlsx } from '../../src/export/xlsx.ts';
import { bigPath, bigReport } from './big-list.ts';
import { readSheets, workedOut } from './sheet-reader.ts';

const list = buyList(bigReport);
const ends = ['low', 'likely', 'high'] as const;
const columnOf = (key: string) => buyColumns.findIndex((column) => column.key === key);
const sum = (amounts: readonly (string | undefined)[]) =>
  amounts.reduce((total, amount) => total.plus(amount ?? 'NaN'), new Decimal(0)).toFixed(2);
const of = (paid: Paid) => list.rows.filter((row) => row.paid === paid);

describe('a list of sixty lines with twenty quotes', () => {
  test('is as long as that', () => {
    expect(list.rows.length).toBeGreaterThanOrEqual(60);
    expect(list.rows.filter(({ price }) => price !== '')).toHaveLength(20);
  });

  test('sums to the cent what its lines say, and agrees with the report', () => {
    for (const total of list.totals) {
      expect(total.lines).toBe(of(total.paid).length);
      for (const end of ends) expect(total[end]).toBe(sum(of(total.paid).map(({ line }) => line[end])));
    }
    const once = list.totals.find(({ paid }) => paid === 'once')!;
    expect([once.low, once.likely, once.high].map(Number)).toEqual(bigReport.money.parts.goods);
  });

  test('the parts of the total and of every order add up, and agree with the report', () => {
    expect(sum(list.average.parts.map(({ amount }) => amount))).toBe(list.average.total);
    expect(list.orders.length).toBeGreaterThan(2);
    for (const { goods, carriage, tax, duty, total } of list.orders)
      for (const end of ends) expect(sum([goods, carriage[end], tax[end], duty[end]])).toBe(total[end]);
    const spent = list.orders.filter(({ state }) => state === 'spent');
    const priced = (states: readonly string[]) =>
      sum(
        bigReport.bill.once
          .filter(({ purchase }) => purchase && states.includes(purchase.state))
          .map(({ purchase }) => purchase!.goods),
      );
    expect(sum(spent.map(({ goods }) => goods))).toBe(priced(['ordered', 'arrived', 'checked']));
  });

  test('says by when to order only where something is still to be ordered', () => {
    for (const { id, state, orderBy, paid } of list.rows) {
      const line = bigReport.bill.once.find(({ part }) => part === id);
      if (state === 'have' || paid === 'comes back') expect(orderBy).toBe('');
      else if (line && (state === 'need' || state === 'quoted'))
        expect(orderBy).toBe(line.orderBy.dates?.slow);
      else if (line?.packs === 0) expect(orderBy).toBe('');
    }
    const undated = buyList({ ...evaluate({ ...bigPath, start: undefined }, currentEdition) });
    expect(
      undated.rows.some(({ orderBy }) => /^\d+ days? (before|after) the start of the work$/.test(orderBy)),
    ).toBe(true);
  });

  test('in CSV: the last lines are the exact sums of the lines above', () => {
    const [heads, ...lines] = readCsv(buyListCsv(list).slice(1), ',').rows.map(({ cells }) => cells);
    expect(heads).toEqual(buyColumns.map(({ head }) => head));
    const sums = lines.filter((cells) => cells[columnOf('item')]!.startsWith(SUM_OF));
    expect(sums).toHaveLength(list.totals.length);
    for (const cells of sums)
      for (const end of ends) {
        const same = lines.filter(
          (line) => !sums.includes(line) && line[columnOf('paid')] === cells[columnOf('paid')],
        );
        expect(cells[columnOf(end)]).toBe(sum(same.map((line) => line[columnOf(end)])));
      }
  });

  test('in CSV: cells that a spreadsheet would run are guarded, and come back as they were', () => {
    const text = buyListCsv(list);
    expect(text).toContain("'=SUM(A1:A9)");
    expect(text).toContain("'+49 30 1234");
    const back = readCsv(text.slice(1), ',').rows.slice(1, 1 + list.rows.length);
    expect(back.map(({ cells }) => cells)).toEqual(buyTable(list).rows);
  });

  test.each([',', ';', '\t'] as const)(
    'in CSV with %j: reading it back proposes the same purchases',
    (separator) => {
      const wanted = list.rows.map(({ id }) => id);
      const text = buyListCsv(list, { separator });
      const { matched, unmatched } = readQuotes(text, { wanted, currency: 'USD' });
      expect(unmatched).toEqual([]);
      expect(Object.fromEntries(matched.map(({ part, purchase }) => [part, purchase]))).toEqual(
        bigPath.purchases,
      );
      expect(matched.flatMap(({ remarks }) => remarks)).toEqual([]);
    },
  );

  test('in JSON: the rows and sums agree, the file keeps its schema, and the path comes back whole', () => {
    const text = pathFile(bigPath, { name: 'Sixty lines', buyList: buyListJson(list) });
    const file = fileShape.parse(JSON.parse(text));
    const { rows, totals } = file['buy-list']!;
    for (const total of totals)
      for (const end of ends)
        expect(total[end]).toBe(sum(rows.filter(({ paid }) => paid === total.paid).map((row) => row[end])));
    const { path, notes } = readPathFile(text);
    expect(notes).toEqual([]);
    expect(path).toEqual(bigPath);
  });
});

describe('the same list as a spreadsheet file, read back from its XML', async () => {
  const sheets = await readSheets(await buyListXlsx(list));
  const named = { once: 'Buy list', 'comes back': 'Comes back', 'every year': 'Every year' } as const;
  const sheetOf = (paid: Paid) => sheets.find(({ name }) => name === named[paid])!;
  const letter = (key: string) => {
    const at = columnOf(key);
    return at < 26 ? String.fromCharCode(65 + at) : `A${String.fromCharCode(65 + at - 26)}`;
  };

  test('has a sheet for each kind of line, for the orders and for what it comes to', () => {
    const names = [...list.totals.map(({ paid }) => named[paid]), 'Orders', 'On average'];
    expect(sheets.map(({ name }) => name)).toEqual(names);
    expect(sheets.at(-1)?.cells.get('A7')?.text).toContain(bigReport.edition.basis);
  });

  test.each(list.totals)('paid $paid: the formulas of the last row add up the cells above', (total) => {
    const sheet = sheetOf(total.paid);
    expect(sheet.rows).toBe(total.lines + 2);
    for (const end of ends) {
      const cell = sheet.cells.get(`${letter(end)}${total.lines + 2}`)!;
      expect(cell.formula).toBe(`SUM(${letter(end)}2:${letter(end)}${total.lines + 1})`);
      expect(cell.format).toBe('[$$-409]#,##0.00');
      expect(workedOut(sheet, `${letter(end)}${total.lines + 2}`).toFixed(2)).toBe(total[end]);
    }
  });

  test('every formula of every sheet comes to the figure that stands beside it', () => {
    const formulas = sheets.flatMap((sheet) =>
      [...sheet.cells]
        .filter(([, { formula }]) => formula)
        .map(([address, { number }]) => ({ sheet, address, number })),
    );
    expect(formulas.length).toBe(3 * list.totals.length + 3 * list.orders.length + 13 + 1);
    for (const { sheet, address, number } of formulas)
      expect(new Decimal(number ?? 'NaN').equals(workedOut(sheet, address))).toBe(true);
  });

  test('the orders add up to their totals, and the parts to what everything comes to', () => {
    const orders = sheets.find(({ name }) => name === 'Orders')!;
    for (const [at, { total }] of list.orders.entries())
      expect(['N', 'O', 'P'].map((column) => workedOut(orders, `${column}${at + 2}`).toFixed(2))).toEqual(
        ends.map((end) => total[end]),
      );
    expect(workedOut(sheets.at(-1)!, 'B6').toFixed(2)).toBe(list.average.total);
  });

  test('the heads are held in view, and every cell is the row’s own', () => {
    const sheet = sheetOf('once');
    expect(sheet.frozen).toBe(1);
    for (const [at, row] of of('once').entries())
      for (const { key, kind, text } of buyColumns) {
        const cell = sheet.cells.get(`${letter(key)}${at + 2}`);
        const said = text(row);
        if (said === '') expect(cell).toBeUndefined();
        else if (kind === 'text') expect(cell?.text).toBe(said);
        else if (kind !== 'day') expect(new Decimal(cell!.number!).equals(said)).toBe(true);
      }
  });

  const cellAt = (find: (row: BuyRow) => boolean, key: string) => {
    const at = of('once').findIndex(find);
    return sheetOf('once').cells.get(`${letter(key)}${at + 2}`)!;
  };

  test('prices carry the currency they were typed in, days are days, and formulas typed by hand stay text', () => {
    expect(cellAt(({ currency }) => currency === 'EUR', 'price').format).toBe('[$EUR] #,##0.00');
    expect(cellAt(({ currency }) => currency === 'USD', 'price').format).toBe('[$$-409]#,##0.00');
    const day = cellAt(({ date }) => date === '2026-11-01', 'date');
    // 1 November 2026 is day 46327 of the 1900 date system: 1 January 1970 is day 25569 (ECMA-376, part 1, 18.17.4).
    expect([day.number, day.format]).toEqual(['46327', 'yyyy-mm-dd']);
    const formula = cellAt(({ seller }) => seller.startsWith('='), 'seller');
    expect([formula.text, formula.formula]).toEqual(['=SUM(A1:A9)', undefined]);
  });
});

describe('the same list as a message', () => {
  const text = buyMessage(list, bigReport);
  const amounts = (line: string) =>
    [...line.matchAll(/\$([\d,]+\.\d\d)/g)].map(([, amount = '']) => amount.replaceAll(',', ''));

  test('its sums are those of its lines', () => {
    const lines = text.split('\n').filter((line) => line.startsWith('- '));
    expect(lines).toHaveLength(list.rows.length);
    let from = 0;
    for (const { paid, lines: count, low, high } of list.totals) {
      const own = lines.slice(from, from + count).map(amounts);
      from += count;
      expect(sum(own.map(([first]) => first ?? '0'))).toBe(low);
      expect(sum(own.map((both) => both.at(-1) ?? '0'))).toBe(high);
      expect(text).toContain(
        paid === 'comes back' ? 'Sum of lines that come back' : `Sum of lines paid ${paid}`,
      );
    }
  });

  test('says what is exact, what is a range, and that these are planning figures', () => {
    expect(text).toMatch(/Paid or ordered: \$[\d,]+\.\d\d exactly/);
    expect(text).toMatch(/Everything in: \$[\d,]+ to \$[\d,]+ in 16 of 20 ways/);
    expect(text).toContain(`Planning figures, edition ${bigReport.edition.id}`);
  });

  test('of what is still to buy leaves out what is ordered or owned', () => {
    const short = buyMessage(list, bigReport, 'still to buy');
    expect(short).not.toMatch(/; (in the drawer|ordered|arrived|checked)\b/);
    expect(short).toContain('; quoted');
  });
});
