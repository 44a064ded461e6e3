import { useStore } from '@nanostores/preact';
import type { Report, Setting } from '../../calc/evaluate.ts';
import { $units } from '../preferences.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import { counted } from '../shared/format.ts';
import { quantityText } from '../shared/quantity.ts';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { Why } from '../why/Why.tsx';
import { FoldButton, useFold } from './Fold.tsx';
import { Blank } from './Glyphs.tsx';
import { PaperRow } from './PaperRow.tsx';

const HEADS = ['What is set', 'Worked out', 'On the machine', 'Where it comes from'];

const AXES: readonly { readonly axis: Setting['axis']; readonly name: string }[] = [
  { axis: 'carriage', name: 'Carriage (Z)' },
  { axis: 'cross', name: 'Cross slide (X)' },
  { axis: 'both', name: 'Both slides' },
  { axis: 'spindle', name: 'Spindle' },
  { axis: 'machine', name: 'The machine' },
];

/** What is known on paper; a figure of the design can be asked why. */
function Value({ setting }: { setting: Setting }) {
  const units = useStore($units);
  const { value, text, label } = setting;
  if (!value) return <>{text ?? ''}</>;
  const said = quantityText(value, units);
  const { of } = value;
  if (!of || !('figure' in of)) return <>{said}</>;
  return (
    <Why asked={{ kind: 'figure', id: of.figure }} name={label}>
      {said}
    </Why>
  );
}

function Row({ setting }: { setting: Setting }) {
  const { label, value, text, how, writeIn, diameterOrRadius } = setting;
  return (
    <>
      <tr {...asRow}>
        <th {...asRowHead}>
          {label}
          {diameterOrRadius ? <span class="task-note">Counted on the {diameterOrRadius}.</span> : null}
        </th>
        <td {...asCell} data-label="Worked out" class={value || text ? undefined : 'is-blank'}>
          <span>
            <Value setting={setting} />
          </span>
        </td>
        <td {...asCell} data-label="On the machine" class={writeIn ? undefined : 'is-blank'}>
          {writeIn ? <Blank what={label} /> : null}
        </td>
        <td {...asCell} data-label="From" class="setting-how">
          {how}
        </td>
      </tr>
      <PaperRow across={4}>{how}</PaperRow>
    </>
  );
}

function Axis({ name, settings }: { name: string; settings: readonly Setting[] }) {
  const fold = useFold();
  if (settings.length === 0) return null;
  return (
    <tbody class={`group foldable${fold.shutClass}`}>
      <tr {...asRow}>
        <th {...asRowHead} colSpan={4} class="group-name">
          {name} <FoldButton fold={fold} what={counted(settings.length, 'setting')} />
        </th>
      </tr>
      {settings.map((setting) => (
        <Row key={setting.id} setting={setting} />
      ))}
    </tbody>
  );
}

/** The sheet that stays with the machine: what is set, what was worked out, and a blank for what the machine says. */
export function Settings({ report }: { report: Report }) {
  if (report.settings.length === 0) return null;
  return (
    <section class="rule-section" id="settings" tabIndex={-1}>
      <h2>Settings sheet</h2>
      <p>
        Keep it with the machine. Type in what is worked out, then measure on the machine and write the last
        word beside it.
      </p>
      <table class="table-stack settings" {...asTable} aria-label="Settings sheet">
        <ColumnHeads heads={HEADS} />
        {AXES.map(({ axis, name }) => (
          <Axis key={axis} name={name} settings={report.settings.filter((each) => each.axis === axis)} />
        ))}
      </table>
    </section>
  );
}
