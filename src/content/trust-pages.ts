/** The pages that say how far the figures can be trusted, in the order to read them. Addresses are below the base. */
export const trustPages = [
  {
    page: 'how-the-estimate-is-made/',
    name: 'How the estimate is made',
    says: 'The method in plain words: 2,000 builds, bands, troubles as events, hours, weeks, and how sure we are.',
  },
  {
    page: 'trust/left-out/',
    name: 'What it leaves out',
    says: 'What stands in no figure, and what happens to the number if you add it.',
  },
  {
    page: 'trust/numbers/',
    name: 'Where the numbers come from',
    says: 'Prices, hours, chances, formulas and limits: which are printed somewhere, which are memory, which are yours.',
  },
  {
    page: 'trust/sources/',
    name: 'Sources',
    says: 'Every work that a formula, a check or a page of the book rests on, with what it supports.',
  },
  {
    page: 'trust/changes/',
    name: 'What changed between editions',
    says: 'The parts that were added, taken out or moved from one edition of the prices to the next.',
  },
  {
    page: 'formulas/',
    name: 'Every formula',
    says: 'Equation, units, source, the range it was stated for, and our result beside the printed one.',
  },
  {
    page: 'prices/',
    name: 'Prices',
    says: 'Every edition of the planning prices, part by part.',
  },
  {
    page: 'safety/',
    name: 'Safety',
    says: 'What can hurt you, and who must do what you may not do yourself.',
  },
  {
    page: 'report-a-number/',
    name: 'Report a wrong number',
    says: 'How to say that a figure is wrong, with the facts that let it be checked.',
  },
] as const;
