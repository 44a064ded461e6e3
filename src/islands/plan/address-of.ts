import { to } from '../shared/places.ts';

/** The whole address that opens a path as a plan. */
export const addressOf = (fragment: string): string =>
  new URL(`${to('plan/')}#${fragment}`, window.location.href).href;
