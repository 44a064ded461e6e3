import assert from 'node:assert/strict';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodePath } from '../../src/link/encode.ts';
import type { Tab } from './bidi.ts';

const HASH = 'decodeURIComponent(location.hash)';
const saysIn = (selector: string) =>
  `document.querySelector(${JSON.stringify(selector)})?.textContent.replace(/\\s+/g, ' ') ?? ''`;
const squeezed = (text: string): string => text.replace(/\s+/g, ' ');

/** From the first page to a question answered, with the card and the link moving along. */
async function answersFirstQuestion(tab: Tab, home: string): Promise<void> {
  await tab.goto(home);
  await tab.click('.home-buttons .primary');
  await tab.until("location.pathname.endsWith('/lathe/')");
  await tab.click('input[name="size"]:not(:checked)');
  await tab.until(`/size=/.test(${HASH})`);
  await tab.goto(`${home}questions/which-lathe/${await tab.value<string>('location.hash')}`);
  await tab.click('#which-lathe-spare-lathe');
  await tab.until(`/which-lathe=spare-lathe/.test(${HASH})`);
  await tab.until(
    "[...document.querySelectorAll('[role=status]')].some((e) => /Money: .*Hours: /.test(e.textContent))",
  );
}

/** On to the next question by the page's own link, to the plan, and back through the history. */
async function goesOn(tab: Tab): Promise<void> {
  await tab.value<boolean>(
    "([...document.querySelectorAll('a')].find((a) => /^Continue/.test(a.textContent.trim())).id = 'on', true)",
  );
  await tab.click('#on');
  await tab.until("!location.pathname.includes('which-lathe') && document.querySelector('.option input')");
  const hash = await tab.value<string>(HASH);
  assert.match(hash, /which-lathe=spare-lathe/);
  await tab.click('.sheet-nav a[href*="plan/"]');
  await tab.until("location.pathname.endsWith('/plan/') && document.querySelector('#parts')");
  assert.equal(await tab.value<string>(HASH), hash);
  await tab.reload();
  await tab.until("document.querySelector('#parts')");
  assert.equal(await tab.value<string>(HASH), hash);
}

/** The plan of a whole link says what the sums come to here: every task, part and risk, and every printed price. */
async function showsThePlan(tab: Tab, home: string): Promise<void> {
  const { path } = referencePaths[0]!;
  const report = evaluate({ ...path, edition: currentEdition.edition }, currentEdition);
  await tab.goto(`${home}plan/#${encodePath({ ...path, edition: currentEdition.edition })}`);
  await saysAll(
    tab,
    'main',
    report.stages.flatMap(({ tasks }) => tasks),
  );
  await saysAll(tab, '#parts', report.bill.once);
  await saysAll(tab, '#risks', report.risks);
}

/** Waits until a part of the page names every row: it may show the path of before for a moment. */
async function saysAll(
  tab: Tab,
  selector: string,
  rows: readonly { readonly name: string }[],
): Promise<void> {
  const names = rows.map(({ name }) => squeezed(name));
  const all = `((said) => ${JSON.stringify(names)}.every((name) => said.includes(name)))(${saysIn(selector)})`;
  await tab.until(all).catch(() => undefined);
  const said = await tab.value<string>(saysIn(selector));
  assert.deepEqual(
    names.filter((name) => !said.includes(name)),
    [],
  );
}

export interface Step {
  readonly name: string;
  readonly run: (tab: Tab, home: string) => Promise<void>;
}

export const journey: readonly Step[] = [
  {
    name: 'a newcomer answers the first question and sees the card and the link move',
    run: answersFirstQuestion,
  },
  { name: 'goes on to the next question and to the plan, and finds it again after a reload', run: goesOn },
  { name: 'the plan of a whole link shows every task, part and risk', run: showsThePlan },
  {
    name: 'nothing was asked of another place, refused by the policy or thrown',
    run: async (tab) => assert.deepEqual(tab.problems, []),
  },
];
