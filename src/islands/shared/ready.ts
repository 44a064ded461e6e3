import { useEffect, useState } from 'preact/hooks';

/** False until the script listens: an answer given to the bare page before that would be lost, so it cannot be given. */
export function useReady(): boolean {
  const [ready, setReady] = useState(false);
  useEffect(() => setReady(true), []);
  return ready;
}
