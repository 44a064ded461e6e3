import { type Alternative, abilityRows } from '../../core/alternative.ts';
import { NOTHING } from '../../core/band.ts';
import type { Compared } from '../../core/compared.ts';
import type { Path } from '../../core/path.ts';
import type { PriceBook } from '../../core/price-book.ts';
import { abilitiesOf } from '../../worth/abilities.ts';
import {
  buildsOfBands,
  buildsOfPlan,
  onOwnLathe,
  perYear,
  reasonFirst,
  spreadsOf,
  wordsOf,
} from '../../worth/alternatives.ts';
import { type Present, presentOf } from '../present.ts';
import type { BuiltColumn, ComparedColumn } from './column.ts';
import { planFigures, yearlyOf } from './plan-figures.ts';

type Books = (edition: string) => PriceBook;

function lacksOf(abilities: ComparedColumn['abilities']): ComparedColumn['lacks'] {
  const short = abilityRows.filter((row) => abilities[row].can !== 'yes');
  return short.map((row) => ({ row, say: abilities[row].say }));
}

/** A path by itself, at the prices of its own edition. */
function pathColumn(path: Path, present: Present): BuiltColumn {
  const builds = buildsOfPlan(present);
  const abilities = abilitiesOf(present.planned.state);
  const column: ComparedColumn = {
    kind: 'path',
    path,
    alternative: undefined,
    edition: present.edition.book.edition,
    abilities,
    lacks: lacksOf(abilities),
    ...spreadsOf(builds),
    ...planFigures(present),
    perYear: undefined,
    paidByUse: false,
    yearly: yearlyOf(present),
  };
  return { column, builds };
}

/** The words and figures that an alternative brings along, whatever it is worked out from. */
function saidOf(own: Present, alternative: Alternative) {
  const { risks, skill, abilities, ...words } = wordsOf(alternative);
  return {
    kind: 'alternative' as const,
    alternative: { ...words, first: reasonFirst(alternative, own.planned.state) },
    edition: own.edition.book.edition,
    abilities,
    lacks: [{ row: undefined, say: alternative.lacks }],
    skill: { level: skill, asks: [] },
    risks: risks.slice(0, 5),
    paidByUse: 'use' in alternative.costs && alternative.costs.use !== undefined,
  };
}

/** An alternative on the owner's lathe: as a path of answers, or from bands of its own. */
function alternativeColumn(own: Present, alternative: Alternative): BuiltColumn {
  const { costs, id } = alternative;
  const said = saidOf(own, alternative);
  if ('path' in costs) {
    const path = onOwnLathe(costs.path, own.planned.path);
    const { column, builds } = pathColumn(path, presentOf(path, own.edition.book));
    return { builds, column: { ...column, ...said, risks: column.risks } };
  }
  const builds = buildsOfBands(own, alternative, costs.once);
  const { families = [] } = own.planned.path;
  const column: ComparedColumn = {
    ...said,
    ...spreadsOf(builds),
    path: undefined,
    checks: undefined,
    stops: [],
    final: [],
    perYear: costs.use && perYear(own, id, costs.use, families),
    yearly: NOTHING,
  };
  return { column, builds };
}

function listed(list: readonly Alternative[], id: string): Alternative {
  const found = list.find((each) => each.id === id);
  if (!found) throw new Error(`no alternative has the id ${id}`);
  return found;
}

/** Every column with its builds; alternatives stand on the lathe, the drawer and the parts of the first path. */
export function builtColumns(
  columns: readonly Compared[],
  bookOf: Books,
  list: readonly Alternative[],
): BuiltColumn[] {
  const presents = new Map<Path, Present>();
  const presentFor = (path: Path): Present => {
    const known = presents.get(path) ?? presentOf(path, bookOf(path.edition));
    presents.set(path, known);
    return known;
  };
  const first = columns.find((each) => each.kind === 'path');
  if (!first) throw new Error('a comparison holds at least one path');
  return columns.map((each) =>
    each.kind === 'path'
      ? pathColumn(each.path, presentFor(each.path))
      : alternativeColumn(presentFor(first.path), listed(list, each.id)),
  );
}
