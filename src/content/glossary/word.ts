/** A word of the trade in plain words; `also` are other names for the same thing, American and British. */
export interface Word {
  readonly word: string;
  readonly also?: readonly string[];
  readonly means: string;
  /**
   * The very forms that become links in a text, where these are not the word, its other names and their plurals: a word
   * that is mostly something everyday is linked in the company of its trade only, and brackets hold what becomes the link. False where none is.
   */
  readonly linked?: readonly string[] | false;
  /** Why the word stays though no text of the book links to it. */
  readonly kept?: string;
}
