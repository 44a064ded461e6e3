/** Addresses inside this site. Links to them carry data-keep-path, so that the owner's path comes along. */

const base = import.meta.env.BASE_URL.replace(/\/?$/, '/');

/** A page by its path without the leading slash: to('plan/') . */
export const to = (page = ''): string => `${base}${page}`;

/** A question's page; `back` is the question (or "check", the list) to return to afterwards. */
export const questionPlace = (decision: string, back?: string): string =>
  to(`questions/${decision}/${back ? `?back=${encodeURIComponent(back)}` : ''}`);

/** The lathe page, at one of its questions. */
export const lathePlace = (at?: string, back?: string): string => {
  const query = new URLSearchParams({ ...(at ? { at } : {}), ...(back ? { back } : {}) }).toString();
  return to(`lathe/${query ? `?${query}` : ''}`);
};

/** Where the book explains a question, with every answer and the topics to read about it. */
export const bookQuestionPlace = ({ id, subsystem }: { id: string; subsystem: string }): string =>
  `${to(`book/${subsystem}/`)}#question-${id}`;

/** The buy list, at one of its lines. */
export const buyLinePlace = (part: string): string => to(`buy-list/?line=${encodeURIComponent(part)}`);

/** The question that an address shows, or undefined for any other page. */
export const questionAt = (pathname: string): string | undefined =>
  /\/questions\/([a-z0-9-]+)\/?$/.exec(pathname)?.[1];

/** The place on this page that its address asks for, beside the path; undefined where none is, and while a site is built. */
export const askedPlace = (): string | undefined =>
  typeof window === 'undefined'
    ? undefined
    : (new URLSearchParams(window.location.search).get('place') ?? undefined);

/** Whether the address asks for one of these things, as "check-cross-play". */
export function isAskedFor(kind: string, ids: readonly string[]): boolean {
  const asked = askedPlace();
  return asked !== undefined && ids.some((id) => asked === `${kind}-${id}`);
}

/** Whether a fragment is an anchor of something that a page draws when it has its figures: the script of the page asks the same. */
export const isDrawnLate = (fragment: string): boolean =>
  /^(check|part|risk|setting|stage|task)(s|-[a-z0-9-]+)$/.test(fragment);

/** The line of the buy list that its address asks for, as the anchor of its part. */
export function askedLine(): string | undefined {
  const line = new URLSearchParams(window.location.search).get('line');
  return line === null ? undefined : `part-${line}`;
}

/** Where the reader's own things of each kind stand: on the plan, and what is bought on the buy list. */
export const ownPlace = {
  checks: (id: string) => to(`plan/#check-${id}`),
  parts: buyLinePlace,
  tasks: (id: string) => to(`plan/#task-${id}`),
  bench: (id: string) => to(`bench/#task-${id}`),
  risks: (id: string) => to(`plan/#risk-${id}`),
  settings: (axis: string) => to(`plan/#setting-${axis}`),
} as const;
