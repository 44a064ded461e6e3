/** One page of each kind, by its address below the base. What is measured on the built site is measured on these. */
export const KINDS = {
  home: '',
  lathe: 'lathe/',
  question: 'questions/control/',
  'all questions': 'questions/',
  'quick sheet': 'quick/',
  plan: 'plan/',
  'buy list': 'buy-list/',
  bench: 'bench/',
  'worth it': 'worth-it/',
  compare: 'compare/',
  'ways through': 'ways/',
  calendar: 'calendar/',
  'your paths': 'shelf/',
  'book, a room': 'book/control/',
  'topic, no figure': 'book/topics/daily-use/',
  'topic with figures': 'book/topics/ball-screws/',
  'find in the book': 'book/find/',
  words: 'words/',
  safety: 'safety/',
  method: 'how-the-estimate-is-made/',
} as const;

export type Kind = keyof typeof KINDS;
