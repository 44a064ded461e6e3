import * as z from 'zod/mini';
import { purchaseStates } from '../calc/core/purchase.ts';
import { FILE_VERSION, FORMAT, isPlainName, isPlainText, isSellerName, limits } from './limits.ts';
import { progressShapes } from './progress.ts';

/** No code made at run time: the site's content security policy forbids it. */
z.config({ jitless: true });

const isDay = (text: string): boolean => {
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
};

const words = (most: number) => z.string().check(z.maxLength(most), z.refine(isPlainText));
const id = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/), z.maxLength(60), z.refine(isPlainName));
const sellerName = z.string().check(z.minLength(1), z.maxLength(limits.sellerName), z.refine(isSellerName));
const amount = z.string().check(z.regex(limits.amount));
const rate = z.string().check(
  z.regex(limits.amount),
  z.refine((text) => Number(text) > 0),
);
const currencyCode = z.string().check(z.regex(limits.currency));
const share = z.number().check(z.minimum(0), z.maximum(1));
const day = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/), z.refine(isDay));

/** So many entries at most; said in the published schema too. */
function atMost<T extends z.ZodMiniType>(most: number, schema: T, description: string): T {
  const counted = schema.check(z.refine((entries) => Object.keys(entries as object).length <= most)) as T;
  z.globalRegistry.add(counted, { maxProperties: most, description });
  return counted;
}

export const purchaseShape = z.strictObject({
  state: z.enum(purchaseStates),
  price: z.optional(amount),
  per: z.optional(z.enum(['unit', 'pack', 'line'])),
  currency: z.optional(currencyCode),
  qty: z.optional(z.number().check(z.positive(), z.maximum(limits.units))),
  date: z.optional(day),
  seller: z.optional(sellerName),
  note: z.optional(words(limits.purchaseNote)),
});

export const sellerShape = z.strictObject({
  freight: z.optional(amount),
  freeFrom: z.optional(amount),
  currency: z.optional(currencyCode),
  abroad: z.optional(z.boolean()),
  dutyRate: z.optional(share),
  carriageTaxed: z.optional(z.boolean()),
  taxIncluded: z.optional(z.boolean()),
});

export const allowanceShape = share;
export const startShape = day;

const quantity = z.number().check(z.minimum(0), z.maximum(1_000_000));

/** Parts made again and again: hours, pieces, dollars. */
export const familiesShape = z
  .array(
    z.strictObject({
      name: words(limits.name),
      piecesPerBatch: z.number().check(z.minimum(1), z.maximum(1_000_000)),
      batchesPerYear: quantity,
      byHand: z.strictObject({ setUp: quantity, piece: quantity }),
      byProgram: z.strictObject({ firstSetUp: quantity, setUp: quantity, attended: quantity }),
      shape: z.optional(z.enum(['plain', 'shaped'])),
      outsidePrice: z.optional(quantity),
    }),
  )
  .check(z.maxLength(60));

export const currencyShape = z.strictObject({ code: currencyCode, perDollar: rate });

/** The private part of a path, piece by piece, so that one bad piece does not take the others with it. */
export const ownShapes = {
  purchases: { key: id, entry: purchaseShape, most: limits.purchases },
  sellers: { key: sellerName, entry: sellerShape, most: limits.sellers },
  chances: { key: id, entry: share, most: limits.chances },
} as const;

/** What has been done, measured and spent, each group by id; values in SI, temperatures in °C. */
const progressShape = z.strictObject({
  done: z.optional(z.record(id, progressShapes.done)),
  values: z.optional(z.record(id, progressShapes.values)),
  spent: z.optional(z.record(id, progressShapes.spent)),
  notes: z.optional(z.record(id, progressShapes.notes)),
  shelf: z.optional(z.record(id, progressShapes.shelf)),
});

export const pathShape = z.strictObject({
  edition: z.string().check(z.maxLength(20)),
  size: z.enum(['small', 'medium', 'large']),
  facts: atMost(400, z.record(id, z.number()), 'Measured figures by id, in SI units'),
  answers: atMost(
    400,
    z.record(id, z.array(id).check(z.maxLength(60))),
    'Option ids by question; an empty list is "not sure yet"',
  ),
  owned: z.array(id).check(z.maxLength(500)),
  purchases: z.optional(
    atMost(ownShapes.purchases.most, z.record(id, purchaseShape), 'Quotes and orders by part id'),
  ),
  sellers: z.optional(
    atMost(
      ownShapes.sellers.most,
      z.record(sellerName, sellerShape),
      'Shops by the name the owner gave them',
    ),
  ),
  currency: z.optional(currencyShape),
  chances: z.optional(
    atMost(ownShapes.chances.most, z.record(id, share), "The owner's own chance of a risk, fraction of one"),
  ),
  allowance: z.optional(allowanceShape),
  start: z.optional(startShape),
  progress: z.optional(progressShape),
  families: z.optional(familiesShape),
});

export const nameShape = words(limits.name);
export const noteShape = words(limits.fileNote);
export const savedShape = day;

/** Decimal text of US dollars as this site works it out. */
const decimal = z.string().check(z.regex(/^-?\d{1,15}(\.\d{1,6})?$/));
const range = { low: decimal, likely: decimal, high: decimal };
const cells = z.record(id, z.string().check(z.maxLength(4000)));

/** The buy list as it stood when the file was saved. For other programs: this site works it out again and reads none of it. */
const listShape = z.strictObject({
  basis: z.string().check(z.maxLength(400)),
  currency: currencyCode,
  rows: z.array(cells).check(z.maxLength(500)),
  totals: z.array(z.strictObject({ paid: z.string().check(z.maxLength(40)), ...range })),
  orders: z.array(
    z.strictObject({
      seller: z.string(),
      state: z.enum(['spent', 'quoted']),
      lines: z.number(),
      goods: decimal,
      ...{ carriage: z.strictObject(range), tax: z.strictObject(range), duty: z.strictObject(range) },
      total: z.strictObject(range),
    }),
  ),
  average: z.strictObject({
    parts: z.array(
      z.strictObject({
        key: z.enum(['goods', 'landed', 'trouble', 'credit']),
        name: z.string(),
        amount: decimal,
      }),
    ),
    total: decimal,
  }),
});

/** The whole file: what one owner has said about one lathe. Published as public/schema/path-1.json. */
export const fileShape = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(FILE_VERSION),
  name: z.optional(nameShape),
  note: z.optional(noteShape),
  saved: z.optional(savedShape),
  path: pathShape,
  'buy-list': z.optional(listShape),
});

export type PathFile = z.infer<typeof fileShape>;
