import { drive } from './glossary/drive.ts';
import { electrics } from './glossary/electrics.ts';
import { machine } from './glossary/machine.ts';
import { money } from './glossary/money.ts';
import { sensing } from './glossary/sensing.ts';
import { using } from './glossary/using.ts';
import type { Word } from './glossary/word.ts';

/** The words by where they are met; each group in alphabetical order. */
export const glossary: readonly { readonly title: string; readonly words: readonly Word[] }[] = [
  { title: 'The lathe', words: machine },
  { title: 'Screws, belts and motors', words: drive },
  { title: 'Electrics and the stop circuit', words: electrics },
  { title: 'Sensors', words: sensing },
  { title: 'Turning by program', words: using },
  { title: 'Money and this site', words: money },
];
