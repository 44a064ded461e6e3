/** What the plan says between its tasks, from the report alone: light, so that a page has it before the sums. */
export { type LaterHold, laterHolds } from './schedule/later-holds.ts';
export { stopWorkOf } from './schedule/stop-work.ts';
