// What the trade data must hold for the model to be whole: a missing id, price or sentence fails here by name.
import { describe, expect, test } from 'vitest';
import { exclusions } from '../../src/calc/choices/exclusions.ts';
import { compile } from '../../src/calc/choices/state.ts';
import { isBand } from '../../src/calc/core/band.ts';
import { type Condition, decisionsIn, walk } from '../../src/calc/core/condition.ts';
import { facts } from '../../src/calc/facts.ts';
import { decisions } from '../../src/calc/guide.ts';
import { hasMeasure } from '../../src/calc/measures.ts';
import { stageNames } from '../../src/calc/schedule/stages.ts';
import { parts, risks, rules, tasks } from '../../src/calc/trade.ts';
import { editions } from '../../src/content/edition.ts';

const KEBAB = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const place = new Map(decisions.map((decision, at) => [decision.id, at]));
const options = decisions.flatMap((decision) => decision.options.map((option) => ({ decision, option })));
const words = (text: string): number => text.trim().split(/\s+/).length;

const everyCondition: [where: string, Condition][] = [
  ...decisions.flatMap((d): [string, Condition][] => (d.askWhen ? [[d.id, d.askWhen]] : [])),
  ...parts.flatMap((p) => [...p.needs, ...(p.keep ?? [])].map((n): [string, Condition] => [p.id, n.when])),
  ...tasks.flatMap((t) => [
    ...(t.when ? [[t.id, t.when] as [string, Condition]] : []),
    ...[...(t.extra ?? []), ...(t.scale ?? []), ...(t.afterWhen ?? [])].map((e): [string, Condition] => [
      t.id,
      e.when,
    ]),
  ]),
  ...risks.flatMap((r) => [
    [r.id, r.when] as [string, Condition],
    ...r.levers.map((l): [string, Condition] => [r.id, l.when]),
  ]),
  ...rules.map((r): [string, Condition] => [r.id, r.when]),
];

