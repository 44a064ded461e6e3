// Worked by hand, no published source: every check of a slide at the margins where its verdict changes.
import { describe } from 'vitest';
import { checks as carriageChecks } from '../../../../src/calc/subsystems/carriage/checks.ts';
import { checks as crossChecks } from '../../../../src/calc/subsystems/cross-slide/checks.ts';
import { type Bench, judges, over, type Row, without } from './bench.ts';

const closedLoop: Bench = { answers: { 'axis-motor': 'closed-loop-stepper' } };
const servo: Bench = { answers: { 'axis-motor': 'mains-servo' } };
const noMotorAsked: Bench = { answers: {} };
const onlyOther = {
  carriage: { answers: { 'driven-axes': 'cross-slide-only', 'axis-motor': 'closed-loop-stepper' } },
  cross: { answers: { 'driven-axes': 'carriage-only', 'axis-motor': 'closed-loop-stepper' } },
} as const;

type Slide = keyof typeof onlyOther;
type Draft = Omit<Row, 'id' | 'absent'> & {
  readonly lacks?: readonly string[];
  readonly unless?: readonly Bench[];
};

/** A row for a slide: it does not arise without the figures that it `lacks`, nor on a slide without a motor. */
function rowFor(slide: Slide, id: string, { lacks = [], unless = [], ...draft }: Draft): Row {
  const base = draft.at(2);
  const other = over(base, onlyOther[slide]);
  const bare = lacks.map((name) => without(base, `${slide}-${name}`));
  return { ...draft, id, absent: [...bare, ...unless, other] };
}

const figures = (slide: Slide, numbers: Record<string, number>, under: Bench = closedLoop): Bench =>
  over(under, {
    figures: Object.fromEntries(Object.entries(numbers).map(([name, value]) => [`${slide}-${name}`, value])),
  });

/** More than is needed by so many times. */
const push = (slide: Slide, id: string, need: string, under: Bench, comfort: number): Row =>
  rowFor(slide, id, {
    sense: 'at-least',
    comfort,
    at: (margin) => figures(slide, { [need]: 400, thrust: 400 * margin }, under),
    lacks: [need],
  });

const pushes = (under: Bench, comfort: number): readonly [readonly Row[], readonly Row[]] => [
  [
    push('carriage', 'carriage-turning', 'push-turning', under, comfort),
    push('carriage', 'carriage-facing', 'push-facing', under, comfort),
    push('carriage', 'drilling-thrust', 'push-drilling', under, comfort),
  ],
  [
    push('cross', 'cross-turning', 'push-turning', under, comfort),
    push('cross', 'cross-facing', 'push-facing', under, comfort),
    push('cross', 'cross-parting', 'push-parting', under, comfort),
  ],
];

describe.each([
  ['a stepper that is watched', closedLoop, 1.5],
  ['a stepper that is not', { answers: { 'axis-motor': 'open-loop-stepper' } }, 2],
  ['a servo', servo, 1.3],
] as const)('push of %s', (_, under, comfort) => {
  const [carriage, cross] = pushes(under, comfort);
  judges(carriageChecks, carriage);
  judges(crossChecks, cross);
});

const moves = (slide: Slide): readonly Row[] => [
  rowFor(slide, `${slide}-motor-speed`, {
    sense: 'at-most',
    comfort: 1.5,
    at: (margin) => figures(slide, { 'motor-speed-rapid': 25 / margin, 'motor-speed-limit': 25 }),
    unless: [over(figures(slide, {}, noMotorAsked), {})],
  }),
  rowFor(slide, `${slide}-rapid`, {
    sense: 'at-least',
    comfort: 1.5,
    at: (margin) => figures(slide, { 'torque-rapid': 0.2 * margin, 'rapid-torque-needed': 0.2 }),
  }),
  {
    id: `${slide}-acceleration`,
    sense: 'at-most',
    comfort: 1,
    at: (margin) =>
      figures(slide, { 'load-inertia': 1e-5, 'torque-rapid': 0.5, 'acceleration-torque': 0.15 / margin }),
    absent: [
      figures(slide, { 'torque-rapid': 0.5, 'acceleration-torque': 0.1 }),
      figures(slide, { 'load-inertia': 1e-5, 'acceleration-torque': 0.1 }),
    ],
  },
  {
    id: `${slide}-inertia`,
    sense: 'at-most',
    comfort: 1.2,
    at: (margin) => figures(slide, { 'inertia-ratio': 10 / margin }),
    absent: [figures(slide, {}), figures(slide, { 'inertia-ratio': 4 }, noMotorAsked)],
  },
];

