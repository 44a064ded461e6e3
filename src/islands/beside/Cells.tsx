import type { Ability } from '../../calc/core/alternative.ts';
import type { Skill } from '../../calc/core/decision.ts';
import type { Spread } from '../../calc/evaluate.ts';
import { SKILLS } from '../guide/OptionBlock.tsx';
import { halfOf, MEASURES, type MeasureId } from './measures.ts';
import { SmallRod } from './SmallRod.tsx';
import { CAN, sayChance } from './words.ts';

export function Able({ ability: { can, say } }: { ability: Ability }) {
  return (
    <>
      <b>{CAN[can]}</b> {say}
    </>
  );
}

interface MeasuredProps {
  /** Whose: "Your plan". */
  readonly name: string;
  readonly spread: Spread;
  readonly id: MeasureId;
  /** The right end of the scale of the row. */
  readonly end: number;
}

export function Measured({ name, spread, id, end }: MeasuredProps) {
  const { shown, mark, label } = MEASURES[id];
  const { said, isNone } = halfOf(id, spread);
  if (isNone) return <>{said}</>;
  return (
    <>
      <SmallRod
        values={spread.twenty.map(shown)}
        end={end}
        ends={[mark(0), mark(end)]}
        say={`${name}, ${label.toLowerCase()}: 20 ways on a scale from ${mark(0)} to ${mark(end)}. Half of them: ${said}.`}
      />
      <span class="small">
        half of them: <b class="figure">{said}</b>
      </span>
    </>
  );
}

interface Trouble {
  readonly id: string;
  readonly name: string;
  readonly ofTwenty: number;
}

export function RisksCell({ risks }: { risks: readonly Trouble[] }) {
  if (risks.length === 0) return <>None that we count.</>;
  return (
    <ul class="list-plain beside-risks">
      {risks.map(({ id, name, ofTwenty }) => (
        <li key={id}>
          {name}: <b class="figure">{sayChance(ofTwenty)}</b>
        </li>
      ))}
    </ul>
  );
}

export const SkillCell = ({ skill }: { skill: Skill }) => <>{SKILLS[skill]}</>;

export const Lacks = ({ lacks }: { lacks: readonly string[] }) => (
  <ul class="list-plain beside-risks">
    {lacks.map((say) => (
      <li key={say}>{say}</li>
    ))}
  </ul>
);
