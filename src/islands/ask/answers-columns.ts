import { comparisonOf, whyDiffer } from '../../calc/comparing.ts';
import { alternatives } from '../../content/alternatives.ts';
import type { WorkedOut } from './answers.ts';
import { bookNamed } from './book-of.ts';

/** Several ways side by side, and why two of them differ. */
export const answers: WorkedOut<'comparison' | 'why-differ'> = {
  comparison: (path, others) => comparisonOf([{ kind: 'path', path }, ...others], bookNamed, alternatives),
  'why-differ': (path, other) => whyDiffer(path, other, bookNamed),
};
