/** A line that has moved on may land in another group: the owner's place goes with it. */
let followed: string | undefined;

/** Says which line was just moved on. */
export function follow(part: string): void {
  followed = part;
}

/** Whether the followed line is among these; asked once the list is drawn anew. */
export const isFollowed = (parts: readonly string[]): boolean =>
  followed !== undefined && parts.includes(followed);

/** Puts the reader at the line that was followed. */
export function arrive(): void {
  const part = followed;
  followed = undefined;
  const line = part === undefined ? null : document.getElementById(`line-${part}`);
  line?.focus({ preventScroll: true });
  line?.scrollIntoView({ block: 'nearest' });
}
