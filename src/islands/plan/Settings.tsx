import { useStore } from '@nanostores/preact';
import type { Report, Setting } from '../../calc/evaluate.ts';
import { type SettingGroup, settingGroups } from '../../content/told/settings.ts';
import { topics } from '../../content/told/topics.ts';
import { $units } from '../preferences.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import { FoldButton, Folded, useFold } from '../shared/Fold.tsx';
import { counted } from '../shared/format.ts';
import { Later } from '../shared/in-turn.tsx';
import { isAskedFor } from '../shared/places.ts';
import { quantityText } from '../shared/quantity.ts';
import { Topics } from '../shared/ReadAbout.tsx';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { Why } from '../why/Why.tsx';
import { Blank } from './Glyphs.tsx';
import { PaperRow } from './PaperRow.tsx';

const HEADS = ['What is set', 'Worked out', 'On the machine', 'Where it comes from'];

/**
 * What is known on paper; a figure of the design can be asked why. By ear a figure stands alone, so it is named with its
 * group: two slides have the same settings.
 */
function Value({ setting, group }: { setting: Setting; group: string }) {
  const units = useStore($units);
  const { value, text, label } = setting;
  if (!value) return <>{text ?? ''}</>;
  const said = quantityText(value, units);
  const { of } = value;
  if (!of || !('figure' in of)) return <>{said}</>;
  return (
    <Why asked={{ kind: 'figure', id: of.figure }} name={`${label}, ${group}`}>
      {said}
    </Why>
  );
}

function Row({ setting, group }: { setting: Setting; group: string }) {
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
            <Value setting={setting} group={group} />
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

/** The topics of a group, in the order in which they are read in the book. */
const topicsOn = ({ topics: told }: SettingGroup) =>
  topics.filter(([id]) => told.some((topic) => topic === id));

function Group({ group, settings }: { group: SettingGroup; settings: readonly Setting[] }) {
  const { axis, name } = group;
  const fold = useFold(isAskedFor('setting', [axis]));
  if (settings.length === 0) return null;
  return (
    <tbody class={`group foldable${fold.shutClass}`}>
      <tr {...asRow} id={`setting-${axis}`}>
        <th {...asRowHead} colSpan={4} class="group-name">
          {name} <FoldButton fold={fold} what={counted(settings.length, 'setting')} />
          <Topics about={topicsOn(group)} />
        </th>
      </tr>
      <Folded fold={fold}>
        {settings.map((setting) => (
          <Later key={setting.id}>
            <Row setting={setting} group={name} />
          </Later>
        ))}
      </Folded>
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
        {settingGroups.map((group) => (
          <Group
            key={group.axis}
            group={group}
            settings={report.settings.filter(({ axis }) => axis === group.axis)}
          />
        ))}
      </table>
    </section>
  );
}
