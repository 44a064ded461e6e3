import { useStore } from '@nanostores/preact';
import type { Progress } from '../../calc/core/progress.ts';
import type { HoldPoint as Hold, PlannedTask, StoppingPoint as Stop } from '../../calc/evaluate.ts';
import type { StopPlan } from '../../calc/working.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { hoursRange, moneyRange, weeksRange } from '../shared/format.ts';
import { Blank, MayStop, Ticked } from './Glyphs.tsx';
import { $stops } from './job.ts';

interface HoldProps {
  readonly hold: Pick<Hold, 'name' | 'say' | 'tasks'>;
  readonly numbers: ReadonlyMap<string, string>;
  readonly tasks: ReadonlyMap<string, PlannedTask>;
  readonly done: Progress['done'];
}

/** A double rule across the sheet: what must be true before you go on. */
export function HoldPoint({ hold, numbers, tasks, done }: HoldProps) {
  return (
    <section class="hold-point grid-plan" aria-label={hold.name}>
      <h2>{hold.name}</h2>
      <div>
        <p>
          <b>{hold.say}</b>
        </p>
        <ul class="hold-checks">
          {hold.tasks.map((id) => (
            <li key={id}>
              <Ticked done={id in done}>
                <span class="task-number">{numbers.get(id)}</span> {tasks.get(id)?.name}
              </Ticked>
            </li>
          ))}
        </ul>
      </div>
      <p>
        Checked by <Blank what="checked by" /> on <Blank what="date" />
      </p>
    </section>
  );
}

function SoFar({ name, text }: { name: string; text: string | undefined }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <DimensionLine text={text ?? '…'} length={138} />
      </dd>
    </div>
  );
}

const said = (stop: StopPlan | undefined) =>
  stop && {
    money: moneyRange(stop.money.p10, stop.money.p90),
    hours: hoursRange(stop.hours.p10, stop.hours.p90),
    weeks: weeksRange(stop.weeks.p10, stop.weeks.p90),
    resale: moneyRange(stop.resale[0], stop.resale[2]),
  };

/** Where a builder may stop for good: what is there then, what it took, and what selling the parts again would bring. */
export function StoppingPoint({ stop }: { stop: Stop }) {
  const words = said(useStore($stops)?.find(({ id }) => id === stop.id));
  return (
    <section class="stop-point grid-plan" aria-label="You may stop here">
      <h3>
        <MayStop /> You may stop here
      </h3>
      <p>and have {stop.say}</p>
      <dl class="so-far">
        <SoFar name="Money so far, in 16 of 20 ways" text={words?.money} />
        <SoFar name="Hours so far" text={words?.hours} />
        <SoFar name="Weeks from the start" text={words?.weeks} />
        <SoFar name="Sold again, the parts bring" text={words?.resale} />
      </dl>
    </section>
  );
}
