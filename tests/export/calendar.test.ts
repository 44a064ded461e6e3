// The calendar file, read back by a reader made from the standard: RFC 5545 and, for the name, RFC 7986.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nothingDone } from '../../src/calc/core/progress.ts';
import { calendarOf } from '../../src/calc/working.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { pathOf } from '../../src/content/reference-paths.ts';
import { asICalendar, type CalendarEvent, eventsOf, foldLine } from '../../src/export/calendar.ts';
import { stripOf } from '../../src/export/strip.ts';
import { contentLines, date, once, parse, text } from './icalendar.ts';

const STAMP = '20270101T120000Z';
const calendar = calendarOf(pathOf({}), currentEdition, { start: '2027-01-04' });

function readBack(file: string) {
  const whole = parse(file);
  expect(whole.name).toBe('VCALENDAR');
  expect(once(whole, 'VERSION')!.value).toBe('2.0');
  expect(once(whole, 'PRODID')).toBeDefined();
  return {
    name: text(once(whole, 'NAME')!.value),
    events: whole.components.map((event) => {
      expect(event.name).toBe('VEVENT');
      expect(once(event, 'DTSTAMP')!.value).toMatch(/^\d{8}T\d{6}Z$/);
      const [start, end] = [once(event, 'DTSTART')!, once(event, 'DTEND')!];
      expect([start.params, end.params]).toEqual([{ VALUE: 'DATE' }, { VALUE: 'DATE' }]);
      const last = new Date(Date.parse(`${date(end.value)}T00:00:00Z`) - 86_400_000);
      return {
        uid: text(once(event, 'UID')!.value),
        from: date(start.value),
        to: last.toISOString().slice(0, 10),
        summary: text(once(event, 'SUMMARY')!.value),
        description: text(once(event, 'DESCRIPTION')?.value ?? ''),
      };
    }),
  };
}

describe('the standard', () => {
  test('a line is folded at 75 octets and comes back whole, whatever the script', () => {
    for (const line of [
      'x'.repeat(75),
      'x'.repeat(76),
      'ä'.repeat(80),
      '工作台'.repeat(40),
      '🔩'.repeat(50),
    ]) {
      const folded = foldLine(`SUMMARY:${line}`);
      expect(contentLines(`${folded}\r\n`)).toEqual([`SUMMARY:${line}`]);
    }
    expect(foldLine('x'.repeat(75))).not.toContain('\r\n');
  });

  // RFC 5545, 3.3.11: the example of a text with a comma, a semicolon and line breaks.
  test('the example of the standard is written as printed there', () => {
    const event = {
      uid: 'a',
      from: '2027-01-04',
      to: '2027-01-04',
      summary: 's',
      description: 'Project XYZ Final Review\nConference Room - 3B\nCome Prepared.',
    };
    expect(contentLines(asICalendar('n', [event], STAMP))).toContain(
      'DESCRIPTION:Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
    );
  });

  test('any event comes back as it was', () => {
    const day = fc
      .integer({ min: 0, max: 20_000 })
      .map((days) => new Date(days * 86_400_000).toISOString().slice(0, 10));
    const words = fc
      .string({ unit: 'grapheme', maxLength: 120 })
      // biome-ignore lint/suspicious/noControlCharactersInRegex: no text of the standard holds them
      .map((drawn) => drawn.replace(/[\u0000-\u0009\u000b-\u001f\u007f]/g, ''));
    const anyEvent: fc.Arbitrary<CalendarEvent> = fc.record({
      uid: fc.uuid(),
      from: day,
      to: day,
      summary: words,
      description: words,
    });
    fc.assert(
      fc.property(words, fc.array(anyEvent, { maxLength: 4 }), (name, events) => {
        expect(readBack(asICalendar(name, events, STAMP))).toEqual({ name, events });
      }),
    );
  });

  test('a stamp that is no time in UTC is refused', () => {
    expect(() => asICalendar('n', [], '2027-01-01T12:00:00Z')).toThrow('not a UTC time');
  });
});

describe('the events of a plan', () => {
  const events = eventsOf(calendar, 'reference');

  test('every stage and every order is there, once', () => {
    const file = readBack(asICalendar('Halfnut plan', events, STAMP));
    expect(file.events).toEqual(events);
    expect(events.length).toBe(calendar.stages.length + calendar.deliveries.length);
    expect(new Set(events.map((event) => event.uid)).size).toBe(events.length);
  });

  test('a later start moves the days and keeps the names', () => {
    const later = eventsOf(calendarOf(pathOf({}), currentEdition, { start: '2027-02-01' }), 'reference');
    expect(new Set(later.map((event) => event.uid))).toEqual(new Set(events.map((event) => event.uid)));
    expect(later[0]!.from).not.toBe(events[0]!.from);
  });

  test('no event ends before it starts, and none lies before the first day', () => {
    expect(events.filter(({ from, to }) => to < from || from < '2027-01-04')).toEqual([]);
  });

  test('a stage that is done has no event any more, and the strip says that it is done', () => {
    const first = calendar.stages[0]!;
    const done = Object.fromEntries(
      calendar.tasks.filter(({ stage }) => stage === first.id).map(({ id }) => [id, '2027-01-04']),
    );
    const underWay = calendarOf(pathOf({}), currentEdition, {
      start: '2027-01-11',
      progress: { ...nothingDone, done },
    });
    const uids = eventsOf(underWay, 'reference').map(({ uid }) => uid);
    expect(uids).not.toContain(`stage-${first.id}.reference@halfnut.invalid`);
    expect(uids).toContain(`stage-${calendar.stages[1]!.id}.reference@halfnut.invalid`);
    expect(stripOf(underWay).words[0]).toBe(`${first.name}: done.`);
  });

  test('without a first day there is no file', () => {
    expect(() => eventsOf(calendarOf(pathOf({}), currentEdition), 'x')).toThrow('needs a first day');
  });
});
