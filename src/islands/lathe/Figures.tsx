import { useStore } from '@nanostores/preact';
import type { SizeClass } from '../../calc/core/machine.ts';
import { facts, sizeOfSwing } from '../../calc/facts.ts';
import { $units, setUnits } from '../preferences.ts';
import { lengthText } from '../shared/format.ts';
import { $path, $report, setSize } from '../stores.ts';
import { FactField } from './FactField.tsx';

const SIZES: readonly { readonly id: SizeClass; readonly name: string; readonly swing: string }[] = [
  { id: 'small', name: 'Small', swing: '200 mm swing, 350 mm between centres, about 60 kg' },
  { id: 'medium', name: 'Medium', swing: '250 mm swing, 500 mm between centres, about 140 kg' },
  { id: 'large', name: 'Large', swing: '320 mm swing, 800 mm between centres, about 350 kg' },
];

/** The invented lathe that typical figures come from until the owner's own are typed. */
export function SizeClassChoice() {
  const { size, facts: given } = useStore($path);
  const units = useStore($units);
  const { swing } = given;
  const decided = swing === undefined ? undefined : sizeOfSwing(swing);
  return (
    <fieldset>
      <legend>Start from</legend>
      <div class="choice-list">
        {SIZES.map(({ id, name, swing: about }) => (
          <label key={id} class="choice">
            <input type="radio" name="size" checked={size === id} onChange={() => setSize(id)} />
            <span>
              <b>{name}</b> <span class="quiet">{about}</span>
            </span>
          </label>
        ))}
      </div>
      <p class="quiet small">
        Three invented lathes, typical of their size. They fill in what you do not type.
      </p>
      {decided && decided !== size && swing ? (
        <p class="small">
          Your swing of {lengthText(swing, units)} makes it a {decided} lathe, so typical figures are those of
          a {decided} one.
        </p>
      ) : null}
    </fieldset>
  );
}

function UnitSwitch() {
  const units = useStore($units);
  return (
    <fieldset class="unit-switch">
      <legend>Lengths in</legend>
      <div class="segments">
        {(['metric', 'inch'] as const).map((each) => (
          <label key={each}>
            <input type="radio" name="units" checked={units === each} onChange={() => setUnits(each)} />
            {each === 'metric' ? 'millimetres' : 'inches'}
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function Group({ group, size }: { group: 'lathe' | 'workshop'; size: SizeClass }) {
  return (
    <div class="fact-grid">
      {facts
        .filter((fact) => fact.group === group)
        .map((fact) => (
          <FactField key={fact.id} fact={fact} size={size} />
        ))}
    </div>
  );
}

/** Every figure of the lathe and the workshop; an empty field means the typical one. */
export function Figures() {
  const report = useStore($report);
  const path = useStore($path);
  const size = report?.machine.size ?? path.size;
  return (
    <>
      <section class="rule-page">
        <h2>Figures of the lathe</h2>
        <p>
          Type what you know and leave the rest empty. “1,200”, “9,5”, “3/8 in” and “10 in” are all
          understood.
        </p>
        <UnitSwitch />
        <Group group="lathe" size={size} />
      </section>
      <section class="rule-page">
        <h2>Your workshop</h2>
        <Group group="workshop" size={size} />
      </section>
    </>
  );
}
