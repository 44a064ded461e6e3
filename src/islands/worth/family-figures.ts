import type { Family } from '../../calc/core/family.ts';
import { parseFigure } from '../lathe/parse.ts';
import { plain } from '../shared/format.ts';

const MINUTES = 60;
/** What a file may hold of any of these. */
const MOST = 1_000_000;

/** One figure of a family: where it stands, how it is called, and what it is counted in on screen. */
export interface FamilyFigure {
  readonly id: string;
  readonly label: string;
  readonly hint?: string;
  readonly unit: 'pieces' | 'a year' | 'min' | 'dollars';
  readonly get: (family: Family) => number | undefined;
  readonly set: (family: Family, value: number) => Family;
  readonly clear?: (family: Family) => Family;
}

const byHand = (field: keyof Family['byHand']) => ({
  get: ({ byHand }: Family) => byHand[field],
  set: (family: Family, value: number): Family => ({
    ...family,
    byHand: { ...family.byHand, [field]: value },
  }),
});

const byProgram = (field: keyof Family['byProgram']) => ({
  get: ({ byProgram }: Family) => byProgram[field],
  set: (family: Family, value: number): Family => ({
    ...family,
    byProgram: { ...family.byProgram, [field]: value },
  }),
});

function withoutPrice({ outsidePrice: _, ...family }: Family): Family {
  return family;
}

export const familyFigures: Readonly<Record<'many' | 'hand' | 'program', readonly FamilyFigure[]>> = {
  many: [
    {
      id: 'pieces',
      label: 'Pieces in a batch',
      unit: 'pieces',
      get: ({ piecesPerBatch }) => piecesPerBatch,
      set: (family, piecesPerBatch) => ({ ...family, piecesPerBatch }),
    },
    {
      id: 'batches',
      label: 'Batches a year',
      unit: 'a year',
      get: ({ batchesPerYear }) => batchesPerYear,
      set: (family, batchesPerYear) => ({ ...family, batchesPerYear }),
    },
    {
      id: 'price',
      label: 'Price outside, for one',
      hint: 'Empty: nobody was asked.',
      unit: 'dollars',
      get: ({ outsidePrice }) => outsidePrice,
      set: (family, outsidePrice) => ({ ...family, outsidePrice }),
      clear: withoutPrice,
    },
  ],
  hand: [
    { id: 'hand-set-up', label: 'Set-up of a batch', unit: 'min', ...byHand('setUp') },
    { id: 'hand-piece', label: 'One piece', unit: 'min', ...byHand('piece') },
  ],
  program: [
    {
      id: 'first-set-up',
      label: 'First set-up',
      hint: 'With the program still to be written.',
      unit: 'min',
      ...byProgram('firstSetUp'),
    },
    {
      id: 'later-set-up',
      label: 'Later set-ups',
      hint: 'When the same part comes back.',
      unit: 'min',
      ...byProgram('setUp'),
    },
    {
      id: 'attended',
      label: 'One piece, standing by',
      hint: 'Only the minutes that need you there.',
      unit: 'min',
      ...byProgram('attended'),
    },
  ],
};

export type FamilyReading =
  | { readonly kind: 'empty' }
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'unreadable'; readonly say: string };

const IN_HOURS = /\s*h(ours?)?\.?$/i;
const SPELT = /\s*(h(ours?)?|min(utes?)?|pieces?|pcs|\$|dollars?)\.?$/i;

/** Reads what was typed in a figure's own unit: "20", "20 min", "1.5 h", "$ 4.50". Minutes come back as hours. */
export function readFamilyFigure({ unit, clear }: FamilyFigure, typed: string): FamilyReading {
  const inHours = unit === 'min' && IN_HOURS.test(typed);
  const bare = typed
    .trim()
    .replace(/^\$\s*/, '')
    .replace(SPELT, '');
  const read = parseFigure(bare, 'count', 'metric');
  if (read.kind === 'empty') return clear ? read : { kind: 'unreadable', say: 'A figure is needed here.' };
  if (read.kind === 'unreadable') return read;
  if (read.value > MOST) return { kind: 'unreadable', say: 'Type a figure under a million.' };
  if (unit === 'pieces' && read.value < 1)
    return { kind: 'unreadable', say: 'A batch has at least one piece.' };
  return { kind: 'value', value: unit === 'min' && !inHours ? read.value / MINUTES : read.value };
}

/** The figure as it stands in its field; empty where there is none. */
export function familyFigureText({ unit, get }: FamilyFigure, family: Family): string {
  const value = get(family);
  if (value === undefined) return '';
  return plain(unit === 'min' ? value * MINUTES : value, 2).replaceAll(',', '');
}
