import { act, cleanup, render, screen } from '@testing-library/preact';
import { atom } from 'nanostores';
import { afterEach, expect, test } from 'vitest';
import { Later, useInTurn } from '../../src/islands/shared/in-turn.tsx';

afterEach(cleanup);

const drawn: string[] = [];

function Part({ name }: { name: string }) {
  if (!drawn.includes(name)) drawn.push(name);
  return <p>{name}</p>;
}

test('parts are drawn after the first, in the order of the page, those inside a part before what follows it', async () => {
  render(
    <>
      <Part name="head" />
      <Later>
        <Part name="one" />
        <Later>
          <Part name="inside one" />
        </Later>
      </Later>
      <Later>
        <Part name="two" />
      </Later>
    </>,
  );
  expect(drawn).toEqual(['head']);
  await screen.findByText('two');
  expect(drawn).toEqual(['head', 'one', 'inside one', 'two']);
});

test('a part that is taken away while it waits is never drawn', async () => {
  const { rerender } = render(
    <Later>
      <Part name="gone" />
    </Later>,
  );
  rerender(
    <Later key="other">
      <Part name="stays" />
    </Later>,
  );
  await screen.findByText('stays');
  expect(drawn).not.toContain('gone');
});

test('a part that waits its turn shows the value before until then, and the last one after', async () => {
  const $sum = atom(1);
  function Sum() {
    return <p>sum {useInTurn($sum)}</p>;
  }
  render(<Sum />);
  act(() => {
    $sum.set(2);
    $sum.set(3);
  });
  expect(screen.getByText('sum 1')).toBeDefined();
  await screen.findByText('sum 3');
});

// The last: from then on nothing waits.
test('paper does not wait', async () => {
  render(
    <Later>
      <Later>
        <Part name="deep" />
      </Later>
    </Later>,
  );
  expect(screen.queryByText('deep')).toBeNull();
  await act(() => {
    window.dispatchEvent(new Event('beforeprint'));
  });
  expect(screen.getByText('deep')).toBeDefined();
});
