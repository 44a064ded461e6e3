// What the plan and the buy list show of the book: quiet links to the topics, and a word where something is not on the path.
import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, beforeAll, expect, test } from 'vitest';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { checks } from '../../src/content/told/checks.ts';
import { heads } from '../../src/content/told/heads.ts';
import { parts } from '../../src/content/told/parts.ts';
import { risks } from '../../src/content/told/risks.ts';
import { tasks } from '../../src/content/told/tasks.ts';
import { Bill } from '../../src/islands/plan/Bill.tsx';
import { Checks } from '../../src/islands/plan/Checks.tsx';
import { Risks } from '../../src/islands/plan/Risks.tsx';
import { drawAll } from '../../src/islands/shared/in-turn.tsx';
import { ownPlace } from '../../src/islands/shared/places.ts';
import { topicsOf } from '../../src/islands/shared/ReadAbout.tsx';

// Rows do not wait for their turn.
beforeAll(drawAll);

afterEach(() => {
  cleanup();
  window.history.replaceState(null, '', '/');
});

const report = evaluate(referencePaths[0]!.path, currentEdition);

const topicsIn = (row: Element): string[] =>
  [...row.querySelectorAll('.read-about a')].map((link) => /topics\/([a-z-]+)\//.exec(link.outerHTML)![1]!);

/** Each row that the book may lead to, with the topics that it leads to in the book. */
const rowsOf = (prefix: string) =>
  [...document.querySelectorAll(`[id^="${prefix}-"]`)].map((row) => ({
    id: row.id.slice(prefix.length + 1),
    about: topicsIn(row),
  }));

test.each([
  ['check', 'checks', checks, () => render(<Checks report={report} />), report.checks.length],
  ['risk', 'risks', risks, () => render(<Risks report={report} />), report.risks.length],
  ['part', 'parts', parts, () => render(<Bill report={report} />), report.bill.once.length],
] as const)(
  'every %s on the plan leads to its topics and has the place they lead back to',
  (prefix, kind, told, draw, count) => {
    draw();
    const rows = rowsOf(prefix);
    expect(rows.length).toBeGreaterThanOrEqual(count);
    for (const { id, about } of rows) {
      const naming = heads.filter(({ head }) => head[kind].includes(id)).map((each) => each.id);
      expect(about.toSorted()).toEqual(naming.toSorted());
      expect(about).toHaveLength(told[id]!.length);
      if (kind !== 'parts') expect(ownPlace[kind](id)).toContain(`#${prefix}-${id}`);
    }
  },
);

test('topics of the same room come first', () => {
  const mixed = Object.keys(tasks).filter((id) => tasks[id]!.length > 1);
  expect(mixed.length).toBeGreaterThan(0);
  for (const id of mixed)
    for (const { head } of heads.filter((each) => each.head.tasks.includes(id))) {
      const rooms = topicsOf(tasks, id, head.room).map(([, , room]) => room === head.room);
      expect(rooms).toEqual(rooms.toSorted((a, b) => Number(b) - Number(a)));
      expect(rooms[0]).toBe(true);
    }
});

test('who comes for a check that does not arise is told so, and who comes for one that does is not', () => {
  window.history.replaceState(null, '', '/plan/?place=check-of-nothing#2?s=a');
  render(<Checks report={report} />);
  expect(screen.getByText(/check that you came for is not on this path/)).toBeDefined();
  cleanup();
  window.history.replaceState(null, '', `/plan/?place=check-${report.checks[0]!.id}#2?s=a`);
  render(<Checks report={report} />);
  expect(screen.queryByText(/you came for/)).toBeNull();
});
