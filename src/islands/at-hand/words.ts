/** How the site stands on this device. */
export type Standing = 'being-kept' | 'kept' | 'not-kept' | 'not-whole';

export interface Said {
  readonly text: string;
  /** What may be done about it. */
  readonly press?: string;
}

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;

/** What is said of it, quietly; `bytes` where they are known. */
export function said(standing: Standing, bytes?: number): Said {
  const much = bytes === undefined ? '' : `, ${megabytes(bytes)}`;
  switch (standing) {
    case 'being-kept':
      return { text: 'The site is being kept for the workshop …' };
    case 'kept':
      return { text: `Kept for the workshop${much}: it opens without a connection.`, press: 'Drop it' };
    case 'not-kept':
      return { text: 'Not kept on this device.', press: `Keep it for the workshop${much}` };
    case 'not-whole':
      return { text: 'Not all of it could be kept. It is tried again at the next visit.' };
  }
}

export const NEWER = 'A newer copy of this site is here.';
export const FROM_NEXT_PAGE =
  'The newer copy is in use from the next page that you open. This page stays as it is, with what you typed.';
