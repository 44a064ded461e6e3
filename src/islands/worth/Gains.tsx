import { useStore } from '@nanostores/preact';
import type { FamilyWorth, Payback, Worth } from '../../calc/choosing.ts';
import { exactMoney, hours, hoursMark, hoursRange, middleHalf, money, plain } from '../shared/format.ts';
import { Rod } from '../shared/Rod.tsx';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { $path } from '../stores.ts';
import { breakEvenText, paybackText } from './words.ts';

interface Props {
  readonly worth: Worth;
}

const HEADS = ['Parts', 'Pieces a year', 'Hours saved a year', 'First batch pays from', 'Later ones from'];

function Row({ family }: { family: FamilyWorth }) {
  const cells = [
    plain(family.pieces),
    hours(family.savedHours),
    breakEvenText(family.breakEvenFirst),
    breakEvenText(family.breakEvenAgain),
  ];
  return (
    <tr {...asRow}>
      <th {...asRowHead}>{family.name}</th>
      {cells.map((cell, at) => (
        <td key={HEADS[at + 1]} {...asCell} class="number" data-label={HEADS[at + 1]}>
          {cell}
        </td>
      ))}
    </tr>
  );
}

function Families({ worth }: Props) {
  return (
    <table class="table-stack gains-table" {...asTable} aria-label="Each family, at your own times">
      <thead>
        <tr {...asRow}>
          {HEADS.map((head, at) => (
            <th key={head} {...asColumnHead} class={at > 0 ? 'number' : undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {worth.families.map((family, at) => (
          <Row key={at} family={family} />
        ))}
        {worth.families.length > 1 ? (
          <tr {...asRow}>
            <th {...asRowHead}>Together</th>
            <td {...asCell} class="is-blank" />
            <td {...asCell} class="number" data-label={HEADS[2]}>
              <b>{hours(worth.likelySaved)}</b>
            </td>
            <td {...asCell} class="is-blank" colSpan={2} />
          </tr>
        ) : null}
      </tbody>
    </table>
  );
}

const COUNTED = [
  [false, 'The building counts as free'],
  [true, 'The hours of building count too'],
] as const;

/** Pay-back at several values of an hour, side by side: nobody has to say what an hour is worth. */
export function PaybackTable({ payback }: { payback: readonly Payback[] }) {
  const values = [...new Set(payback.map(({ perHour }) => perHour))];
  const head = (value: number): string =>
    value === 0 ? 'An hour at nothing' : `At ${exactMoney(value)} an hour`;
  return (
    <table class="table-stack payback-table" {...asTable} aria-label="Years until it has paid for itself">
      <thead>
        <tr {...asRow}>
          <th {...asColumnHead}>Paid for itself after</th>
          {values.map((value) => (
            <th key={value} {...asColumnHead}>
              {head(value)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {COUNTED.map(([counts, say]) => (
          <tr key={say} {...asRow}>
            <th {...asRowHead}>{say}</th>
            {values.map((value) => {
              const found = payback.find((each) => each.perHour === value && each.buildingCounts === counts);
              return (
                <td key={value} {...asCell} data-label={head(value)}>
                  {found ? paybackText(found) : ''}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Hobby({ hobby }: { hobby: NonNullable<Worth['hobby']> }) {
  const { from, to } = middleHalf(hobby.hours.twenty);
  return (
    <div class="gain">
      <div>
        <h3>The hobby you buy</h3>
        <p>
          Half of the ways give <b class="figure">{hoursRange(from, to)}</b> of building, at about{' '}
          <b class="figure">{exactMoney(Math.round(hobby.moneyPerHour))}</b> an hour. No pay-back is worked
          out.
        </p>
      </div>
      <Rod
        values={[...hobby.hours.twenty]}
        format={hoursMark}
        label="Hours of hobby you buy"
        unitWord="hours"
      />
    </div>
  );
}

function Saved({ saved }: { saved: NonNullable<Worth['saved']> }) {
  const { from, to } = middleHalf(saved.twenty);
  return (
    <div class="gain">
      <div>
        <h3>Hours saved a year, all families</h3>
        <p>
          Half of the ways save <b class="figure">{hoursRange(from, to)}</b> a year. Times that people give
          for their own work are off by up to a fifth by hand and by half by program (judgement, no source).
        </p>
      </div>
      <Rod values={[...saved.twenty]} format={hoursMark} label="Hours saved a year" unitWord="hours" />
    </div>
  );
}

/** Parts that were typed a moment ago are not said to be missing. */
function NothingYet() {
  const { families = [] } = useStore($path);
  return families.length > 0 ? (
    <p role="status">Working out what your parts give back …</p>
  ) : (
    <p>Nothing is named yet, so no hours and no pay-back are worked out.</p>
  );
}

/** What the families give back: hours, batches that pay, years until the money is back. */
export function Gains({ worth }: Props) {
  const { saved, hobby, payback, outsideAvoided } = worth;
  return (
    <div class="gains" id="gains" tabIndex={-1}>
      {hobby ? <Hobby hobby={hobby} /> : null}
      {saved ? (
        <>
          <Saved saved={saved} />
          <Families worth={worth} />
          <p>
            {outsideAvoided > 0
              ? `Outside work avoided: about ${money(outsideAvoided)} a year at the prices you typed.`
              : 'Outside work avoided: no price was typed, so none is counted.'}
          </p>
          {payback.length > 0 ? <PaybackTable payback={payback} /> : null}
        </>
      ) : (
        <NothingYet />
      )}
    </div>
  );
}
