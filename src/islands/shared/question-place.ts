import { decisionById } from '../../calc/guide.ts';
import { lathePlace, questionPlace } from './places.ts';

/** Where a question is answered. */
export const placeOfQuestion = (id: string): string =>
  decisionById(id)?.place === 'lathe' ? lathePlace(id) : questionPlace(id);
