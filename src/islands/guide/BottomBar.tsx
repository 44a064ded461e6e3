import { useStore } from '@nanostores/preact';
import type { Report } from '../../calc/evaluate.ts';
import { $limits } from '../preferences.ts';
import { countWithin, hoursRange, middleHalf, moneyRange, ofTwenty } from '../shared/format.ts';
import { tallyOf } from './tally.ts';

function toCard(): void {
  const card = document.getElementById('card');
  card?.scrollIntoView();
  card?.focus({ preventScroll: true });
}

/** On a phone: the middle half of money and hours, the stops, and a way to the card. */
export function BottomBar({ report }: { report: Report }) {
  const limits = useStore($limits);
  const within = (twenty: readonly number[], limit: number | undefined) =>
    limit === undefined ? 'half the ways' : `${ofTwenty(countWithin(twenty, limit))} fit`;
  const { stop, look } = tallyOf(report);
  const [money, hours] = [middleHalf(report.money.twenty), middleHalf(report.hours.twenty)];
  return (
    <section class="bottom-bar" aria-label="Your path in short">
      <span>
        <b>{moneyRange(money.from, money.to)}</b>
        {within(report.money.twenty, limits.money)}
      </span>
      <span>
        <b>{hoursRange(hours.from, hours.to)}</b>
        {within(report.hours.twenty, limits.hours)}
      </span>
      <span>
        <b>{stop.length} stop</b>
        {look.length} look
      </span>
      <button type="button" class="button small" onClick={toCard}>
        Card
      </button>
    </section>
  );
}
