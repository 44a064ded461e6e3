/** The rule of thumb with the sums it needs; the page loads it when the calendar is there. */
export { ruleOfThumb } from '../../calc/working.ts';
