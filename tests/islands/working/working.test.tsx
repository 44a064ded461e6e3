import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { exampleOf, type WorkingFigure } from '../../../src/calc/working-figures/figure.ts';
import { workingFigures } from '../../../src/calc/working-figures/list.ts';
import { whip } from '../../../src/calc/working-figures/whip.ts';
import { sentenceOf } from '../../../src/islands/working/answer-text.ts';
import { layoutPlot, roundMarks, roundUp } from '../../../src/islands/working/plot-layout.ts';
import { readTyped } from '../../../src/islands/working/typed.ts';
import { Working } from '../../../src/islands/working/Working.tsx';

afterEach(() => {
  cleanup();
  window.localStorage.clear();
});

const length = () => screen.getByLabelText('Length between the bearings') as HTMLInputElement;
const table = () => within(screen.getByRole('table'));

describe('a figure that is moved', () => {
  test('begins as the example, with picture, sentence and table', () => {
    render(<Working figure={whip} />);
    const sentence = sentenceOf(whip, exampleOf(whip), whip.answer(exampleOf(whip)));
    expect(screen.getByRole('img').getAttribute('aria-label')).toBe(sentence);
    expect(screen.getByText('An example: a medium lathe.')).toBeTruthy();
    expect(table().getAllByRole('row')).toHaveLength(5);
  });

  test('takes a value from field and slider alike, and starts again', () => {
    render(<Working figure={whip} />);
    const before = table().getByText(/5,\d{3} rpm/).textContent;
    fireEvent.input(length(), { target: { value: '1200' } });
    expect(table().getByText('1,200 mm')).toBeTruthy();
    const slider = screen.getByLabelText('Length between the bearings, slider') as HTMLInputElement;
    expect(slider.value).toBe('1200');
    fireEvent.input(slider, { target: { value: '900' } });
    expect(length().value).toBe('900');
    fireEvent.click(screen.getByText('Start again'));
    expect(length().value).toBe('600');
    expect(table().getByText(before!)).toBeTruthy();
  });

  test('keeps what was typed wrongly, says what is wrong, and lets the last value stand', () => {
    render(<Working figure={whip} />);
    fireEvent.input(length(), { target: { value: 'long' } });
    expect(length().value).toBe('long');
    expect(length().getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText('Write a plain figure, 150 to 1,500 mm.')).toBeTruthy();
    expect(table().getByText('600 mm')).toBeTruthy();
    fireEvent.input(length(), { target: { value: '9000' } });
    expect(screen.getByText('This figure works from 150 to 1,500 mm.')).toBeTruthy();
  });
});

test('a comma is read as a point, and what is typed becomes SI', () => {
  expect(readTyped(whip.inputs[1]!, ' 13,2 ')).toEqual({ value: 13.2 / 1000 });
});

test.each([
  [0, 1],
  [0.03, 0.05],
  [1, 1],
  [2.1, 2.5],
  [640, 1000],
])('an axis up to %d goes to %d', (value, top) => {
  expect(roundUp(value)).toBeCloseTo(top, 12);
});

test.each([
  { from: 150, to: 1500, marks: [500, 1000, 1500] },
  { from: 0, to: 0.1, marks: [0, 0.02, 0.04, 0.06, 0.08, 0.1] },
  { from: 56, to: 86, marks: [60, 70, 80] },
])('an axis from $from to $to is marked at round figures', ({ from, to, marks }) => {
  expect(roundMarks(from, to)).toEqual(marks);
});

const everyEnd = (figure: WorkingFigure) =>
  (['low', 'high', 'example'] as const).map((end) =>
    Object.fromEntries(figure.inputs.map((input) => [input.id, input[end] / input.written.per])),
  );

test.each(workingFigures)(
  '$id: the reader’s point lies inside the picture and its axes are marked, the least and the most put in',
  (figure) => {
    for (const values of everyEnd(figure)) {
      const answer = figure.answer(values);
      const plot = layoutPlot(figure, answer);
      for (const at of [plot.x(answer.mark[0]), plot.y(answer.mark[1])]) {
        expect(at).toBeGreaterThanOrEqual(-1e-9);
        expect(at).toBeLessThanOrEqual(100 + 1e-9);
      }
      expect(plot.across.length).toBeGreaterThanOrEqual(2);
      expect(plot.up.length).toBeGreaterThanOrEqual(2);
      expect(sentenceOf(figure, values, answer)).not.toMatch(/[{}]|NaN|–/);
    }
  },
);
