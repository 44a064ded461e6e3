import type { ComponentChildren } from 'preact';
import type { OptionEffect } from '../../calc/choosing.ts';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import {
  effectLines,
  hoursEnds,
  isAsItIs,
  moneyEnds,
  sayChecks,
  sayHours,
  sayMoney,
  sayRisks,
} from './effect-words.ts';
import { BandMark, CheckMarks, RiskMark } from './StripMarks.tsx';
import { risksBy, type StripScale } from './strip-scale.ts';

interface RowProps {
  readonly name: string;
  readonly mark: ComponentChildren;
  readonly children: ComponentChildren;
}

/** The drawing repeats the words beside it, so it is no cell of its own to a reader who hears the table. */
function Row({ name, mark, children }: RowProps) {
  return (
    <tr {...asRow}>
      <th {...asRowHead}>{name}</th>
      <td {...asCell} class="strip-cell">
        <span class="strip-axis">{mark}</span>
        <span class="strip-words">{children}</span>
      </td>
    </tr>
  );
}

function Amount({ words, ends, unclear }: { words: string; ends: string; unclear: boolean }) {
  return (
    <>
      <b>{words}</b> {unclear ? <span class="quiet">{ends}</span> : null}
    </>
  );
}

function Rows({ effect, scale }: { effect: OptionEffect; scale: StripScale }) {
  const { money, moneySays, hours, hoursSays, moves } = effect;
  return (
    <>
      <Row name="money" mark={<BandMark by={money} says={moneySays} end={scale.money} />}>
        <Amount
          words={sayMoney(money, moneySays)}
          ends={moneyEnds(money)}
          unclear={moneySays === 'unclear'}
        />
      </Row>
      <Row name="hours" mark={<BandMark by={hours} says={hoursSays} end={scale.hours} />}>
        <Amount
          words={sayHours(hours, hoursSays)}
          ends={hoursEnds(hours)}
          unclear={hoursSays === 'unclear'}
        />
      </Row>
      <Row name="risks" mark={<RiskMark {...risksBy(effect)} end={scale.risks} />}>
        {sayRisks(moves?.risks ?? [])}
      </Row>
      <Row name="checks" mark={<CheckMarks checks={moves?.checks ?? []} />}>
        {sayChecks(moves?.checks ?? [])}
      </Row>
    </>
  );
}

function Lines({ effect }: { effect: OptionEffect }) {
  const lines = effectLines(effect.moves);
  if (lines.length === 0) return null;
  return (
    <ul class="strip-lines">
      {lines.map(({ lead, text }) => (
        <li key={lead}>
          <span class="quiet">{lead}</span> {text}
        </li>
      ))}
    </ul>
  );
}

const DOES = { chosen: 'Choosing it', ticked: 'Ticking it', unticked: 'Unticking it' } as const;

interface Props {
  readonly name: string;
  readonly effect: OptionEffect | undefined;
  readonly scale: StripScale | undefined;
  /** Worked out for the path before the last change; the new one is on its way. */
  readonly isOld: boolean;
}

/** What an option would do, before it is chosen. Its place is kept until the figures come. */
export function EffectStrip({ name, effect, scale, isOld }: Props) {
  if (!effect || !scale) return <div class="option-effect" />;
  if (!effect.allowed) return <div class="option-effect is-empty" />;
  return (
    <div class={`option-effect${isOld ? ' is-old' : ''}`}>
      <table class="strip" {...asTable}>
        <caption class="visually-hidden">
          {DOES[effect.does]}: {name}, compared with the plan as it is
        </caption>
        <tbody>
          <Rows effect={effect} scale={scale} />
        </tbody>
      </table>
      {isAsItIs(effect) ? <p class="strip-lines">The plan as it is.</p> : <Lines effect={effect} />}
    </div>
  );
}
