import { useStore } from '@nanostores/preact';
import type { SizeClass } from '../../calc/core/machine.ts';
import { type Fact, facts, sizeClassOf } from '../../calc/facts.ts';
import { $units, setUnits } from '../preferences.ts';
import { counted, lengthText } from '../shared/format.ts';
import { $path, $report, setSize } from '../stores.ts';
import { FactField } from './FactField.tsx';
import { LatheSizes } from './LatheSizes.tsx';

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
  const decided = sizeClassOf(size, given);
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
      {decided !== size && swing ? (
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

function Group({ group, size }: { group: Fact['group']; size: SizeClass }) {
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

interface FoldedProps {
  readonly group: 'work' | 'own';
  readonly name: string;
  readonly about: string;
  readonly size: SizeClass;
}

/** A group that few fill in at first: folded away, with a count of what is already there. */
function Folded({ group, name, about, size }: FoldedProps) {
  const given = useStore($path).facts;
  const here = facts.filter((fact) => fact.group === group);
  const own = here.filter(({ id }) => given[id] !== undefined).length;
  return (
    <details class="fact-group rule-page" id={`figures-${group}`}>
      <summary>
        <h2>{name}</h2>{' '}
        <span class="quiet small">
          {counted(here.length, 'figure')}, {own === 0 ? 'none given yet' : `${own} given by you`}
        </span>
      </summary>
      <p>{about}</p>
      <Group group={group} size={size} />
    </details>
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
        <LatheSizes size={size} />
        <Group group="lathe" size={size} />
      </section>
      <section class="rule-page">
        <h2>Your workshop</h2>
        <Group group="workshop" size={size} />
      </section>
      <Folded
        group="work"
        name="What it shall do"
        about="The work you have in mind: it decides how hard the motors must push and how fast the slides must move. Ours are ordinary figures for a lathe of this size."
        size={size}
      />
      <Folded
        group="own"
        name="Your own figures"
        about="What you measured, or read in the data sheet of a part you have or mean to buy. They replace ours in every check."
        size={size}
      />
    </>
  );
}
