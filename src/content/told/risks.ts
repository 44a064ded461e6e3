import { type ToldIn, toldIn } from './told-in.ts';

export const risks: ToldIn = toldIn('risks');
