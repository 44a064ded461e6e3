/** What the screens and files of the buy list ask beyond the report: the lines in groups. Plain data. */
export { type BuyGroup, type BuyView, buyGroups, buyViews, dayAfter, toBuy } from './cost/buy-groups.ts';
