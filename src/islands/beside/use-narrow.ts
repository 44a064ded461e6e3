import { useEffect, useState } from 'preact/hooks';

const NARROW = '(max-width: 47.99rem)';

/** True on a phone, where only two columns fit. Paper keeps what the screen shows. */
export function useNarrow(): boolean {
  const [narrow, setNarrow] = useState(() => window.matchMedia(NARROW).matches);
  useEffect(() => {
    const list = window.matchMedia(`screen and ${NARROW}`);
    const follow = () => {
      if (window.matchMedia('screen').matches) setNarrow(list.matches);
    };
    follow();
    list.addEventListener('change', follow);
    return () => list.removeEventListener('change', follow);
  }, []);
  return narrow;
}
