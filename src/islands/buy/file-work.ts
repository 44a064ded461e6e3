/** Reading and writing files, with the checks of what is read; a page loads it when a file is asked for. */
export { buyListCsv, buyListJson } from '../../export/buy-files.ts';
export { buyList } from '../../export/buy-list.ts';
export { readFileText } from '../../export/file-text.ts';
export { pathFile } from '../../export/json.ts';
export { buyMessage } from '../../export/message.ts';
export { type QuoteProposal, readQuotes } from '../../export/read-csv.ts';
export { type ReadFile, readPathFile } from '../../export/read-json.ts';
