import { useStore } from '@nanostores/preact';
import type { BillLine, Report } from '../../calc/evaluate.ts';
import { rooms } from '../../calc/guide.ts';
import { counted, plain } from '../shared/format.ts';
import { OwnedTick } from '../shared/OwnedTick.tsx';
import { $path, $report } from '../stores.ts';

const amount = ({ qty, unit }: BillLine): string =>
  unit === 'each' ? plain(qty, 1) : `${plain(qty, 1)} ${unit}`;

function RoomOfParts({ name, lines }: { name: string; lines: readonly BillLine[] }) {
  if (lines.length === 0) return null;
  return (
    <fieldset>
      <legend>{name}</legend>
      <div class="choice-list">
        {lines.map((line) => (
          <OwnedTick key={line.part} line={line}>
            {line.name} <span class="quiet">{amount(line)}</span>
          </OwnedTick>
        ))}
      </div>
    </fieldset>
  );
}

function Lists({ report }: { report: Report }) {
  const { owned } = useStore($path);
  const lines = report.bill.once.filter((line) => !line.credit);
  const listed = new Set(lines.map((line) => line.part));
  const idle = owned.filter((part) => !listed.has(part)).length;
  return (
    <>
      <div class="drawer">
        {rooms.map(({ id, name }) => (
          <RoomOfParts key={id} name={name} lines={lines.filter((line) => line.subsystem === id)} />
        ))}
      </div>
      {idle > 0 ? (
        <p class="quiet">
          {counted(idle, 'more thing')} you ticked before, not needed on this path. The tick is kept.
        </p>
      ) : null}
    </>
  );
}

/** What the owner has already: everything the plan would buy, to be ticked off. */
export function Drawer() {
  const report = useStore($report);
  return (
    <section class="rule-page">
      <h2>Already in the drawer</h2>
      <p>
        Tick what you own and would use. It then costs nothing; checking and fitting it still takes its hours.
      </p>
      {report ? (
        <Lists report={report} />
      ) : (
        <p class="quiet">
          The list appears here once the page has worked out what your path needs. It takes JavaScript.
        </p>
      )}
    </section>
  );
}
