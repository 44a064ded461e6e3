import { decisionById } from '../../calc/guide.ts';
import type { Moved, Receipt } from '../receipts.ts';
import { sayAnswer } from '../receipts.ts';
import { counted, listed } from '../shared/format.ts';
import { sayChecks, sayHours, sayMoney, sayRisks } from './effect-words.ts';
import type { Told } from './use-told.ts';

const nameOf = (id: string): string => decisionById(id)?.name ?? id;

/** "Until you answer them, it also sets cable (screened cable)." At most three are named. */
function sayAlso({ alsoSet }: Moved): string {
  if (alsoSet.length === 0) return '';
  const named = alsoSet.slice(0, 3).map(({ decision, options }) => {
    const about = decisionById(decision);
    return about ? `${about.name.toLowerCase()} (${sayAnswer(about, options)})` : decision;
  });
  const more = alsoSet.length > 3 ? [`${alsoSet.length - 3} more`] : [];
  return `Until you answer them, it also sets ${listed([...named, ...more])}.`;
}

function sayQuestions({ opened, closed, clashes }: Moved): string {
  const said = [
    opened.length > 0 ? `${counted(opened.length, 'more question')} to ask` : '',
    closed.length > 0 ? `${counted(closed.length, 'question')} fewer to ask` : '',
    clashes.length > 0 ? `please decide again: ${listed(clashes.map(nameOf))}` : '',
  ].filter(Boolean);
  const text = said.join('; ');
  return text ? `${text[0]?.toUpperCase()}${text.slice(1)}.` : '';
}

/** What the change moved: "Money: $530–690 less, typically $600. Hours: no clear difference." and what comes with it. */
export function sayMoved(moved: Moved, told: Told): string {
  return [
    `Money: ${sayMoney(told.money, told.moneySays)}.`,
    `Hours: ${sayHours(told.hours, told.hoursSays)}.`,
    told.risks.length > 0 ? `Risks: ${sayRisks(told.risks)}.` : '',
    told.checks.length > 0 ? `Checks: ${sayChecks(told.checks)}.` : '',
    told.irreversible.length > 0
      ? `Cannot be undone once made: ${listed(told.irreversible.map(({ name }) => name))}.`
      : '',
    sayAlso(moved),
    sayQuestions(moved),
  ]
    .filter(Boolean)
    .join(' ');
}

/** The same, or what to say while it is worked out and when it cannot be. */
export function sayReceipt({ moved, lost }: Receipt, told: Told | 'lost' | undefined): string {
  if (lost || told === 'lost') return 'What it moves could not be worked out.';
  return moved && told ? sayMoved(moved, told) : 'Working out what it moves …';
}
