import { useEffect, useRef, useState } from 'preact/hooks';
import type { SearchProgress, Wanted, WaysThrough } from '../../calc/choosing.ts';
import type { Path } from '../../calc/core/path.ts';
import { $fault } from '../stores.ts';
import { setGoing } from './beside.ts';
import type { Standing } from './work.ts';

/** A search, under way or over. */
export interface Search {
  readonly path: Path;
  readonly wanted: Wanted;
  readonly progress?: SearchProgress;
  readonly found?: WaysThrough;
  /** How long it took. */
  readonly seconds?: number;
  readonly stopped?: true;
}

const failed = (fault: Error): void => $fault.set(fault);

/** Where the search sets out from on a path; the last known while it is worked out anew. */
export function useStanding(path: Path): Standing | undefined {
  const [standing, setStanding] = useState<Standing>();
  useEffect(() => setGoing('carried', { path }, { told: setStanding, failed }), [path]);
  return standing;
}

/** How many ways the free questions make; undefined while it is counted. A search is not disturbed by it. */
export function useCount(path: Path, free: readonly string[], searching: boolean): number | undefined {
  const [counted, setCounted] = useState<{ path: Path; free: readonly string[]; legal: number }>();
  useEffect(() => {
    if (free.length === 0 || searching || (counted?.path === path && counted.free === free)) return;
    let stop = (): void => {};
    const soon = window.setTimeout(() => {
      const told = (legal: number) => setCounted({ path, free, legal });
      stop = setGoing('count', { path, free }, { told, failed });
    }, 250);
    return () => {
      window.clearTimeout(soon);
      stop();
    };
  }, [path, free, searching]);
  return counted?.path === path && counted.free === free ? counted.legal : undefined;
}

/** The search of the page: one at a time. */
export function useSearch() {
  const [search, setSearch] = useState<Search>();
  const stopIt = useRef<() => void>(() => {});
  useEffect(() => () => stopIt.current(), []);
  const begin = (path: Path, wanted: Wanted): void => {
    stopIt.current();
    const from = performance.now();
    const seconds = () => (performance.now() - from) / 1000;
    setSearch({ path, wanted });
    stopIt.current = setGoing(
      'search',
      { path, wanted },
      {
        progress: (progress) => setSearch({ path, wanted, progress }),
        told: (found) => setSearch({ path, wanted, found, seconds: seconds() }),
        failed: (fault) => {
          setSearch(undefined);
          failed(fault);
        },
      },
    );
  };
  const stop = (): void => {
    stopIt.current();
    setSearch((now) => now && { ...now, stopped: true });
  };
  return { search, begin, stop };
}
