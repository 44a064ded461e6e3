import type { Decision, Option, SubsystemId } from './core/decision.ts';
import { decisions as approach } from './subsystems/approach/decisions.ts';
import { decisions as carriage } from './subsystems/carriage/decisions.ts';
import { decisions as control } from './subsystems/control/decisions.ts';
import { decisions as crossSlide } from './subsystems/cross-slide/decisions.ts';
import { decisions as motors } from './subsystems/motors/decisions.ts';
import { decisions as purpose } from './subsystems/purpose/decisions.ts';
import { decisions as spindle } from './subsystems/spindle/decisions.ts';
import { decisions as tooling } from './subsystems/tooling/decisions.ts';
import { decisions as wiring } from './subsystems/wiring/decisions.ts';

/** A room of questions: one part of the machine or of the job. */
export interface Room {
  readonly id: SubsystemId;
  readonly number: number;
  readonly name: string;
  /** Where it lies on the drawing of the lathe. */
  readonly region: string;
  readonly decisions: readonly Decision[];
}

const room = (
  number: number,
  id: SubsystemId,
  name: string,
  region: string,
  decisions: readonly Decision[],
): Room => ({
  id,
  number,
  name,
  region,
  decisions,
});

/** The table of contents: rooms and their questions in the order that needs the fewest corrections. */
export const rooms: readonly Room[] = [
  room(1, 'purpose', 'Why and which lathe', 'the whole outline', purpose),
  room(2, 'approach', 'How you will go about it', 'the edge of the bench', approach),
  room(3, 'carriage', 'Carriage', 'bed and carriage', carriage),
  room(4, 'cross-slide', 'Cross slide', 'cross slide', crossSlide),
  room(5, 'tooling', 'Tools and holding', 'tool post, chuck and tailstock', tooling),
  room(6, 'motors', 'Motors', 'motor boxes', motors),
  room(7, 'control', 'Control and hands', 'panel', control),
  room(8, 'spindle', 'Spindle', 'headstock', spindle),
  room(9, 'wiring', 'Stop, sense, wire', 'cabinet', wiring),
];

const everyDecision = rooms.flatMap((each) => each.decisions);

/** Facts of the lathe and workshop come before every choice, so that no rule has to look forward. */
export const decisions: readonly Decision[] = [
  ...everyDecision.filter((decision) => decision.place === 'lathe'),
  ...everyDecision.filter((decision) => decision.place === 'guide'),
];

const byId = new Map(decisions.map((decision) => [decision.id, decision]));

export const decisionById = (id: string): Decision | undefined => byId.get(id);

export const optionById = (decision: Decision, id: string): Option | undefined =>
  decision.options.find((option) => option.id === id);

export const roomById = (id: string): Room | undefined => rooms.find((each) => each.id === id);
