import * as z from 'zod/mini';
import { purchaseStates } from '../calc/core/purchase.ts';

/** No code made at run time: the site's content security policy forbids it. */
z.config({ jitless: true });

/** What the file is called inside, and the version of its shape; the version changes only when the shape does. */
export const FORMAT = 'halfnut-path';
export const FILE_VERSION = 1;

/** Names that every object answers to by birth must not become keys: a look-up would find what nobody wrote. */
const isPlainName = (name: string): boolean => !(name in {});

/** No control characters besides line ends and tabs, no half characters: such text breaks spreadsheets and mail. */
const isPlainText = (text: string): boolean =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  !/[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F]/.test(text) && text.isWellFormed();

const isDay = (text: string): boolean => {
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
};

const words = (most: number) => z.string().check(z.maxLength(most), z.refine(isPlainText));
const id = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/), z.maxLength(60), z.refine(isPlainName));
const sellerName = z
  .string()
  .check(z.minLength(1), z.maxLength(80), z.refine(isPlainText), z.refine(isPlainName));
const amount = z.string().check(z.regex(/^\d{1,12}(\.\d{1,8})?$/));
const rate = z.string().check(
  z.regex(/^\d{1,12}(\.\d{1,8})?$/),
  z.refine((text) => Number(text) > 0),
);
const currencyCode = z.string().check(z.regex(/^[A-Z]{3}$/));
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
  qty: z.optional(z.number().check(z.positive(), z.maximum(1e6))),
  date: z.optional(day),
  seller: z.optional(sellerName),
  note: z.optional(words(1000)),
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

export const currencyShape = z.strictObject({ code: currencyCode, perDollar: rate });

/** The private part of a path, piece by piece, so that one bad piece does not take the others with it. */
export const ownShapes = {
  purchases: { key: id, entry: purchaseShape, most: 500 },
  sellers: { key: sellerName, entry: sellerShape, most: 100 },
  chances: { key: id, entry: share, most: 200 },
} as const;

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
});

export const nameShape = words(120);
export const noteShape = words(4000);
export const savedShape = day;

const decimal = z.string().check(z.regex(/^-?\d{1,15}(\.\d{1,6})?$/));
const cells = z.record(id, z.string().check(z.maxLength(4000)));

/** The buy list as it stood when the file was saved. For other programs: this site works it out again and reads none of it. */
const listShape = z.strictObject({
  basis: z.string().check(z.maxLength(400)),
  currency: currencyCode,
  rows: z.array(cells).check(z.maxLength(500)),
  totals: z.array(
    z.strictObject({ paid: z.string().check(z.maxLength(40)), low: decimal, likely: decimal, high: decimal }),
  ),
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
