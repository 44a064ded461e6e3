import type { ComponentChildren } from 'preact';
import type { Decision, Option, Skill } from '../../calc/core/decision.ts';
import type { Block } from '../../calc/evaluate.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { Blocked } from './Blocked.tsx';
import { EffectStrip } from './EffectStrip.tsx';
import { sayInShort } from './effect-words.ts';
import type { Strips } from './use-strips.ts';

export const SKILLS: Readonly<Record<Skill, string>> = {
  1: 'anyone’s',
  2: 'a handy person’s',
  3: 'a careful amateur’s',
  4: 'an experienced machinist’s or electrician’s',
  5: 'a toolroom’s',
};

/** "Hardest skill this needs: …" in words; the numbers of the tables mean nothing to a reader. */
export const saySkill = (skill: Skill): string => `Hardest skill this needs: ${SKILLS[skill]}.`;

interface RowProps {
  readonly id: string;
  readonly decision: Decision;
  readonly title: string;
  readonly about: string;
  readonly picked: boolean;
  readonly disabled?: boolean;
  readonly onPick: (picked: boolean) => void;
  readonly children?: ComponentChildren;
  readonly blockedBy?: string;
  /** What choosing it would do: drawn, and in one breath. */
  readonly effect?: ComponentChildren;
  readonly inShort?: string;
}

/** One row of the list: mark, title, what it is, what it would do. */
export function ChoiceRow({
  id,
  decision,
  title,
  about,
  picked,
  disabled = false,
  onPick,
  children,
  blockedBy,
  effect,
  inShort,
}: RowProps) {
  const kind = `option${picked ? ' is-chosen' : ''}${disabled ? ' is-blocked' : ''}`;
  const described = [`${id}-about`, blockedBy, inShort ? `${id}-effect` : ''].filter(Boolean).join(' ');
  return (
    <div class={kind}>
      <input
        type={decision.many ? 'checkbox' : 'radio'}
        id={id}
        name={decision.id}
        checked={picked}
        disabled={disabled}
        aria-describedby={described}
        onChange={(event) => onPick(event.currentTarget.checked)}
      />
      <div class="option-words">
        <label class="option-title" for={id}>
          {title}
        </label>
        <p class="option-about" id={`${id}-about`}>
          {about}
        </p>
      </div>
      {effect}
      {inShort ? (
        <p id={`${id}-effect`} hidden>
          {inShort}
        </p>
      ) : null}
      {children}
    </div>
  );
}

function More({ option }: { option: Option }) {
  const rows = [
    ['You gain', option.gains],
    ['What goes wrong', option.wrong],
    ['It asks for', option.needs ?? ''],
  ].filter(([, text]) => text);
  if (rows.length === 0) return null;
  return (
    <details class="option-more">
      <summary>
        More <span class="visually-hidden">about {option.label}</span>
      </summary>
      <dl class="option-facts">
        {rows.map(([name, text]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <p>{saySkill(option.skill)}</p>
    </details>
  );
}

interface Props {
  readonly decision: Decision;
  readonly option: Option;
  readonly picked: boolean;
  readonly block?: Block | undefined;
  /** The question does not arise, so nothing can be picked. */
  readonly idle: boolean;
  readonly strips: Strips;
  readonly onPick: (picked: boolean) => void;
}

/** An answer with what it is, what it brings and what goes wrong. A blocked one stays, with the reason and a way out. */
export function OptionBlock({ decision, option, picked, block, idle, strips, onPick }: Props) {
  const id = `${decision.id}-${option.id}`;
  const why = `${id}-why`;
  const effect = strips.of(option.id);
  return (
    <ChoiceRow
      id={id}
      decision={decision}
      title={option.label}
      about={option.means}
      picked={picked}
      disabled={idle || block !== undefined}
      onPick={onPick}
      effect={
        idle || block ? null : (
          <EffectStrip name={option.label} effect={effect} scale={strips.scale} isOld={strips.isOld} />
        )
      }
      inShort={effect && !block ? sayInShort(effect) : ''}
      {...(block ? { blockedBy: why } : {})}
    >
      {option.incomplete ? (
        <p class="option-also">
          <ResultMark result="stop" word="Not complete." /> {option.incomplete}
        </p>
      ) : null}
      {block ? <Blocked block={block} question={decision.id} id={why} /> : null}
      <More option={option} />
    </ChoiceRow>
  );
}
