/** What runs in the page to note what a visitor feels. Each function is sent there whole, so it may name nothing outside itself. */

export interface Shift {
  readonly value: number;
  readonly what: string;
}

/** Notes every layout shift that nobody asked for, and what moved. */
export function watchShifts(): void {
  const seen: Shift[] = [];
  Object.assign(window, { shifts: seen });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as unknown as {
      value: number;
      hadRecentInput: boolean;
      sources: readonly { node: Node | null }[];
    }[]) {
      if (entry.hadRecentInput) continue;
      const names = entry.sources.map(({ node }) =>
        node instanceof Element ? `${node.nodeName.toLowerCase()}.${node.className}` : (node?.nodeName ?? ''),
      );
      seen.push({ value: entry.value, what: names.join(' ') });
    }
  }).observe({ type: 'layout-shift', buffered: true });
}

export interface Wait {
  /** From the press to the next picture, ms, as the browser itself measures it (to 8 ms). */
  readonly picture: number;
  /** Before our code ran, and while it ran, ms: what was still going on, and what the press set going. */
  readonly before: number;
  readonly ours: number;
}

/** Notes how long after each press the next picture came. */
export function watchPresses(): void {
  const seen = new Map<number, Wait>();
  Object.assign(window, { presses: () => [...seen.values()] });
  const init = { type: 'event', durationThreshold: 16, buffered: true } as PerformanceObserverInit;
  new PerformanceObserver((list) => {
    for (const each of list.getEntries() as (PerformanceEventTiming & { interactionId: number })[]) {
      const { interactionId, duration, startTime, processingStart, processingEnd } = each;
      if (!interactionId || duration <= (seen.get(interactionId)?.picture ?? 0)) continue;
      seen.set(interactionId, {
        picture: duration,
        before: processingStart - startTime,
        ours: processingEnd - processingStart,
      });
    }
  }).observe(init);
}
