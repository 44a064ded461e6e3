import { useLayoutEffect, useState } from 'preact/hooks';

/**
 * The text of a field that follows what is known, and what is typed meanwhile. What is known is put in before the page is
 * painted: an effect that comes later would wipe out what a quick hand, or a slow device, has typed by then.
 */
export function useFieldText(known: string): readonly [typed: string, setTyped: (text: string) => void] {
  const [typed, setTyped] = useState('');
  useLayoutEffect(() => setTyped(known), [known]);
  return [typed, setTyped];
}
