import { forget, recall, remember } from './memory.ts';

/** Work of this tab that the device had no room for: it stands in the address alone, over the state of its path named here. */
const NAME = 'unsaved';

export function markUnsaved(id: string, over: string | undefined): void {
  remember(NAME, `${id} ${over ?? ''}`, 'sessionStorage');
}

export const markSaved = (): void => forget(NAME, 'sessionStorage');

/** The state that unsaved work on this path was done over: empty where it was never kept, undefined where all is kept. */
export function unsavedOver(id: string): string | undefined {
  const [of, over] = (recall(NAME, 'sessionStorage') ?? '').split(' ');
  return of === id ? over : undefined;
}
