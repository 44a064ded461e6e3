import { render } from 'preact';
import { expect, test } from 'vitest';
import { useFieldText } from '../../src/islands/shared/use-field-text.ts';

function Field({ known }: { known: string }) {
  const [typed, setTyped] = useFieldText(known);
  return <input value={typed} onInput={({ currentTarget }) => setTyped(currentTarget.value)} />;
}

const soon = () => new Promise((done) => setTimeout(done, 100));

test('what is typed at once stays, and what becomes known later is put in', async () => {
  const place = document.createElement('div');
  document.body.append(place);
  // Without the testing library: it would run every effect before the hand comes.
  render(<Field known="" />, place);
  const field = place.querySelector('input')!;
  field.value = '0.12';
  field.dispatchEvent(new Event('input', { bubbles: true }));
  await soon();
  expect(field.value).toBe('0.12');
  render(<Field known="0.2" />, place);
  await soon();
  expect(field.value).toBe('0.2');
});
