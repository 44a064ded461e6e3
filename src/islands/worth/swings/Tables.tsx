import type { ChoiceSwing, SwingEnd, UnknownSwing } from '../../../calc/choosing.ts';
import { decisionById } from '../../../calc/guide.ts';
import { ColumnHeads } from '../../shared/ColumnHeads.tsx';
import { asCell, asRow, asRowHead, asTable } from '../../shared/table-roles.ts';
import { KINDS, type Kind, narrowsText, optionName, saySwing } from './kinds.ts';

interface HeadProps {
  readonly heads: readonly string[];
}

const Head = ({ heads }: HeadProps) => <ColumnHeads heads={heads} />;

const CHOICES = ['Question', 'Least', 'Most', 'Blocked'];

function Choice({ kind, choice }: { kind: Kind; choice: ChoiceSwing }) {
  const { least, most, blockedLeast, blockedMost } = choice[kind];
  const end = ({ option, by }: SwingEnd): string =>
    `${saySwing(kind, by)}: ${optionName(choice.decision, option)}`;
  const blocked = [blockedLeast, blockedMost].flatMap((each) => (each ? [end(each)] : []));
  return (
    <tr {...asRow}>
      <th {...asRowHead}>{decisionById(choice.decision)?.name}</th>
      <td {...asCell} data-label="Least">
        {end(least)}
      </td>
      <td {...asCell} data-label="Most">
        {end(most)}
      </td>
      <td {...asCell} data-label="Blocked">
        {blocked.join('; ') || 'none'}
      </td>
    </tr>
  );
}

const UNKNOWNS = ['To be found out', 'Low end', 'High end', 'Once known'];

function Unknown({ kind, unknown }: { kind: Kind; unknown: UnknownSwing }) {
  const { say } = KINDS[kind];
  const { low, high } = unknown[kind];
  return (
    <tr {...asRow}>
      <th {...asRowHead}>{unknown.name}</th>
      <td {...asCell} data-label="Low end">
        {say(low)}
      </td>
      <td {...asCell} data-label="High end">
        {say(high)}
      </td>
      <td {...asCell} data-label="Once known">
        {narrowsText(kind, unknown) ?? 'narrows nothing of the whole'}
      </td>
    </tr>
  );
}

interface Props {
  readonly kind: Kind;
  readonly choices: readonly ChoiceSwing[];
  readonly unknowns: readonly UnknownSwing[];
}

/** Everything that the two charts draw, to be read. */
export function SwingTables({ kind, choices, unknowns }: Props) {
  const about = KINDS[kind].name.toLowerCase();
  return (
    <details>
      <summary>The same as two tables</summary>
      <table class="table-stack" {...asTable} aria-label={`Choices, ${about}`}>
        <Head heads={CHOICES} />
        <tbody>
          {choices.map((choice) => (
            <Choice key={choice.decision} kind={kind} choice={choice} />
          ))}
        </tbody>
      </table>
      <table class="table-stack" {...asTable} aria-label={`Things to find out, ${about}`}>
        <Head heads={UNKNOWNS} />
        <tbody>
          {unknowns.map((unknown) => (
            <Unknown key={unknown.id} kind={kind} unknown={unknown} />
          ))}
        </tbody>
      </table>
    </details>
  );
}