const servoMoves = (slide: Slide): readonly Row[] => [
  {
    id: `${slide}-motor-speed`,
    sense: 'at-most',
    comfort: 1,
    at: (margin) => figures(slide, { 'motor-speed-rapid': 50 / margin, 'motor-speed-limit': 50 }, servo),
  },
  {
    id: `${slide}-inertia`,
    sense: 'at-most',
    comfort: 1.2,
    at: (margin) => figures(slide, { 'inertia-ratio': 5 / margin }, servo),
  },
];

const onScrew = (slide: Slide, id: string, draft: Draft): Row =>
  rowFor(slide, `${slide}-${id}`, {
    ...draft,
    at: (margin) => over(figures(slide, { 'nut-stiffness': 1e8 }), draft.at(margin)),
    lacks: ['nut-stiffness', ...(draft.lacks ?? [])],
  });

const screws = (slide: Slide): readonly Row[] => [
  onScrew(slide, 'whirl', {
    sense: 'at-least',
    comfort: 1.25,
    at: (margin) => figures(slide, { 'whirl-speed': 10 * margin, 'screw-speed-rapid': 10 }),
  }),
  onScrew(slide, 'buckling', {
    sense: 'at-least',
    comfort: 1.5,
    at: (margin) => figures(slide, { 'buckling-load': 2000 * margin, thrust: 2000 }),
  }),
  onScrew(slide, 'buckling-stall', {
    sense: 'at-least',
    comfort: 2,
    at: (margin) => figures(slide, { 'buckling-load': 2000 * margin, 'stall-thrust': 4000 }),
  }),
  onScrew(slide, 'end-bearing', {
    sense: 'at-least',
    comfort: 1.1,
    at: (margin) => figures(slide, { 'end-rating': 4000 * margin, 'stall-thrust': 4000 }),
  }),
  onScrew(slide, 'ball-speed', {
    sense: 'at-most',
    comfort: 1,
    at: (margin) =>
      figures(slide, { 'ball-circle': 0.02, 'screw-speed-rapid': 50 / margin, 'ball-speed-limit': 50 }),
    lacks: ['ball-circle'],
  }),
  onScrew(slide, 'screw-life', {
    sense: 'at-least',
    comfort: 1.5,
    at: (margin) => figures(slide, { 'dynamic-rating': 5000, 'screw-life': 2000 * margin }),
    lacks: ['dynamic-rating'],
  }),
  onScrew(slide, 'screw-length', {
    sense: 'at-least',
    comfort: 1,
    at: (margin) =>
      over(figures(slide, { 'screw-thread': 0.4, 'screw-length': 0.5 }), {
        measured: { [`${slide}-screw-bought`]: 0.5 * margin },
      }),
    lacks: ['screw-thread'],
  }),
];

const fits = (slide: Slide): readonly Row[] => [
  {
    id: `${slide}-belt-mesh`,
    sense: 'at-least',
    comfort: 1,
    at: (margin) => figures(slide, { 'belt-teeth': 60, 'belt-mesh': 6 * margin }),
    absent: [figures(slide, { 'belt-mesh': 8 })],
  },
  ...(
    [
      [10, 18],
      [15, 18],
      [15.1, 20],
      [20, 20],
      [20.1, 24],
    ] as const
  ).map(
    ([speed, fewest]): Row => ({
      id: `${slide}-pulley-teeth`,
      when: `${speed} turns a second`,
      sense: 'at-least',
      comfort: 1,
      at: (margin) => figures(slide, { 'motor-speed-rapid': speed, 'motor-pulley-teeth': fewest * margin }),
      absent: [
        figures(slide, { 'motor-speed-rapid': speed }),
        figures(slide, { 'motor-pulley-teeth': fewest }),
      ],
    }),
  ),
  rowFor(slide, `${slide}-give`, {
    sense: 'at-most',
    comfort: 1.25,
    at: (margin) => figures(slide, { 'give-expected': 20e-6 / margin }),
  }),
];

describe.each([
  ['carriage', carriageChecks],
  ['cross', crossChecks],
] as const)('%s', (slide, rules) => {
  judges(rules, [...moves(slide), ...screws(slide), ...fits(slide)]);
});

describe.each([
  ['carriage', carriageChecks],
  ['cross', crossChecks],
] as const)('%s with a servo', (slide, rules) => {
  judges(rules, servoMoves(slide));
});
