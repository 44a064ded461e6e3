/** A question that somebody brings who has never owned a machine with a control, and where the page answers it. */
export interface NewcomerQuestion {
  /** The page, by its id. */
  readonly topic: string;
  readonly ask: string;
  /** The heading that the answer stands under. */
  readonly section: string;
  /** Words that stand there literally; emphasis and line ends do not count. */
  readonly answer: string;
}
