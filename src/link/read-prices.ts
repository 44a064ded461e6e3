import { type Family, isFamily } from '../calc/core/family.ts';
import { type Purchase, type PurchaseState, purchaseStates, type Seller } from '../calc/core/purchase.ts';
import { nowCalled } from './grammar.ts';
import { familyName, most, type PriceKey, type Prices } from './prices.ts';
import { isAmount, isCurrency, readDay, readWithin } from './written.ts';

/** Ids that prices may speak of. */
export interface KnownPrices {
  readonly parts: ReadonlySet<string>;
  readonly risks: ReadonlySet<string>;
}

/** One piece of a link read: what it fills, and what of it could not be read, as it stood. */
export interface ReadPrices {
  readonly prices: Prices;
  readonly odd: readonly string[];
}

/** Says which field a word between two strokes fills; undefined where it fills none. */
type Words<Thing> = (word: string) => readonly [keyof Thing, unknown] | undefined;

/** A thing from its words, in any order; undefined where one of them is not understood, or fills a field again. */
function readWords<Thing>(text: string, words: Words<Thing>): Partial<Thing> | undefined {
  const thing: Partial<Record<keyof Thing, unknown>> = {};
  for (const word of text === '' ? [] : text.split('/')) {
    const filled = words(word);
    if (!filled || filled[1] === undefined || Object.hasOwn(thing, filled[0])) return undefined;
    thing[filled[0]] = filled[1];
  }
  return thing as Partial<Thing>;
}

const SHOP = /^!?shop-[a-z]{1,2}$/;
const PER: readonly string[] = ['unit', 'pack', 'line'];

const orderWords: Words<Purchase> = (word) => {
  if (purchaseStates.includes(word as PurchaseState)) return ['state', word];
  if (PER.includes(word)) return ['per', word];
  if (isAmount(word)) return ['price', word];
  if (isCurrency(word)) return ['currency', word];
  if (SHOP.test(word)) return ['seller', word];
  if (word.startsWith('on')) return ['date', readDay(word.slice(2))];
  if (word.startsWith('x')) return ['qty', readWithin(word.slice(1), Number.MIN_VALUE, most.units)];
  return undefined;
};

function readOrder(text: string): Purchase | undefined {
  const order = readWords(text, orderWords);
  return order?.state ? (order as Purchase) : undefined;
}

const amount = (text: string): string | undefined => (isAmount(text) ? text : undefined);

const shopWords: Words<Seller> = (word) => {
  if (word === 'abroad') return ['abroad', true];
  if (word === 'tax-on-carriage') return ['carriageTaxed', true];
  if (word === 'tax-in-prices') return ['taxIncluded', true];
  if (isCurrency(word)) return ['currency', word];
  const [, name, figure = ''] = /^(carriage|free-from|duty)-(.+)$/.exec(word) ?? [];
  if (name === 'carriage') return ['freight', amount(figure)];
  if (name === 'free-from') return ['freeFrom', amount(figure)];
  return name === 'duty' ? ['dutyRate', readWithin(figure, 0, 1)] : undefined;
};

const FIGURES = {
  pieces: 'piecesPerBatch',
  batches: 'batchesPerYear',
  'hand-set-up': 'setUpByHand',
  'hand-piece': 'piece',
  'first-set-up': 'firstSetUp',
  'set-up': 'setUp',
  attended: 'attended',
  outside: 'outsidePrice',
} as const;

type FamilyFigures = { readonly [Field in (typeof FIGURES)[keyof typeof FIGURES]]: number } & Pick<
  Family,
  'shape'
>;

const familyWords: Words<FamilyFigures> = (word) => {
  if (word === 'plain' || word === 'shaped') return ['shape', word];
  const [, name = '', figure = ''] = /^([a-z]+(?:-[a-z]+)*)-(\d.*)$/.exec(word) ?? [];
  if (!Object.hasOwn(FIGURES, name)) return undefined;
  return [FIGURES[name as keyof typeof FIGURES], readWithin(figure, 0, most.quantity)];
};

