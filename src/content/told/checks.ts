import { type ToldIn, toldIn } from './told-in.ts';

export const checks: ToldIn = toldIn('checks');
