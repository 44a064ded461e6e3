import { useStore } from '@nanostores/preact';
import type { Skill } from '../../calc/core/decision.ts';
import { decisionById } from '../../calc/guide.ts';
import { LimitField } from '../guide/LimitField.tsx';
import { LengthField } from './LengthField.tsx';
import { $demands, demand, PLAIN, type PlainKind } from './limits.ts';
import { PLAIN_WORDS, SKILLED } from './words.ts';

const SKILLS = [1, 2, 3, 4] as const;

const FIGURES = [
  { name: 'money', title: 'Money', label: 'money' },
  { name: 'hours', title: 'Hours of your own', label: 'hours', after: 'h' },
  { name: 'weeks', title: 'Out of use', label: 'weeks out of use', after: 'weeks' },
] as const;

function SkillField() {
  const { skill } = useStore($demands);
  return (
    <div class="field">
      <label for="ways-skill">No answer asks for more than</label>
      <select
        id="ways-skill"
        value={skill ?? ''}
        onChange={({ currentTarget: { value } }) => {
          const { skill: _, ...others } = $demands.get();
          $demands.set(others);
          demand(value === '' ? {} : { skill: Number(value) as Skill });
        }}
      >
        <option value="">any skill</option>
        {SKILLS.map((each) => (
          <option key={each} value={each}>
            {SKILLED[each]}
          </option>
        ))}
      </select>
    </div>
  );
}

function Plain({ kind }: { kind: PlainKind }) {
  const { plain } = useStore($demands);
  const turn = (on: boolean) =>
    demand({ plain: PLAIN.filter((each) => (each === kind ? on : plain.includes(each))) });
  return (
    <label class="choice">
      <input
        type="checkbox"
        checked={plain.includes(kind)}
        onChange={(event) => turn(event.currentTarget.checked)}
      />
      <span>{PLAIN_WORDS[kind]}</span>
    </label>
  );
}

function setLength(name: 'drill' | 'play', metres: number | undefined): void {
  const { [name]: _, ...others } = $demands.get();
  $demands.set(others);
  demand(metres === undefined ? {} : { [name]: metres });
}

function Lengths() {
  const { drill, material, play } = useStore($demands);
  const metals = decisionById('materials')?.options ?? [];
  return (
    <>
      <div class="ways-drill">
        <LengthField
          id="ways-drill"
          label="Hole to drill under power"
          value={drill}
          from={0.0005}
          to={0.05}
          take={(metres) => setLength('drill', metres)}
        />
        <div class="field">
          <label for="ways-material">in which metal</label>
          <select
            id="ways-material"
            value={material}
            onChange={(event) => demand({ material: event.currentTarget.value })}
          >
            {metals.map(({ id, label }) => (
              <option key={id} value={id}>
                {label}
              </option>
            ))}
          </select>
        </div>
      </div>
      <LengthField
        id="ways-play"
        label="Play of the cross slide, on the diameter, at most"
        value={play}
        from={0.000001}
        to={0.002}
        take={(metres) => setLength('play', metres)}
      />
    </>
  );
}

/** The owner's limits: what every way that is shown keeps to. */
export function AskedFor() {
  return (
    <section class="rule-section ways-limits">
      <h2>Your limits</h2>
      <p class="small quiet">
        Money, hours and weeks hold in 16 of the 20 ways it could turn out. Empty: no limit.
      </p>
      <div class="ways-groups">
        <div>
          {FIGURES.map(({ name, title, label, ...rest }) => (
            <div class="ways-limit" key={name}>
              <span>{title}</span>
              <LimitField name={name} label={label} {...rest} />
            </div>
          ))}
          <SkillField />
        </div>
        <div>
          <fieldset>
            <legend>It has to keep to</legend>
            <div class="choice-list">
              {PLAIN.map((kind) => (
                <Plain key={kind} kind={kind} />
              ))}
            </div>
          </fieldset>
          <Lengths />
        </div>
      </div>
    </section>
  );
}
