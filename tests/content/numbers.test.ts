// Every number with a unit in the text of a topic page stands in the page's sources, or in the trade data that it lists.
import { describe, expect, test } from 'vitest';
import { decisionById } from '../../src/calc/guide.ts';
import { parts, risks, tasks } from '../../src/calc/trade.ts';
import { quantitiesIn } from './quantities.ts';
import { type TopicPage, topicPages } from './topic-pages.ts';

const listed = <T extends { readonly id: string }>(all: readonly T[], ids: readonly string[]): T[] =>
  all.filter(({ id }) => ids.includes(id));

/** What the trade data of the page says in words, its hours of work, and its chances as builders of 20. */
function tradeNumbers({ head }: TopicPage): string[] {
  const work = listed(tasks, head.tasks);
  const mishaps = listed(risks, head.risks);
  const texts = [...head.decisions.map(decisionById), ...listed(parts, head.parts), ...work, ...mishaps];
  return [
    ...texts.flatMap((each) => quantitiesIn(JSON.stringify(each))),
    ...work.flatMap(({ hours }) => hours.map((each) => `${each} hour`)),
    ...mishaps.flatMap(({ chance }) => chance.map((each) => `${Math.round(each * 20)} of 20`)),
  ];
}

test('numbers with units are found in a text, in figures and in words', () => {
  expect(quantitiesIn('It gives 0.01 or 0.02 mm, **1,500 N** in six to ten weeks.')).toEqual([
    '0.01 mm',
    '0.02 mm',
    '1,500 N',
    '6 week',
    '10 week',
  ]);
  expect(quantitiesIn('Two screws, one a year, three quarters of the 10 mm plate, 5 %')).toEqual([
    '10 mm',
    '5 %',
    'three quarters',
  ]);
});

describe.each(topicPages)('$id', (page) => {
  test('it names no price: prices stand in what it costs', () => {
    expect(page.body.match(/\$\s?\d|\d+ dollars/g) ?? []).toEqual([]);
  });

  test('every number with a unit has its source', () => {
    const known = new Set([...page.head.sources.flatMap(quantitiesIn), ...tradeNumbers(page)]);
    expect(quantitiesIn(page.body).filter((each) => !known.has(each))).toEqual([]);
  });
});
