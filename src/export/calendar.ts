import type { Calendar } from '../calc/working.ts';

/** A whole day, or several, in a calendar. Days are YYYY-MM-DD. */
export interface CalendarEvent {
  /** Stable for the same thing in the same plan, so that a new import moves an event and adds none. */
  readonly uid: string;
  readonly from: string;
  /** The last day, included. */
  readonly to: string;
  readonly summary: string;
  readonly description: string;
}

/** Octets of a content line, its line break not counted: RFC 5545, 3.1. */
const LINE_OCTETS = 75;
const CRLF = '\r\n';
const MS_A_DAY = 86_400_000;

const octets = new TextEncoder();

/** A text value: backslash, semicolon, comma and line breaks escaped (RFC 5545, 3.3.11); other control characters dropped. */
export const escapeText = (text: string): string =>
  text
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\r\n|\r|\n/g, '\\n')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the standard forbids them in text
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '');

/** A content line in pieces of at most 75 octets, no character cut in two; each piece after the first begins with a space. */
export function foldLine(line: string): string {
  const pieces: string[] = [];
  let piece = '';
  let size = 0;
  for (const character of line) {
    const length = octets.encode(character).length;
    if (size + length > LINE_OCTETS) {
      pieces.push(piece);
      piece = ' ';
      size = 1;
    }
    piece += character;
    size += length;
  }
  return [...pieces, piece].join(CRLF);
}

const basic = (day: string): string => day.replaceAll('-', '');

/** The end of an all-day event is the first day that no longer belongs to it: RFC 5545, 3.6.1. */
const dayAfterLast = (day: string): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + MS_A_DAY).toISOString().slice(0, 10);

const eventLines = (event: CalendarEvent, stamp: string): string[] => [
  'BEGIN:VEVENT',
  `UID:${escapeText(event.uid)}`,
  `DTSTAMP:${stamp}`,
  `DTSTART;VALUE=DATE:${basic(event.from)}`,
  `DTEND;VALUE=DATE:${basic(dayAfterLast(event.to))}`,
  `SUMMARY:${escapeText(event.summary)}`,
  ...(event.description === '' ? [] : [`DESCRIPTION:${escapeText(event.description)}`]),
  'TRANSP:TRANSPARENT',
  'END:VEVENT',
];

/**
 * Events as an iCalendar file (RFC 5545; NAME from RFC 7986). `stamp` is the time of writing in UTC, such as
 * 20270104T080000Z: the caller has the clock. Throws on a stamp of another form.
 */
export function asICalendar(name: string, events: readonly CalendarEvent[], stamp: string): string {
  if (!/^\d{8}T\d{6}Z$/.test(stamp)) throw new RangeError(`not a UTC time of RFC 5545: ${stamp}`);
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Halfnut//Plan//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `NAME:${escapeText(name)}`,
    `X-WR-CALNAME:${escapeText(name)}`,
    ...events.flatMap((event) => eventLines(event, stamp)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => foldLine(line) + CRLF).join('');
}

const weeks = (from: number, to: number): string => `${from.toFixed(0)} to ${to.toFixed(0)}`;

/**
 * The stages of a plan that are not yet done and the days to order by, as events. `key` tells plans apart: the same key and the same plan give
 * the same UIDs. Throws where the calendar has no first day.
 */
export function eventsOf(calendar: Calendar, key: string): CalendarEvent[] {
  if (calendar.start === undefined) throw new RangeError('a calendar file needs a first day');
  const uid = (what: string): string => `${what}.${key}@halfnut.invalid`;
  const left = new Set(calendar.tasks.flatMap(({ stage, done }) => (done ? [] : [stage])));
  const stages = calendar.stages
    .filter(({ id }) => left.has(id))
    .map(
      ({ id, name, days, finish }): CalendarEvent => ({
        uid: uid(`stage-${id}`),
        ...days!,
        summary: name,
        description: `Typical days. In half of the ways it could turn out this stage ends by then; in 16 of 20 between week ${weeks(finish.p10, finish.p90)} of the plan.`,
      }),
    );
  const orders = calendar.deliveries.map(
    ({ part, name, days }): CalendarEvent => ({
      uid: uid(`order-${part}`),
      from: days!.orderBy,
      to: days!.orderBy,
      summary: `Order by today: ${name}`,
      description: `Typically needed on ${days!.needed}. With a slow seller order by ${days!.orderBySlow}.`,
    }),
  );
  return [...stages, ...orders];
}
