import type { Family } from '../../calc/choosing.ts';
import type { ChoiceView, Report } from '../../calc/evaluate.ts';
import { facts } from '../../calc/facts.ts';
import { decisionById, optionById, rooms } from '../../calc/guide.ts';
import { saidFigure } from '../../islands/lathe/units.ts';
import { choiceText } from '../../islands/plan/words.ts';
import { counted, plain } from '../../islands/shared/format.ts';

const MINUTES = 60;

const asked = ({ status }: ChoiceView): boolean => status !== 'not-asked';

/** The owner's own figures of the lathe and the facts that were answered, as name and words. */
export function latheRows({ machine, choices }: Report): { name: string; said: string; decision?: string }[] {
  const figures = facts
    .filter(({ id }) => machine.facts[id]?.origin.kind === 'answered')
    .map(({ id, name, show }) => ({ name, said: saidFigure(machine.facts[id]!.value, show, 'metric') }));
  const answers = choices
    .filter(({ place, status }) => place === 'lathe' && status === 'answered')
    .map((choice) => ({
      name: decisionById(choice.decision)?.name ?? choice.decision,
      said: choiceText(choice),
      decision: choice.decision,
    }));
  return [...figures, ...answers];
}

export interface AnswerRow {
  readonly decision: string;
  readonly name: string;
  readonly said: string;
  /** What the answers give, in the words of the trade; for an open question why the plan takes what it takes. */
  readonly why: string;
  readonly open: boolean;
}

function whyOf({ decision, options, status, why }: ChoiceView): string {
  if (status !== 'answered') return why;
  const about = decisionById(decision);
  const said = options.flatMap((id) => (about && optionById(about, id)) ?? []);
  return said.map(({ gains, means }) => gains || means).join(' ');
}

/** Every question of the guide that arises, room by room. */
export function answersByRoom({ choices }: Report): { id: string; name: string; rows: AnswerRow[] }[] {
  return rooms
    .map(({ id, name }) => ({
      id,
      name,
      rows: choices
        .filter((choice) => choice.subsystem === id && choice.place === 'guide' && asked(choice))
        .map((choice) => ({
          decision: choice.decision,
          name: decisionById(choice.decision)?.name ?? choice.decision,
          said: choiceText(choice),
          why: whyOf(choice),
          open: choice.status !== 'answered',
        })),
    }))
    .filter(({ rows }) => rows.length > 0);
}

/** What the owner answered to a question, one after the other; empty where it was not answered. */
export function answered({ choices }: Report, decision: string): string {
  const about = decisionById(decision);
  const choice = choices.find((each) => each.decision === decision && each.status === 'answered');
  return (choice?.options ?? []).map((id) => (about && optionById(about, id)?.label) ?? id).join('; ');
}

/** "Ferrules: 10 batches of 40 a year, 8 minutes each by hand and 3 with a program." */
export function familyWords({
  name,
  batchesPerYear,
  piecesPerBatch,
  byHand,
  byProgram,
  outsidePrice,
}: Family): string {
  const each = `${plain(byHand.piece * MINUTES)} minutes each by hand and ${plain(byProgram.attended * MINUTES)} with a program`;
  const outside = outsidePrice === undefined ? '' : `; a shop asks $${plain(outsidePrice)} each`;
  return `${name}: ${counted(batchesPerYear, 'batch', 'batches')} of ${plain(piecesPerBatch)} a year, ${each}${outside}.`;
}
