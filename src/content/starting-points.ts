/** Invented owners by what they want, in the order in which the page lists them. */
export interface Wish {
  readonly id: string;
  readonly title: string;
  /** Ids of invented owners. */
  readonly owners: readonly string[];
}

export const wishes: readonly Wish[] = [
  { id: 'threads', title: 'Threads', owners: ['threads-for-instruments'] },
  {
    id: 'batches',
    title: 'The same part again and again',
    owners: [
      'brass-thirty-a-month',
      'brass-by-the-dozen',
      'school-machine-in-the-shed',
      'hollow-near-the-chuck',
    ],
  },
  {
    id: 'shapes',
    title: 'Curves and shaped parts',
    owners: ['handles-on-the-only-lathe', 'heavy-lathe-profiles', 'sixteen-odd-parts-a-year'],
  },
  {
    id: 'repairs',
    title: 'Single parts and repairs',
    owners: ['measures-more-than-turns', 'cross-slide-first'],
  },
  { id: 'learning', title: 'Learning by building', owners: ['learning-on-a-spare'] },
  { id: 'open', title: 'Not decided yet', owners: ['not-sure-yet'] },
];
