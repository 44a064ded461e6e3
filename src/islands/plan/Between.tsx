import type { HoldPoint as Hold, PlannedTask, StoppingPoint as Stop } from '../../calc/evaluate.ts';
import { Blank, MayStop, Ticked } from './Glyphs.tsx';

interface HoldProps {
  readonly hold: Hold;
  readonly numbers: ReadonlyMap<string, string>;
  readonly tasks: ReadonlyMap<string, PlannedTask>;
}

/** A double rule across the sheet: what must be true before you go on. */
export function HoldPoint({ hold, numbers, tasks }: HoldProps) {
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
              <Ticked>
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

/** Where a builder may stop for good, and what is there then. */
export function StoppingPoint({ stop }: { stop: Stop }) {
  return (
    <section class="stop-point grid-plan" aria-label="You may stop here">
      <h3>
        <MayStop /> You may stop here
      </h3>
      <p>and have {stop.say}</p>
    </section>
  );
}
