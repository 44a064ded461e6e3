/**
 * What is typed into the form of a line and not kept yet, by part. A line may move to another group under the reader's
 * hands, when the calendar is worked out anew; what was typed moves with it.
 */
const drafts = new Map<string, unknown>();

export const draftOf = <Typed>(part: string): Typed | undefined => drafts.get(part) as Typed | undefined;

export const keepDraft = <Typed>(part: string, typed: Typed): void => {
  drafts.set(part, typed);
};

export const dropDraft = (part: string): void => {
  drafts.delete(part);
};

export const hasDraft = (part: string): boolean => drafts.has(part);
