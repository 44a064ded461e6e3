import { compile, type State } from '../choices/state.ts';
import { all, any, type Condition, is, not } from '../core/condition.ts';
import type { Progress, ShelfMark } from '../core/progress.ts';
import { shelfMarks } from '../core/progress.ts';
import { ballOnCarriage, newCarriageScrew } from '../subsystems/carriage/screw.ts';
import { hasOtherLathe } from './plan.ts';

/** One line of the make-first list: something round or bored that has to lie on the shelf before the lathe comes apart. */
interface Row {
  /** Permanent: ticks are kept under it. */
  readonly id: string;
  readonly task: string;
  readonly what: string;
  readonly when?: Condition;
  /** Comes finished from somebody else where this holds: it is measured and kept, not made. */
  readonly boughtWhen?: Condition;
}

const bought = any(is('brackets', 'ordered-to-drawing'), is('buying', 'ready-kit'));
const made = { boughtWhen: bought } as const;

const rows: readonly Row[] = [
  { id: 'bearing-seats', task: 'bore-bearing-seats', what: 'Blocks with their bearing seats' },
  { id: 'pulley-bores', task: 'bore-pulleys', what: 'Pulleys and coupling halves, bored and keyed' },
  { id: 'spacers', task: 'turn-spacers-and-registers', what: 'Spacers and preload rings' },
  {
    id: 'motor-registers',
    task: 'turn-spacers-and-registers',
    what: 'Motor registers: 38.1 mm for 57 mm motors, 73.0 mm for 86 mm motors',
  },
  {
    id: 'nut-sleeve',
    task: 'turn-spacers-and-registers',
    what: 'Sleeve that keeps the balls in the nut while it is off its screw',
    when: ballOnCarriage,
  },
  { id: 'screw-ends', task: 'turn-screw-ends', what: 'The turned ends of the carriage screw' },
  {
    id: 'carriage-plates',
    task: 'carriage-brackets',
    what: 'Carriage brackets: motor plate, ends, nut',
    ...made,
  },
  {
    id: 'alignment-bar-turned',
    task: 'carriage-brackets',
    what: 'Straight bar as thick as the screw, to line the brackets up',
    when: all(newCarriageScrew, not(bought)),
  },
  { id: 'clamped-plates', task: 'reversible-brackets', what: 'Brackets that clamp' },
  { id: 'heavy-plates', task: 'heavy-motor-mounts', what: 'Stiffer plates for the large motors' },
  {
    id: 'cross-plates',
    task: 'cross-brackets',
    what: 'Cross-slide plate, nut block and motor plate',
    ...made,
  },
  { id: 'cross-split-nut', task: 'turn-cross-nut', what: 'Split nut for the cross screw' },
  { id: 'riser', task: 'make-riser', what: 'Block in place of the compound' },
  { id: 'sensor-parts', task: 'make-sensor-bracket', what: 'Sensor bracket, hub and spindle pulley' },
  { id: 'spindle-plate', task: 'spindle-plate-and-pulley', what: 'Spindle motor plate and its bored pulley' },
  { id: 'collet-plate', task: 'fit-collet-chuck', what: 'Back plate of the collet chuck' },
  {
    id: 'test-bars',
    task: 'two-collar-baseline',
    what: 'Two-collar bar, kept for the turns after each stage',
  },
];

export const shelfRows: readonly { readonly id: string; readonly task: string }[] = rows;

/** What is asked of a bar that is only kept, and of a part that somebody else makes. */
const asksOf = (row: Row, fromOutside: boolean): readonly ShelfMark[] => {
  if (row.id === 'test-bars') return ['made', 'measured'];
  return fromOutside ? ['drawing', 'measured', 'photo'] : shelfMarks;
};

/** A line of the make-first list as it stands. Plain data. */
export interface ShelfLine {
  readonly id: string;
  readonly task: string;
  readonly what: string;
  /** Made elsewhere: it still has to lie here, measured, before the lathe comes apart. */
  readonly bought: boolean;
  readonly asks: readonly ShelfMark[];
  readonly ticked: readonly ShelfMark[];
  readonly open: readonly ShelfMark[];
}

const compiled = rows.map((row) => ({
  row,
  when: compile(row.when ?? { kind: 'always' }),
  bought: row.boughtWhen ? compile(row.boughtWhen) : () => false,
}));

/** The make-first list of a plan, with what is ticked. */
export function shelfOf(state: State, inPlan: ReadonlySet<string>, progress: Progress): ShelfLine[] {
  return compiled
    .filter(({ row, when }) => inPlan.has(row.task) && when(state))
    .map(({ row, bought: comesFinished }) => {
      const fromOutside = comesFinished(state);
      const asks = asksOf(row, fromOutside);
      const ticked = asks.filter((mark) => progress.shelf[row.id]?.includes(mark));
      const { id, task, what } = row;
      return {
        id,
        task,
        what,
        bought: fromOutside,
        asks,
        ticked,
        open: asks.filter((mark) => !ticked.includes(mark)),
      };
    });
}

/** Whether the list is a gate: with another lathe a forgotten part can still be made. */
export const shelfIsGate = (state: State): boolean => !hasOtherLathe(state);
