import { type ToldIn, toldIn } from './told-in.ts';

export const parts: ToldIn = toldIn('parts');
