import AxeBuilder from '@axe-core/playwright';
import { test as base, expect, type Page } from '@playwright/test';
import { watch } from './support/watch.ts';

type Fixtures = {
  /** Problems a test provokes on purpose, e.g. `test.use({ allowedProblems: [/404/] })`. */
  allowedProblems: RegExp[];
  noProblems: undefined;
};

/** Every test fails on a request to another origin, a console or page error, or a content policy violation. */
export const test = base.extend<Fixtures>({
  allowedProblems: [[], { option: true }],
  noProblems: [
    async ({ context, baseURL, allowedProblems }, use) => {
      const problems = await watch(context, new URL(baseURL ?? '').origin);
      await use(undefined);
      expect(problems.filter((problem) => !allowedProblems.some((allowed) => allowed.test(problem)))).toEqual(
        [],
      );
    },
    { auto: true },
  ],
});

/** Fails, naming rule and elements, when the page, or a part of it, breaks a WCAG 2.0, 2.1 or 2.2 A/AA rule that axe can see. */
export async function expectNoAxeViolations(page: Page, part = 'html'): Promise<void> {
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
  const { violations } = await new AxeBuilder({ page }).include(part).withTags(tags).analyze();
  const found = violations.map(({ id, help, nodes }) => ({
    id,
    help,
    where: nodes.map(({ target }) => target),
  }));
  expect(found).toEqual([]);
}

export { expect };
