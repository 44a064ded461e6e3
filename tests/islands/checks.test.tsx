import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { atMost, between, type Check } from '../../src/calc/core/check.ts';
import { assumed } from '../../src/calc/core/quantity.ts';
import type { PlacedCheck, Report } from '../../src/calc/evaluate.ts';
import { $accepted } from '../../src/islands/plan/acceptances.ts';
import { Checks } from '../../src/islands/plan/Checks.tsx';
import { checksByRoom } from '../../src/islands/plan/checks-by-room.ts';
import { drawAll } from '../../src/islands/shared/in-turn.tsx';

// Rows do not wait for their turn.
beforeAll(drawAll);

beforeEach(() => {
  window.localStorage.clear();
  $accepted.set({});
});
afterEach(cleanup);

const mm = (value: number) => assumed(value / 1000, 'm', 'for a test');
const made = (
  id: string,
  value: number | undefined,
  subsystem: PlacedCheck['subsystem'],
  more: Partial<Check> = {},
): PlacedCheck => ({
  ...atMost({
    id,
    label: `Check ${id}`,
    value: value === undefined ? undefined : mm(value),
    limit: mm(10),
    comfort: 1.2,
    remedy: `Put ${id} right.`,
    decisions: ['control'],
  }),
  subsystem,
  ...more,
});

const show = (...checks: PlacedCheck[]) => render(<Checks report={{ checks } as unknown as Report} />);

describe('order', () => {
  test('rooms by their gravest check, and the gravest first inside a room', () => {
    const rooms = checksByRoom([
      made('a', 5, 'purpose'),
      made('b', 5, 'control'),
      made('c', 20, 'control'),
      made('d', 9, 'cross-slide'),
    ]);
    expect(rooms.map(({ checks }) => checks.map(({ id }) => id))).toEqual([['c', 'b'], ['d'], ['a']]);
  });
});

describe('a row', () => {
  test('says both limits, the margin in words, what it needs and when it is proved', () => {
    const both = between({
      id: 'gap',
      label: 'Gap',
      value: mm(5),
      limit: mm(10),
      limitLow: mm(2),
      remedy: '',
      decisions: ['control'],
      testWhen: 'When the slide is on.',
    });
    show(
      { ...both, subsystem: 'control' },
      made('tunnel', undefined, 'cross-slide', { needs: ['tunnel-height'] }),
    );
    const limits = document.querySelector('tr.is-ok td[data-label="Limit"]');
    expect(limits?.textContent).toMatch(/^from 2 mm.* to 10 mm/);
    expect(screen.getByText('between the two limits')).toBeDefined();
    // Once on screen, once for paper.
    expect(screen.getAllByText(/When the slide is on/)).toHaveLength(2);
    expect(screen.getByRole('link', { name: 'Tunnel under the cross slide' }).getAttribute('href')).toContain(
      'at=tunnel-height',
    );
  });
});

describe('a stop', () => {
  test('is accepted with a reason only, which is kept and printed', async () => {
    show(made('reach', 20, 'cross-slide'));
    const field = screen.getByLabelText(/I accept this because/);
    expect(screen.queryByText(/Accepted because/)).toBeNull();
    fireEvent.change(field, { target: { value: '  I turn short parts only. ' } });
    const said = await screen.findByText(/Accepted because/);
    expect(said.parentElement?.textContent).toBe('Accepted because: I turn short parts only.');
    cleanup();
    $accepted.set({});
    show(made('reach', 20, 'cross-slide'));
    await screen.findByText(/Accepted because/);
    fireEvent.change(screen.getByLabelText(/I accept this because/), { target: { value: ' ' } });
    await waitFor(() => expect(screen.queryByText(/Accepted because/)).toBeNull());
  });

  test('on other figures than those it was written for asks for the reason anew', () => {
    $accepted.set({ reach: { because: 'Short parts only.', value: 0.024, limit: 0.025 } });
    window.localStorage.setItem('halfnut/accepted', JSON.stringify($accepted.get()));
    show(made('reach', 20, 'cross-slide'));
    expect(screen.queryByText(/Accepted because/)).toBeNull();
    expect(screen.getByText(/figures are others/)).toBeDefined();
  });

  test('that keeps people from harm cannot be accepted', () => {
    show(made('chuck-speed', 20, 'wiring', { harm: true }));
    expect(screen.queryByLabelText(/I accept this because/)).toBeNull();
    expect(screen.getByText(/cannot be accepted/)).toBeDefined();
  });

  test('what this device remembers may be anything', () => {
    window.localStorage.setItem('halfnut/accepted', '{"reach":7,"x":{"because":1}}');
    show(made('reach', 20, 'cross-slide'));
    expect($accepted.get()).toEqual({});
  });
});
