/** What comes of a press, for the reader. Nothing is sent by us: the browser is asked to. */

/** Puts a text on the clipboard; where that is not allowed the text is to be selected for copying by hand. */
export async function copy(text: string, select: () => void): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    return 'Copied. Paste it where you want it.';
  } catch {
    select();
    return 'This browser does not let us copy. The link is selected: copy it by hand.';
  }
}

/** Whether this browser has a sheet of its own for sending a link. */
export const canSend = (url: string): boolean =>
  typeof navigator.share === 'function' && (navigator.canShare?.({ url }) ?? true);

/** Hands the link to that sheet. Turning away from it is no fault. */
export async function send(url: string, title: string): Promise<string> {
  try {
    await navigator.share({ url, title });
    return 'Handed on.';
  } catch (fault) {
    const turnedAway = fault instanceof DOMException && fault.name === 'AbortError';
    return turnedAway ? '' : 'This browser did not hand it on. Copy the link instead.';
  }
}