function readFamily(text: string, at: number): Family | undefined {
  const words = readWords(text, familyWords);
  if (!words) return undefined;
  const { setUpByHand, piece, firstSetUp, setUp, attended, ...rest } = words;
  const byHand = { setUp: setUpByHand, piece };
  const family = { name: familyName(at), ...rest, byHand, byProgram: { firstSetUp, setUp, attended } };
  // What is missing is no number, so that no family is made of it.
  return isFamily(family as Family) ? (family as Family) : undefined;
}

const readShare = (text: string): number | undefined => readWithin(text, 0, 1);

/** Pieces of a list; what is above the limit is odd like what cannot be read. */
const piecesOf = (value: string): string[] => value.split(',').filter((piece) => piece !== '');

interface List<Entry> {
  readonly most: number;
  readonly isKey: (key: string) => boolean;
  readonly read: (text: string) => Entry | undefined;
}

/** "id:words,id:words"; of two with the same id the first counts. */
function readList<Entry>(value: string, { most, isKey, read }: List<Entry>) {
  const taken = new Map<string, Entry>();
  const odd = piecesOf(value).filter((piece) => {
    const [written = '', ...said] = piece.split(':');
    const key = nowCalled(written);
    const entry = isKey(key) && !taken.has(key) && taken.size < most ? read(said.join(':')) : undefined;
    if (entry !== undefined) taken.set(key, entry);
    return entry === undefined;
  });
  return { all: taken.size > 0 ? Object.fromEntries(taken) : undefined, odd };
}

function readFamilies(value: string): ReadPrices {
  const odd: string[] = [];
  const families: Family[] = [];
  for (const piece of piecesOf(value)) {
    const family = families.length < most.families ? readFamily(piece, families.length) : undefined;
    if (family) families.push(family);
    else odd.push(piece);
  }
  return { prices: families.length > 0 ? { families } : {}, odd };
}

function readMoney(value: string): ReadPrices {
  const [code = '', perDollar = '', ...more] = value.split(':');
  const sound = isCurrency(code) && isAmount(perDollar) && Number(perDollar) > 0 && more.length === 0;
  return sound ? { prices: { currency: { code, perDollar } }, odd: [] } : { prices: {}, odd: [value] };
}

const one = <Value>(value: string, read: Value | undefined, prices: (read: Value) => Prices): ReadPrices =>
  read === undefined ? { prices: {}, odd: [value] } : { prices: prices(read), odd: [] };

type Reader = (value: string, known: KnownPrices) => ReadPrices;

const readers: Readonly<Record<PriceKey, Reader>> = {
  orders: (value, { parts }) => {
    const { all, odd } = readList(value, {
      most: most.orders,
      isKey: (id) => parts.has(id),
      read: readOrder,
    });
    return { prices: all ? { purchases: all } : {}, odd };
  },
  shops: (value) => {
    const read = (text: string) => readWords(text, shopWords);
    const { all, odd } = readList(value, { most: most.shops, isKey: (id) => SHOP.test(id), read });
    return { prices: all ? { sellers: all } : {}, odd };
  },
  chances: (value, { risks }) => {
    const { all, odd } = readList(value, {
      most: most.chances,
      isKey: (id) => risks.has(id),
      read: readShare,
    });
    return { prices: all ? { chances: all } : {}, odd };
  },
  money: readMoney,
  allowance: (value) => one(value, readShare(value), (allowance) => ({ allowance })),
  'first-day': (value) => one(value, readDay(value), (start) => ({ start })),
  families: readFamilies,
};

/** Reads one piece of prices. Never throws, never guesses: what cannot be read is odd and left out. */
export const readPricePair = (key: PriceKey, value: string, known: KnownPrices): ReadPrices =>
  readers[key](value, known);
