import { type SideBySide, type Swings, sideBySide, swingsOf } from '../../calc/choosing.ts';
import type { Path } from '../../calc/core/path.ts';
import type { PriceBook } from '../../calc/core/price-book.ts';
import {
  type Calendar,
  calendarOf,
  type StagedOrAtOnce,
  stagedOrAtOnce,
  type Working,
  workingOf,
} from '../../calc/working.ts';
import { alternatives } from '../../content/alternatives.ts';
import { currentEdition, editionByName } from '../../content/edition.ts';

/** What takes too long to work out between two frames, by name. */
export interface Answers {
  readonly working: Working;
  readonly calendar: Calendar;
  readonly staged: StagedOrAtOnce;
  readonly 'side-by-side': SideBySide;
  readonly swings: Swings;
}

export type AnswerName = keyof Answers;

const bookOf = ({ edition }: Path): PriceBook => editionByName(edition) ?? currentEdition;

const workedOut: { readonly [Name in AnswerName]: (path: Path) => Answers[Name] } = {
  working: (path) => workingOf(path, bookOf(path), path.progress),
  calendar: (path) => calendarOf(path, bookOf(path), path.progress ? { progress: path.progress } : {}),
  staged: (path) => stagedOrAtOnce(path, bookOf(path)),
  'side-by-side': (path) => sideBySide(path, bookOf(path), alternatives),
  swings: (path) => swingsOf(path, bookOf(path)),
};

/** The answer of that name for a path at the prices it names. Throws only on a mistake of ours. */
export const answerTo = <Name extends AnswerName>(name: Name, path: Path): Answers[Name] =>
  workedOut[name](path);
