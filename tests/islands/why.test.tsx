import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { Path } from '../../src/calc/core/path.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { formulas } from '../../src/calc/formulas/registry.ts';
import { type Explanation, whyNumber } from '../../src/calc/why-number.ts';
import { mathOf } from '../../src/components/equation.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { quantityText, siText } from '../../src/islands/shared/quantity.ts';
import { askedBy, nameOf } from '../../src/islands/why/asked.ts';
import { saidOnce } from '../../src/islands/why/once.ts';
import { substituted } from '../../src/islands/why/substitute.ts';
import { Why, WhySheet } from '../../src/islands/why/Why.tsx';
import { WhyView } from '../../src/islands/why/WhyView.tsx';

afterEach(cleanup);

const path: Path = referencePaths[0]!.path;
const report = evaluate(path, currentEdition);

const sides = report.checks.flatMap(({ id }) =>
  (['value', 'limit', 'limitLow'] as const).map((side) => ({ kind: 'check', id, side }) as const),
);
const explained = sides.flatMap((asked) => whyNumber(path, currentEdition, asked) ?? []);

const everyStep = (explanation: Explanation): Explanation[] => [
  explanation,
  ...explanation.inputs.flatMap(({ parts }) => parts.flatMap(everyStep)),
];

describe('the address of a number', () => {
  test.each([
    ['total.money', { kind: 'total', id: 'money' }],
    ['total.weeks-out', { kind: 'total', id: 'weeks-out' }],
    ['check.cross-tunnel.limitLow', { kind: 'check', id: 'cross-tunnel', side: 'limitLow' }],
    ['risk.duty', { kind: 'risk', id: 'duty' }],
    ['figure.cross-thrust', { kind: 'figure', id: 'cross-thrust' }],
  ] as const)('%s is read and written alike', (name, asked) => {
    expect(askedBy(name)).toEqual(asked);
    expect(nameOf(asked)).toBe(name);
  });

  test.each(['', 'total', 'total.luck', 'check.x', 'check.x.top', 'risk.a.b', 'figure.<b>', 'x.y'])(
    'nothing is read into “%s”',
    (name) => {
      expect(askedBy(name)).toBeUndefined();
    },
  );
});

describe('figures with their units', () => {
  test.each([
    [0.0285, 'm', '28.5 mm', '1.122 in'],
    [0.04, 'm/s', '2,400 mm/min', '94.5 in/min'],
    [1.5, 'm/s', '90 m/min', '295 ft/min'],
    [0.00015, 'm/rev', '0.15 mm/rev', '0.00591 in/rev'],
    [0.5, 'm/s²', '500 mm/s²', '19.7 in/s²'],
    [2.5e-6, 'm²', '2.5 mm²', '2.5 mm²'],
    [0.0055, 'A', '5.5 mA', '5.5 mA'],
    [0.0429, 'V', '0.0429 V', '0.0429 V'],
    [136_533, 'Hz', '137 thousand a second', '137 thousand a second'],
    [1234.56, '$', '$1,235', '$1,235'],
    [0.722, '1', '0.722', '0.722'],
  ] as const)('%d %s is %s or %s', (value, unit, metric, inch) => {
    expect(quantityText({ value, unit }, 'metric')).toBe(metric);
    expect(quantityText({ value, unit }, 'inch')).toBe(inch);
  });

  test('SI figures keep small ones readable', () => {
    expect(siText({ value: 2.5e-6, unit: 'm²' })).toBe('2.5 × 10⁻⁶ m²');
    expect(siText({ value: 420, unit: 'N' })).toBe('420 N');
  });
});

