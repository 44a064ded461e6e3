/** What the file of a path is called inside, and the version of its shape; the version changes only when the shape does. */
export const FORMAT = 'halfnut-path';
export const FILE_VERSION = 1;

/** The same of a file with many paths. */
export const SHELF_FORMAT = 'halfnut-shelf';
export const SHELF_VERSION = 1;

/** How much a saved path holds, and how it is written. Fields on screen keep to it too, so that all that is typed can be kept. */
export const limits = {
  /** Decimal text of money, and of a rate: "1234.50". */
  amount: /^\d{1,12}(\.\d{1,8})?$/,
  /** ISO 4217. */
  currency: /^[A-Z]{3}$/,
  /** Letters of a name, of a note on a purchase, of a seller's name, of a note on the file. */
  name: 120,
  purchaseNote: 1000,
  sellerName: 80,
  fileNote: 4000,
  /** Units of one purchase. */
  units: 1e6,
  purchases: 500,
  sellers: 100,
  chances: 200,
  /** How a path on the shelf is called inside, and how many a file holds. */
  pathId: /^[a-z0-9][a-z0-9-]{0,39}$/,
  paths: 1000,
} as const;

/** Names that every object answers to by birth must not become keys: a look-up would find what nobody wrote. */
export const isPlainName = (name: string): boolean => !(name in {});

/** No control characters besides line ends and tabs, no half characters: such text breaks spreadsheets and mail. */
export const isPlainText = (text: string): boolean =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  !/[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F]/.test(text) && text.isWellFormed();

/** Whether a shop may bear this name. */
export const isSellerName = (name: string): boolean =>
  name.length > 0 && name.length <= limits.sellerName && isPlainName(name) && isPlainText(name);
