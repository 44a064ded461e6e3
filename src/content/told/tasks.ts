import { type ToldIn, toldIn } from './told-in.ts';

export const tasks: ToldIn = toldIn('tasks');
