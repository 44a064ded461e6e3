/**
 * What the screens and files of the buy list ask beyond the report: the lines in groups, and on the calendar.
 * Plain data; light, because a page loads it before the sums.
 */
export { type BuyGroup, type BuyView, buyGroups, buyViews, toBuy } from './cost/buy-groups.ts';
export { onCalendar } from './schedule/lines-on-calendar.ts';
