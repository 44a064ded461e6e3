// What the plan, the buy list and the bench link to in the book, and what the book links back to: every thing both ways.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parts, risks, tasks } from '../../src/calc/trade.ts';
import { checkLabels } from '../../src/components/book/check-labels.ts';
import { sectionFor } from '../../src/content/book-topic.ts';
import * as toldChecks from '../../src/content/told/checks.ts';
import { heads } from '../../src/content/told/heads.ts';
import * as toldParts from '../../src/content/told/parts.ts';
import * as toldRisks from '../../src/content/told/risks.ts';
import { settingGroups } from '../../src/content/told/settings.ts';
import * as toldTasks from '../../src/content/told/tasks.ts';
import { sections, topics } from '../../src/content/told/topics.ts';
import { ownPlace } from '../../src/islands/shared/places.ts';

const idsOf = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);
const KINDS = [
  { kind: 'checks', told: toldChecks.checks, known: [...checkLabels.keys()] },
  { kind: 'parts', told: toldParts.parts, known: idsOf(parts) },
  { kind: 'tasks', told: toldTasks.tasks, known: idsOf(tasks) },
  { kind: 'risks', told: toldRisks.risks, known: idsOf(risks) },
] as const;

test('the list of topics is the pages of the book, in their order', () => {
  expect(topics).toEqual(heads.map(({ id, head }) => [id, head.title, head.room]));
  expect(new Set(topics.map(([id]) => id)).size).toBe(topics.length);
  const rooms = heads.map(({ head }) => head.room);
  expect(rooms.filter((room, at) => room !== rooms[at - 1])).toEqual([...new Set(rooms)]);
});

test('things are sent to the sections that the pages have', () => {
  expect(sections).toEqual(sectionFor);
});

test.each(KINDS)('each of the $kind has its topics', ({ told, known }) => {
  expect(Object.keys(told).sort()).toEqual([...new Set(known)].sort());
});

test.each(KINDS)('each topic that one of the $kind leads to names it, and leads back', ({ kind, told }) => {
  const there = Object.entries(told).flatMap(([id, places]) =>
    places.map((at) => `${topics[at]?.[0]} ${id}`),
  );
  const back = heads.flatMap(({ id, head }) => head[kind].map((each) => `${id} ${each}`));
  expect(there.sort()).toEqual(back.sort());
});

test.each([
  ['checks', 'plan/Checks.tsx', 'check', 'check.id'],
  ['tasks', 'plan/TaskTable.tsx', 'task', 'task.id'],
  ['bench', 'bench/StagePart.tsx', 'task', 'task.id'],
  ['risks', 'plan/Risks.tsx', 'risk', 'risk.id'],
  ['parts', 'buy/BuyLine.tsx', 'line', 'line.part'],
] as const)('where the book leads for one of the %s, %s draws it', (kind, file, word, given) => {
  const drawn = readFileSync(join(import.meta.dirname, '../../src/islands', file), 'utf8');
  expect(drawn).toContain(['id={`', word, '-$', `{${given}}`, '`}'].join(''));
  const place = ownPlace[kind]('some-thing');
  expect(place).toMatch(
    kind === 'parts' ? /buy-list\/\?line=some-thing$/ : new RegExp(`(plan|bench)/#${word}-some-thing$`),
  );
});

test.each([
  ['TopicLinks.astro', ['ownPlace.checks(id)']],
  ['TopicCost.astro', ['ownPlace.parts(id)']],
  ['TopicWork.astro', ['ownPlace.tasks(id)', 'ownPlace.bench(id)', 'ownPlace.risks(id)']],
])('%s leads to the reader’s own', (file, places) => {
  const page = readFileSync(join(import.meta.dirname, '../../src/components/book', file), 'utf8');
  for (const place of places) expect(page).toContain(`href={${place}} data-keep-path`);
});

test('each group of the settings sheet leads to topics that there are, and each once', () => {
  const known = new Set<string>(topics.map(([id]) => id));
  for (const { axis, topics: told } of settingGroups) {
    expect(told.filter((id) => !known.has(id))).toEqual([]);
    expect(new Set(told).size).toBe(told.length);
    expect(ownPlace.settings(axis)).toMatch(new RegExp(`plan/#setting-${axis}$`));
  }
});