describe('equations', () => {
  test('every one becomes MathML that the content policy lets pass', () => {
    for (const { tex } of formulas) {
      const math = mathOf(tex);
      expect(math).toMatch(/^<math[^>]*><.*<\/math>$/s);
      expect(math).not.toMatch(/ style=| class="(?!letter")|<annotation|merror/);
      // A letter that is left to slant by itself is not drawn where the fonts have no slanted letters.
      expect(math).not.toMatch(/<mi>[a-zA-Zα-ω]<\/mi>/);
    }
  });

  const leaf = (value: number, unit: Explanation['unit']): Explanation => ({
    title: 'x',
    value,
    unit,
    origin: 'assumed',
    say: '',
    inputs: [],
  });
  const law = (equation: string, id = 'some-law') => ({ id, equation, outside: [] });

  test('figures stand in place of names, in brackets under a power', () => {
    const inputs = [
      { name: 'force', parts: [leaf(20, 'N')] },
      { name: 'forceFactor', parts: [leaf(2, '1')] },
    ];
    const made = { ...leaf(800, 'N'), inputs, law: law('load = force² × forceFactor') };
    expect(substituted(made)).toBe('(20 N)² × 2 = 800 N');
  });

  test('a step is written with its sign, a sentence is left alone', () => {
    const inputs = [
      { name: 'a', parts: [leaf(2, 'A')] },
      { name: 'b', parts: [leaf(3, 'A')] },
    ];
    expect(substituted({ ...leaf(5, 'A'), inputs, law: law('all of them added', 'sum') })).toBe(
      '2 A + 3 A = 5 A',
    );
    expect(substituted({ ...leaf(5, 'A'), inputs, law: law('a of the table at b') })).toBeUndefined();
  });

  test('no equation of a real path is left half filled', () => {
    for (const step of explained.flatMap(everyStep))
      expect(substituted(step) ?? '').not.toMatch(/undefined|NaN|\[object/);
  });
});

describe('the view', () => {
  test.each(explained.map((explanation) => [explanation.title, explanation] as const))(
    '%s is explained down to the answers',
    (_, explanation) => {
      const { container } = render(<WhyView explanation={explanation} equations={{}} open />);
      const said = (container.textContent ?? '').toLowerCase();
      for (const step of everyStep(explanation).slice(1)) {
        expect(said).toContain(step.title.toLowerCase());
        expect(said).toContain((step.law?.source ? step.law.equation : step.say).toLowerCase());
      }
      const changes = everyStep(explanation).filter(({ change }) => change);
      expect(container.querySelectorAll('a[data-keep-path]').length).toBe(changes.length);
    },
  );

  test('what lies outside the range and what is not verified is said in words', () => {
    const explanation: Explanation = {
      title: 'Push',
      value: 3,
      unit: 'N',
      origin: 'derived',
      say: 'Push.',
      inputs: [],
      law: {
        id: 'x',
        equation: 'push = pull',
        outside: ['beltEfficiency', 'lead'],
        unverified: 'None is known.',
      },
    };
    render(<WhyView explanation={explanation} equations={{ x: '<math><mi>P</mi></math>' }} open={false} />);
    expect(screen.getByText(/Belt efficiency and lead lie outside/)).toBeDefined();
    expect(screen.getByText(/None is known\./)).toBeDefined();
    expect(document.querySelector('.equation math')).not.toBeNull();
  });

  test('read from the top, a step is worked out where it is first met and named where it comes again', () => {
    const leaf: Explanation = {
      title: 'Lead',
      value: 1,
      unit: 'm',
      origin: 'answered',
      say: 'Typed.',
      inputs: [],
    };
    const step: Explanation = {
      ...leaf,
      title: 'Push',
      origin: 'derived',
      say: 'Push.',
      law: { id: 'x', equation: 'push = lead', outside: [] },
      inputs: [{ name: 'lead', parts: [leaf] }],
    };
    const whole = { ...step, title: 'Sum', inputs: ['a', 'b'].map((name) => ({ name, parts: [step] })) };
    const [first, second] = saidOnce(whole).inputs.map(({ parts }) => parts[0]);
    expect(first).toEqual(step);
    expect(second).toMatchObject({ title: 'Push', value: 1, say: 'Worked out above.', inputs: [] });
    expect(second?.law).toBeUndefined();
  });

  test('a long list shows its largest lines and folds the others', () => {
    const explanation = whyNumber(path, currentEdition, { kind: 'total', id: 'money' })!;
    render(<WhyView explanation={explanation} equations={{}} open={false} />);
    expect(screen.getByText(/And \d+ smaller lines/)).toBeDefined();
  });
});

test('a figure opens its sheet, which is shut again by its button', async () => {
  vi.stubGlobal('fetch', async () => Response.json({}));
  render(
    <>
      <Why asked={{ kind: 'total', id: 'money' }} name="money">
        Why this much?
      </Why>
      <WhySheet />
    </>,
  );
  fireEvent.click(screen.getByRole('button', { name: /Why this much\?.*why: money/ }));
  expect(await screen.findByText(/Half of the 2,000 builds cost less/)).toBeDefined();
  fireEvent.click(screen.getByRole('button', { name: 'Close' }));
  await waitFor(() => expect(screen.queryByText(/Half of the 2,000 builds/)).toBeNull());
}, 300_000);
