import { useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import { fileTypes, saveFile } from '../save-file.ts';
import { $path } from '../stores.ts';
import { today } from './day.ts';

type Way = 'csv' | 'sheet' | 'file' | 'message';

const work = () => import('./file-work.ts');

/** Does what the button says and tells how it went. */
const ways: Readonly<Record<Way, (report: Report) => Promise<string>>> = {
  csv: async (report) => {
    const { buyList, buyListCsv } = await work();
    saveFile(`buy-list-${today()}.csv`, buyListCsv(buyList(report)), fileTypes.csv);
    return 'Saved as CSV. The same file, with prices filled in, can be read back below.';
  },
  sheet: async (report) => {
    const [{ buyList }, { buyListXlsx }] = await Promise.all([work(), import('../../export/xlsx.ts')]);
    const sheet = await buyListXlsx(buyList(report));
    saveFile(`buy-list-${today()}.xlsx`, sheet, sheet.type);
    return 'Saved as a spreadsheet, with sums that work.';
  },
  file: async (report) => {
    const { buyList, buyListJson, pathFile } = await work();
    const text = pathFile($path.get(), { saved: today(), buyList: buyListJson(buyList(report)) });
    saveFile(`path-${today()}.json`, text, fileTypes.json);
    return 'Saved: every answer, figure, price and shop. This file is the safe copy.';
  },
  message: async (report) => {
    const { buyList, buyMessage } = await work();
    await navigator.clipboard.writeText(buyMessage(buyList(report), report));
    return 'Copied. Paste it into a message.';
  },
};

const BUTTONS: readonly (readonly [way: Way, say: string])[] = [
  ['file', 'Save everything as a file'],
  ['csv', 'Buy list as CSV'],
  ['sheet', 'Buy list as a spreadsheet'],
  ['message', 'Copy as a message'],
];

/** The list and the whole path as files, as a message, and on paper. */
export function TakeOut({ report }: { report: Report }) {
  const [said, setSaid] = useState('');
  const run = async (way: Way) => {
    setSaid('One moment …');
    try {
      setSaid(await ways[way](report));
    } catch {
      setSaid(
        way === 'message'
          ? 'This browser does not let us copy. Save the list as CSV instead.'
          : 'This browser could not make the file. Your prices are still here.',
      );
    }
  };
  return (
    <>
      <h3>Take it with you</h3>
      <p class="button-row">
        {BUTTONS.map(([way, say]) => (
          <button type="button" key={way} class="button" onClick={() => run(way)}>
            {say}
          </button>
        ))}
        <button type="button" class="button" onClick={() => window.print()}>
          Print the list
        </button>
      </p>
      <p role="status">{said}</p>
    </>
  );
}
