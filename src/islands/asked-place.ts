/**
 * The place on a page that its address asks for. A fragment has room for a path or for an anchor, not for both: where a
 * path stands in it, the anchor goes before it, as "?place=…". Every page carries this, so that nothing of the islands
 * may import it: what two scripts share becomes a file of its own. They have "askedPlace" and "isDrawnLate" of places.ts.
 */
const KEY = 'place';

export const isPath = (fragment: string): boolean => /^#?\d+\?/.test(fragment);

/** The anchor of a fragment that is one: a path begins with a number. */
export const anchorIn = (fragment: string): string | undefined => /^#?([a-z][^?=;&]*)$/i.exec(fragment)?.[1];

/** Whether an anchor is one of something that a page draws when it has its figures. */
export const isDrawnLate = (anchor: string): boolean =>
  /^(check|part|risk|setting|stage|task)(s|-[a-z0-9-]+)$/.test(anchor);

/** The query of an address with a place in it, in the room of the one that it has. */
export function withPlace(search: string, place: string): string {
  const query = new URLSearchParams(search);
  query.set(KEY, place);
  return `?${query}`;
}

export const placeIn = (search: string): string | undefined =>
  new URLSearchParams(search).get(KEY) ?? undefined;
