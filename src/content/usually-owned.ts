/** Tool post, holders, inserts, screen, keyboard, fasteners, drills, oils and eye protection: what most owners have. */
export const usuallyOwned: readonly string[] = [
  'quick-change-post-set',
  'extra-tool-holders',
  'insert-holders',
  'screen',
  'keyboard-part',
  'fasteners',
  'drills-and-taps',
  'oils-and-grease',
  'eye-protection',
];
