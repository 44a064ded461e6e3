import { useEffect, useState } from 'preact/hooks';
import type { RuleOfThumb } from '../../calc/working.ts';
import { weeks } from '../shared/format.ts';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { $fault } from '../stores.ts';
import type { PartProps } from './part.ts';

interface Term {
  readonly what: string;
  readonly rule: string;
  readonly ours: string;
}

const termsOf = (told: RuleOfThumb): Term[] => [
  { what: 'The likely hours of every task', rule: weeks(told.likely), ours: weeks(told.likely) },
  {
    what: 'Sessions lost to shopping, waiting and undoing: the rule counts on seven tenths of the hours',
    rule: weeks(told.lostSessions),
    ours: 'see the next two lines',
  },
  {
    what: 'Estimates that lean to the long side',
    rule: 'within the lost sessions',
    ours: weeks(told.leaning),
  },
  {
    what: 'Trouble, in the ways where it strikes',
    rule: 'within the lost sessions',
    ours: weeks(told.trouble),
  },
  {
    what: 'Weeks in which everything waits for a parcel',
    rule: weeks(told.waitingInRule),
    ours: weeks(told.waitingInBuilds),
  },
];

/** Loaded with the sums; the last one stays until the next is there. */
function useRule({ report, calendar }: PartProps): RuleOfThumb | undefined {
  const [told, setTold] = useState<RuleOfThumb>();
  useEffect(() => {
    let isWanted = true;
    import('./thumb.ts')
      .then(({ ruleOfThumb }) => {
        if (isWanted) setTold(ruleOfThumb(report, calendar));
      })
      .catch((fault: unknown) => {
        if (isWanted) $fault.set(fault);
      });
    return () => {
      isWanted = false;
    };
  }, [report, calendar]);
  return told;
}

function Terms({ told }: { told: RuleOfThumb }) {
  return (
    <table class="table-stack thumb" {...asTable} aria-label="The rule of thumb and ours, term by term">
      <thead>
        <tr {...asRow}>
          {['Term', 'The rule', 'Ours, on average'].map((head) => (
            <th key={head} {...asColumnHead}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {termsOf(told).map(({ what, rule, ours }) => (
          <tr key={what} {...asRow}>
            <th {...asRowHead}>{what}</th>
            <td {...asCell} data-label="The rule">
              {rule}
            </td>
            <td {...asCell} data-label="Ours">
              {ours}
            </td>
          </tr>
        ))}
        <tr {...asRow} class="total">
          <th {...asRowHead}>From start to finish</th>
          <td {...asCell} data-label="The rule">
            {weeks(told.rule)}
          </td>
          <td {...asCell} data-label="Ours">
            {weeks(told.ours)}
          </td>
        </tr>
      </tbody>
    </table>
  );
}

/** The trade's rule of thumb beside our calendar, with the terms that make the difference. */
export function ThumbRule(props: PartProps) {
  const told = useRule(props);
  return (
    <section class="rule-section" id="thumb" tabIndex={-1}>
      <h2>Beside the trade’s rule of thumb</h2>
      <p>
        The rule (common practice, no source): likely hours over seven tenths of your hours a week, and four
        weeks of waiting. Both say much the same by different ways.
      </p>
      {told ? <Terms told={told} /> : null}
    </section>
  );
}
