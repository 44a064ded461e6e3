import { decisionById, roomById } from '../calc/guide.ts';
import type { RoomId } from '../components/lathe-shapes.ts';
import { roomRange } from '../components/room-ranges.ts';
import { figureWords, weeksName } from '../components/starting/figures.ts';
import { startingPoint } from '../components/starting/points.ts';
import { editionByName } from '../content/edition.ts';
import { fullConversion } from '../content/example-owner.ts';
import { inventedOwners } from '../content/invented-owners.ts';
import { moneyMark } from '../islands/shared/format.ts';
import type { BuiltPage } from './built-page.ts';
import { latheDrawing } from './lathe.ts';
import type { Look } from './look.ts';
import { figuresOf } from './page-figures.ts';
import type { PictureDrawing, PictureText } from './picture.ts';
import { spanOf } from './question-span.ts';
import { rodDrawing } from './rod.ts';
import { topicDrawing } from './topic.ts';

/** What the picture of a page says and draws. */
export interface About extends PictureText {
  readonly drawing: PictureDrawing;
}

const lathe = (look: Look, room: RoomId | 'all'): PictureDrawing => ({
  width: 676,
  height: 322,
  svg: `<g transform="translate(8 8)">${latheDrawing(look, room)}</g>`,
});

const bare = (title: string): string => title.replace(/ – Halfnut$/, '').replace(/ – The book$/, '');

function aboutQuestion(id: string, look: Look): About | undefined {
  const decision = decisionById(id);
  if (!decision) return undefined;
  const room = roomById(decision.subsystem)!;
  return {
    place: `Question · ${room.name}`,
    heading: decision.ask,
    figures: spanOf(decision),
    drawing: lathe(look, room.id),
  };
}

function aboutRoom(id: string, look: Look): About | undefined {
  const room = roomById(id as RoomId);
  if (!room) return undefined;
  return {
    place: `The book · Room ${room.number} of 9`,
    heading: room.name,
    figures: [
      { label: 'Its goods, half of the ways, usual path', value: roomRange(fullConversion, room.id) },
    ],
    drawing: lathe(look, room.id),
  };
}

function aboutTopic({ title, description, html }: BuiltPage, look: Look): About {
  const drawing = topicDrawing(html, look);
  return {
    place: 'The book',
    heading: bare(title),
    lede: description,
    figures: [],
    drawing: drawing ? { width: 360, ...drawing } : lathe(look, 'all'),
  };
}

const ROD_SCALE = 676 / 372;

/** The twenty ways of the money, and the lathe under them. */
function rodOverLathe(look: Look, values: readonly number[]): PictureDrawing {
  const under = lathe(look, 'all');
  const rod = rodDrawing(look, values, moneyMark);
  const top = rod.height * ROD_SCALE + 24;
  const svg = `<g transform="scale(${ROD_SCALE.toFixed(4)})">${rod.svg}</g><g transform="translate(0 ${top.toFixed(1)})">${under.svg}</g>`;
  return { width: under.width, height: top + under.height, svg };
}

function aboutOwner(id: string, look: Look): About | undefined {
  const owner = inventedOwners.find((each) => each.id === id);
  if (!owner) return undefined;
  const { report } = startingPoint(owner);
  const { money, hours, weeks } = figureWords(report);
  return {
    place: `Starting point · edition ${report.edition.id}`,
    heading: owner.name,
    figures: [
      { label: 'Money, half of the ways', value: money },
      { label: 'Hours of work', value: hours },
      { label: weeksName(report), value: weeks },
    ],
    drawing: rodOverLathe(look, report.money.twenty),
  };
}

function aboutEdition(id: string, look: Look): About | undefined {
  const book = editionByName(id);
  if (!book) return undefined;
  const figures = [
    { label: 'Dated', value: book.date },
    { label: 'Low, likely and high price of', value: `${Object.keys(book.parts).length} parts` },
  ];
  return { place: 'Prices', heading: `Prices of edition ${id}`, figures, drawing: lathe(look, 'all') };
}

/** Everything that the picture of a built page needs; a page without figures of its own names the prices in use. */
export function aboutPage(built: BuiltPage, look: Look): About {
  const [kind = '', id = '', more = ''] = built.page.split('/');
  const special =
    (kind === 'questions' && aboutQuestion(id, look)) ||
    (kind === 'book' && id === 'topics' && more && aboutTopic(built, look)) ||
    (kind === 'book' && aboutRoom(id, look)) ||
    (kind === 'starting-points' && aboutOwner(id, look)) ||
    (kind === 'prices' && aboutEdition(id, look));
  if (special) return special;
  const heading = built.page === '' ? 'Set it out before you take it apart.' : bare(built.title);
  return {
    place: 'Planning figures, not quotations',
    heading,
    figures: figuresOf(built.page),
    drawing: lathe(look, 'all'),
  };
}