describe('ids', () => {
  test.each([
    ['decisions', decisions],
    ['parts', parts],
    ['tasks', tasks],
    ['risks', risks],
    ['rules', rules],
    ['facts', facts],
    ['extra work', tasks.flatMap((task) => task.extra ?? [])],
  ])('%s are unique and kebab-case', (_, list) => {
    const ids = list.map((each) => each.id);
    expect(ids.filter((id) => !KEBAB.test(id))).toEqual([]);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  test('option ids are unique within their question and over all questions', () => {
    const ids = options.map(({ option }) => option.id);
    expect(ids.filter((id) => !KEBAB.test(id))).toEqual([]);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  test('the counts of the trade do not shrink', () => {
    expect(decisions.length).toBeGreaterThanOrEqual(60);
    expect(options.length).toBeGreaterThanOrEqual(146 + 60);
    expect(parts.length).toBeGreaterThanOrEqual(138);
    expect(tasks.length).toBeGreaterThanOrEqual(62);
    expect(risks.length).toBeGreaterThanOrEqual(52);
    expect(rules.length).toBeGreaterThanOrEqual(103);
  });
});

describe('conditions', () => {
  test('every one compiles: no unknown decision, option or figure', () => {
    const broken = everyCondition.flatMap(([where, condition]) => {
      try {
        compile(condition);
        return [];
      } catch (error) {
        return [`${where}: ${(error as Error).message}`];
      }
    });
    expect(broken).toEqual([]);
  });

  test('every measure exists, and none decides whether an option is allowed', () => {
    const measures = everyCondition.flatMap(([, c]) =>
      walk(c).flatMap((p) => (p.kind === 'measure' ? [p.measure] : [])),
    );
    expect(measures.filter((id) => !hasMeasure(id))).toEqual([]);
    const deciding = exclusions.filter(({ rule }) => walk(rule.when).some((p) => p.kind === 'measure'));
    expect(deciding.map(({ rule }) => rule.id)).toEqual([]);
  });

  test('a question is asked or not by questions before it only', () => {
    const forward = decisions.flatMap((decision) =>
      (decision.askWhen ? decisionsIn(decision.askWhen) : [])
        .filter((id) => place.get(id)! >= place.get(decision.id)!)
        .map((id) => `${decision.id} looks at ${id}`),
    );
    const byRule = rules.flatMap((rule) =>
      rule.then.flatMap((effect) =>
        effect.kind === 'asksNot'
          ? effect.decisions.flatMap((asked) =>
              decisionsIn(rule.when)
                .filter((id) => place.get(id)! >= place.get(asked)!)
                .map((id) => `${rule.id}: ${asked} looks at ${id}`),
            )
          : [],
      ),
    );
    expect([...forward, ...byRule]).toEqual([]);
  });
});

describe('questions', () => {
  test('each has its words', () => {
    const short = decisions.filter(
      (d) => !d.ask || words(d.ask) > 14 || !d.why || !d.thumb || !d.name || !d.assumeWhy,
    );
    expect(short.map((d) => `${d.id}: ${d.ask}`)).toEqual([]);
  });

  test('each lists every option once in the order of assumption', () => {
    const wrong = decisions.filter(
      (d) =>
        [...d.assume].sort().join() !==
        d.options
          .map((o) => o.id)
          .sort()
          .join(),
    );
    expect(wrong.map((d) => d.id)).toEqual([]);
  });

  test('each option says what it is; a choice also says what it gains and what goes wrong', () => {
    const mute = options.filter(({ decision, option }) => {
      const bare = !option.label || !option.means;
      return (
        bare ||
        (decision.place === 'guide' && decision.open === 'options' && (!option.gains || !option.wrong))
      );
    });
    expect(mute.map(({ decision, option }) => `${decision.id}/${option.id}`)).toEqual([]);
  });
});

describe('parts, tasks, risks and rules', () => {
  test.each(editions.map((book) => [book.edition, book] as const))(
    'edition %s prices no part but those of the trade, in bands',
    (_, book) => {
      const known = new Set(parts.map((part) => part.id));
      expect(Object.keys(book.parts).filter((id) => !known.has(id))).toEqual([]);
      expect(
        Object.entries(book.parts)
          .filter(([, entry]) => !isBand(entry.price) || !isBand(entry.leadDays))
          .map(([id]) => id),
      ).toEqual([]);
    },
  );

  test('today’s edition prices every part; an older one lacks only what came later', () => {
    const lacking = (book: (typeof editions)[number]) =>
      parts.filter((part) => !book.parts[part.id]).map((part) => part.id);
    expect(lacking(editions[0]!)).toEqual([]);
    expect(lacking(editions.find(({ edition }) => edition === '2026-11')!).sort()).toEqual([
      'small-taps',
      'spare-belt',
      'spare-coupling-element',
      'spare-fuses',
      'tapping-drills',
    ]);
  });

  test('figures that parts are counted by exist, and so do the spares that risks name', () => {
    const counted = parts.flatMap(({ needs, keep = [] }) =>
      [...needs, ...keep].flatMap(({ qty }) => (typeof qty === 'object' ? [qty.figure] : [])),
    );
    expect(counted.filter((id) => !hasMeasure(id))).toEqual([]);
    const ids = new Set(parts.map((part) => part.id));
    expect(risks.flatMap(({ spares = [] }) => spares).filter((id) => !ids.has(id))).toEqual([]);
  });

  test('no words of the trade name a price: prices stand in the edition, which changes', () => {
    const said = [...decisions, ...parts, ...tasks, ...risks, ...rules].map(
      (each) => [each.id, JSON.stringify(each)] as const,
    );
    expect(said.filter(([, text]) => /\$\s?\d|\d+ dollars/.test(text)).map(([id]) => id)).toEqual([]);
  });

  test('every part can be needed', () => {
    const byRule = new Set(
      rules.flatMap((rule) => rule.then.flatMap((e) => (e.kind === 'addsPart' ? [e.part] : []))),
    );
    expect(
      parts.filter((part) => part.needs.length === 0 && !byRule.has(part.id)).map((part) => part.id),
    ).toEqual([]);
  });

  test('every task has a stage, a test, ordered hours and known prerequisites', () => {
    const ids = new Set(tasks.map((task) => task.id));
    const stages = new Set(stageNames.map((stage) => stage.id));
    const wrong = tasks.filter((task) => {
      const after = [...task.after, ...(task.afterWhen ?? []).flatMap((each) => each.after)];
      return !stages.has(task.stage) || !task.test || !isBand(task.hours) || after.some((id) => !ids.has(id));
    });
    expect(wrong.map((task) => task.id)).toEqual([]);
    const extras = tasks.flatMap((task) => task.extra ?? []);
    expect(extras.filter((extra) => !isBand(extra.hours) || !extra.why).map((extra) => extra.id)).toEqual([]);
    expect(tasks.flatMap((task) => task.scale ?? []).filter((scale) => scale.by <= 0)).toEqual([]);
  });

  test('every risk has its words, ordered bands and chances under one', () => {
    const wrong = risks.filter(
      (r) =>
        !r.sign ||
        !r.prevent ||
        !r.cause ||
        !isBand(r.chance) ||
        r.chance[2] > 1 ||
        !isBand(r.money) ||
        !isBand(r.hours),
    );
    expect(wrong.map((risk) => risk.id)).toEqual([]);
  });

  test('every rule says its sentence and names what exists', () => {
    const partIds = new Set(parts.map((part) => part.id));
    const taskIds = new Set(tasks.map((task) => task.id));
    const wrong = rules.flatMap((rule) => [
      ...(rule.say.trim().length < 10 ? [`${rule.id} is silent`] : []),
      ...rule.then.flatMap((effect) => {
        if (effect.kind === 'addsPart' || effect.kind === 'removesPart')
          return partIds.has(effect.part) ? [] : [`${rule.id}: ${effect.part}`];
        if (effect.kind === 'addsTask') return taskIds.has(effect.task) ? [] : [`${rule.id}: ${effect.task}`];
        if (effect.kind === 'dropsTask' || effect.kind === 'scalesTask' || effect.kind === 'orders')
          return effect.tasks.filter((id) => !taskIds.has(id)).map((id) => `${rule.id}: ${id}`);
        if (effect.kind === 'gate')
          return [...effect.of, ...effect.before]
            .filter((id) => !taskIds.has(id))
            .map((id) => `${rule.id}: ${id}`);
        if (effect.kind === 'asksNot')
          return effect.decisions.filter((id) => !place.has(id)).map((id) => `${rule.id}: ${id}`);
        if (effect.kind === 'suggests')
          return place.has(effect.decision) ? [] : [`${rule.id}: ${effect.decision}`];
        return [];
      }),
    ]);
    expect(wrong).toEqual([]);
  });
});
