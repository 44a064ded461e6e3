import { atom } from 'nanostores';
import { drawAll } from '../shared/in-turn.tsx';

/** What is printed of the sheet. Whatever a button chose, the browser's own command prints the whole plan. */
export const paperSets = {
  whole: 'Whole plan',
  'make-first': 'Make-first list',
  proof: 'Proof tests',
  settings: 'Settings sheet',
} as const;

export type PaperSet = keyof typeof paperSets;

export const $paper = atom<PaperSet>('whole');

const nextFrame = (): Promise<void> => new Promise((done) => requestAnimationFrame(() => done()));

/** Prints one set and goes back to the whole plan afterwards. */
export async function printSet(set: PaperSet): Promise<void> {
  // A print from a script leaves no time to draw in.
  drawAll();
  $paper.set(set);
  await nextFrame();
  await nextFrame();
  window.print();
}

/** Back to the whole plan once the paper is out; returns how to stop. */
export function watchPaper(): () => void {
  const back = (): void => $paper.set('whole');
  window.addEventListener('afterprint', back);
  return () => window.removeEventListener('afterprint', back);
}
