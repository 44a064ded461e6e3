import type { Report } from '../../calc/evaluate.ts';
import { exactMoney, money, plain } from '../shared/format.ts';
import { halfOfMoney, priceRange } from './words.ts';

/** Whole tens, so that the rows add up to the total that is shown. */
const toTen = (n: number): number => Math.round(n / 10) * 10;

function MeanRow({ name, about, amount }: { name: string; about: string; amount: number }) {
  return (
    <tr>
      <th scope="row">
        {name} <span class="quiet small">{about}</span>
      </th>
      <td class="number">{exactMoney(amount)}</td>
    </tr>
  );
}

function Mean({ report }: { report: Report }) {
  const { meanGoods, meanLanded, meanTrouble, meanCredit, landedRate } = report.money.parts;
  const rows = [meanGoods, meanLanded, meanTrouble, meanCredit].map(toTen);
  const [goods = 0, landed = 0, trouble = 0, credit = 0] = rows;
  const share = `${plain(landedRate[0] * 100)}–${plain(landedRate[2] * 100)} % on top, likely ${plain(landedRate[1] * 100)} %`;
  return (
    <table>
      <caption>The average of all the ways, taken apart (to $10, so that it adds up)</caption>
      <tbody>
        <MeanRow name="Goods" about="every line of the parts list that you do not own" amount={goods} />
        <MeanRow name="Freight, tax and duty" about={share} amount={landed} />
        <MeanRow name="Trouble" about="what goes wrong, in the builds where it does" amount={trouble} />
        {credit < 0 ? <MeanRow name="Sale of old parts" about="taken off again" amount={credit} /> : null}
        <tr class="total">
          <th scope="row">Average, everything in</th>
          <td class="number">{exactMoney(rows.reduce((sum, row) => sum + row, 0))}</td>
        </tr>
      </tbody>
    </table>
  );
}

function Yearly({ report }: { report: Report }) {
  const lines = report.bill.perYear;
  if (lines.length === 0) return <p>Nothing on this path is paid again every year.</p>;
  return (
    <p>
      <b>Paid again every year, in none of the totals: {priceRange(report.yearly)}.</b>{' '}
      {lines.map(({ name }) => name).join('; ')}.
    </p>
  );
}

/** What people quote against what it costs, and what the average is made of. */
export function MoneyParts({ report }: { report: Report }) {
  const { bareParts } = report.money.parts;
  return (
    <section class="rule-section grid-halves" id="money" tabIndex={-1}>
      <div>
        <h2>What the money is made of</h2>
        <p>
          <b>Bare parts, as people quote them: about {money(bareParts[1])}.</b> That is every part at its
          likely price, without shop tools, freight, tax, duty or trouble. It is the figure to set beside what
          others say they spent.
        </p>
        <p>
          <b>All in: half of the ways cost {halfOfMoney(report.money)}.</b> That is what leaves the purse.
          Prices lean to the dear side, and something always goes wrong, so the two lie apart.
        </p>
        <Yearly report={report} />
      </div>
      <Mean report={report} />
    </section>
  );
}
