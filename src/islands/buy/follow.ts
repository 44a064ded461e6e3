/** A line that has moved on may land in another group: the owner's place goes with it. */
let followed: string | undefined;

/** Says which line was just moved on. */
export function follow(part: string): void {
  followed = part;
}

/** Whether the followed line is among these; asked once the list is drawn anew. */
export const isFollowed = (parts: readonly string[]): boolean =>
  followed !== undefined && parts.includes(followed);

/** Puts the reader at the line that was followed, once it stands on the screen and not on paper only. */
export function arrive(): void {
  const line = followed === undefined ? null : document.getElementById(`line-${followed}`);
  if (line?.offsetParent === null) return;
  followed = undefined;
  line?.focus({ preventScroll: true });
  line?.scrollIntoView({ block: 'nearest' });
}
