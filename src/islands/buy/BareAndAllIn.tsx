import type { Report } from '../../calc/evaluate.ts';
import { halfOfMoney, priceRange } from '../plan/words.ts';
import { exactText, money } from '../shared/format.ts';

const centsText = (cents: number): string => exactText((cents / 100).toFixed(2));

/** What people quote beside what leaves the purse, and step by step what makes the difference, adding up to the cent. */
export function BareAndAllIn({ report }: { report: Report }) {
  const { parts } = report.money;
  return (
    <section class="rule-section" id="money" tabIndex={-1}>
      <h2>What people quote, and what it costs</h2>
      <div class="side-by-side">
        <div>
          <h3>Bare parts</h3>
          <p>
            <b class="big-figure">about {money(parts.bareParts[1])}</b>
          </p>
          <p class="small">
            Every part at its likely price, what you own left out; no tools, carriage, tax, duty or trouble.
            Set this beside what others say they spent.
          </p>
        </div>
        <div>
          <h3>Everything in</h3>
          <p>
            <b class="big-figure">{halfOfMoney(report.money)}</b>
          </p>
          <p class="small">
            Half of the ways it could turn out. Money to have at hand before you start; the rod shows the dear
            ones too.
          </p>
        </div>
      </div>
      <table>
        <caption>From the one to the average of the other; it adds up to the cent</caption>
        <tbody>
          {parts.fromBare.map(({ name, cents }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="number">{centsText(cents)}</td>
            </tr>
          ))}
          <tr class="total">
            <th scope="row">
              Average, everything in{' '}
              <span class="quiet small">a sum to check ours by; no one way comes out at it</span>
            </th>
            <td class="number">{centsText(parts.cents.total)}</td>
          </tr>
        </tbody>
      </table>
      {report.bill.perYear.length > 0 ? (
        <p>
          <b>Paid again every year, in none of these: {priceRange(report.yearly)}.</b>{' '}
          {report.bill.perYear.map(({ name }) => name).join('; ')}.
        </p>
      ) : null}
    </section>
  );
}
