import { MOST_COMPARED } from '../calc/core/compared.ts';
import { emptyPath } from '../calc/core/path.ts';
import { evaluate } from '../calc/evaluate.ts';
import { facts } from '../calc/facts.ts';
import { formulas } from '../calc/formulas/registry.ts';
import { decisions } from '../calc/guide.ts';
import { figureWords, halfOf } from '../components/starting/figures.ts';
import { alternatives } from '../content/alternatives.ts';
import { currentEdition, editions } from '../content/edition.ts';
import { fullConversion } from '../content/example-owner.ts';
import { glossary } from '../content/glossary.ts';
import { inventedOwners } from '../content/invented-owners.ts';
import { leftOut } from '../content/left-out.ts';
import { trustPages } from '../content/trust-pages.ts';
import { counted, weeksRange } from '../islands/shared/format.ts';
import type { PictureFigure } from './picture.ts';

const one = (label: string, value: string): PictureFigure[] => [{ label, value }];
const example = () => evaluate(fullConversion, currentEdition);

const money = () => one('One owner’s conversion, half of the ways', figureWords(example()).money);

function plan(): PictureFigure[] {
  const said = figureWords(example());
  return [
    { label: 'One owner’s plan, half of the ways', value: said.money },
    { label: 'Hours of work', value: said.hours },
    { label: 'Lathe out of use', value: said.weeks },
  ];
}

const quick = () =>
  one(
    'Nothing answered yet, half of the ways',
    figureWords(evaluate(emptyPath(currentEdition.edition), currentEdition)).money,
  );

const FIGURES: Readonly<Record<string, () => PictureFigure[]>> = {
  '': money,
  'plan/': plan,
  'quick/': quick,
  'buy-list/': () => one('One owner’s list', counted(example().bill.once.length, 'line')),
  'calendar/': () => one('One owner, from start to finish', halfOf(example().weeksTotal, weeksRange)),
  'bench/': () => one('One owner’s plan', counted(example().order.length, 'task')),
  'ways/': money,
  'compare/': () => one('Side by side, up to', counted(MOST_COMPARED, 'column')),
  'worth-it/': () => one('What else may answer the wish', counted(alternatives.length, 'alternative')),
  'lathe/': () => one('To measure, or typical of the size', counted(facts.length, 'figure')),
  'questions/': () => one('In nine rooms', counted(decisions.length, 'question')),
  'formulas/': () => one('Each with its source', counted(formulas.length, 'formula')),
  'words/': () =>
    one(
      'In plain words',
      counted(
        glossary.reduce((sum, { words }) => sum + words.length, 0),
        'word',
      ),
    ),
  'how-the-estimate-is-made/': () => one('Every range comes from', '2,000 builds'),
  'prices/': () => one('Released, never edited', counted(editions.length, 'edition')),
  'trust/': () => one('What it rests on', counted(trustPages.length, 'page')),
  'trust/left-out/': () =>
    one(
      'In no figure of the plan',
      counted(
        leftOut.reduce((sum, { items }) => sum + items.length, 0),
        'thing',
      ),
    ),
  'trust/numbers/': () =>
    one('Each from a print, from memory or from you', counted(formulas.length, 'formula')),
  'trust/changes/': () => one('Released, never edited', counted(editions.length, 'edition')),
  'starting-points/': () => one('To open and adapt', counted(inventedOwners.length, 'owner')),
};

/** Figures of a page that stands for itself; where it has none, the edition of the prices in use. */
export const figuresOf = (page: string): PictureFigure[] =>
  FIGURES[page]?.() ?? one('Prices of edition', currentEdition.edition);
