import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, chosen, type Quantity } from '../../core/quantity.ts';
import { differenceOf, productOf, sumOf } from '../../core/steps.ts';
import {
  enclosureAirflow,
  enclosureArea,
  enclosureRise,
  filteredAirflow,
  panelFill,
  ventilatedRise,
} from '../../formulas/heat.ts';
import { drivenMotors, memory, sheet, spindleDriveInCabinet } from './devices.ts';

type Edge = 'width' | 'height' | 'depth';
const boxes: Readonly<Record<string, Readonly<Record<Edge, number>>>> = {
  'steel-cabinet': { width: 0.4, height: 0.5, depth: 0.2 },
  'plastic-box': { width: 0.3, height: 0.4, depth: 0.18 },
};

/** The owner's measure of the box, else that of the one in the plan. */
function edge(look: Look, name: Edge): Quantity | undefined {
  const housing = look.option('housing') ?? '';
  const usual = boxes[housing];
  if (!usual) return undefined;
  return (
    look.measured(`cabinet-${name}`) ?? chosen(usual[name], 'm', 'housing', housing, 'the box in the plan')
  );
}

/** A fan blows in through a filter; a small plastic box of a thread synchroniser does without. */
export const hasFan = (look: Look): boolean =>
  look.chosen('housing', 'steel-cabinet') ||
  (look.chosen('housing', 'plastic-box') && !look.chosen('control', 'thread-synchroniser'));

const share = (value: number, of: Quantity | undefined, why: string): Quantity | undefined =>
  productOf('W', { of, share: assumed(value, '1', `${why}; common practice, no source`) });

/** Heat of axis drives and their supply. A thread synchroniser pulls for minutes: half of it over an hour. */
function axisHeat(look: Look): Quantity | undefined {
  const mains = look.chosen('motor-supply', 'mains-direct');
  const built = look.chosen('drives', 'built-in-drives');
  const each = built ? 0 : mains ? 30 : 15;
  const full = sumOf({
    drives: assumed(each * drivenMotors(look), 'W', `${each} W for each axis drive; ${memory}`),
    supply: mains
      ? assumed(0, 'W', 'the drives are fed by the mains')
      : share(0.15, look.figure('axis-load'), 'a supply loses 15 % of what it gives out'),
  });
  if (!look.chosen('control', 'thread-synchroniser')) return full;
  return share(0.5, full, 'a thread synchroniser works half of the time at most');
}

/** Watts that stay in the box as heat. */
function loss(look: Look): Quantity | undefined {
  const small = look.chosen('control', 'thread-synchroniser');
  return sumOf({
    spindle: spindleDriveInCabinet(look)
      ? share(0.04, look.fact('spindle-power'), 'a drive turns 4 % of what it passes into heat')
      : assumed(0, 'W', 'nothing of the spindle stands in the cabinet'),
    axes: axisHeat(look),
    control: assumed(
      small ? 4 : 10,
      'W',
      `control boards and the 24 V supply; a computer stands outside; ${memory}`,
    ),
  });
}

/** Kelvin that the room leaves to the box. */
const riseAllowed = (): Quantity | undefined => {
  const from = assumed(45, '°C', 'most drives give less current above it; their sheets decide');
  const less = assumed(24, '°C', 'a warm day in the workshop; a hotter room leaves less');
  const left = differenceOf(from, less);
  return left && { ...left, unit: 'K' };
};

const area = (look: Look): Quantity | undefined => {
  const [height, width, depth] = [edge(look, 'height'), edge(look, 'width'), edge(look, 'depth')];
  return derive(enclosureArea, { height, width, depth, mounting: 'wall' });
};

const fanFreeAir = (look: Look): Quantity | undefined =>
  hasFan(look)
    ? chosen(
        30 / 3600,
        'm³/s',
        'housing',
        look.option('housing') ?? '',
        `30 m³ an hour on its label; ${sheet}`,
      )
    : undefined;

/** Back plate that devices take with the air round them, square metres. */
const footprint = {
  axisDrive: 0.009,
  axisSupply: 0.025,
  spindleDrive: 0.0216,
  filter: 0.0055,
  rails: 0.034,
  control: 0.01,
} as const;

function fill(look: Look): Quantity | undefined {
  const [height, width] = [edge(look, 'height'), edge(look, 'width')];
  const inside = assumed(0.79, '1', 'a plate is 50 mm narrower and lower than its box');
  const plate = productOf('m²', { height, width, inside });
  const device = (each: number, count: number) =>
    Array.from({ length: count }, () => assumed(each, 'm²', sheet));
  const spindle = spindleDriveInCabinet(look) ? 1 : 0;
  return derive(panelFill, {
    devices: [
      ...device(footprint.axisDrive, look.chosen('drives', 'built-in-drives') ? 0 : drivenMotors(look)),
      ...device(footprint.axisSupply, look.chosen('motor-supply', 'mains-direct') ? 0 : 1),
      ...device(footprint.spindleDrive, spindle),
      ...device(footprint.filter, spindle),
      ...device(footprint.rails, look.chosen('control', 'thread-synchroniser') ? 0 : 1),
      ...device(footprint.control, 1),
    ],
    plate,
  });
}

export const cabinetFigures: readonly Figure[] = [
  { id: 'cabinet-loss', label: 'Heat in the cabinet', of: loss },
  { id: 'cabinet-area', label: 'Surface of the cabinet that gives off heat', of: area },
  { id: 'cabinet-rise-allowed', label: 'Warming of the cabinet that drives stand', of: riseAllowed },
  {
    id: 'cabinet-rise-sealed',
    label: 'Warming of the cabinet without a fan',
    of: (look) =>
      derive(enclosureRise, {
        loss: look.figure('cabinet-loss'),
        area: look.figure('cabinet-area'),
        wall: look.chosen('housing', 'plastic-box') ? 'plastic' : 'painted-steel',
      }),
  },
  {
    id: 'cabinet-airflow',
    label: 'Air that the fan moves through its filters',
    of: (look) => derive(filteredAirflow, { freeAir: fanFreeAir(look) }),
  },
  {
    id: 'cabinet-airflow-needed',
    label: 'Air that must pass through the cabinet',
    of: (look) =>
      hasFan(look)
        ? derive(enclosureAirflow, {
            loss: look.figure('cabinet-loss'),
            rise: look.figure('cabinet-rise-allowed'),
          })
        : undefined,
  },
  {
    id: 'cabinet-rise-ventilated',
    label: 'Warming of the cabinet with its fan',
    of: (look) =>
      derive(ventilatedRise, {
        loss: look.figure('cabinet-loss'),
        airflow: look.figure('cabinet-airflow'),
      }),
  },
  { id: 'panel-fill', label: 'Share of the back plate that is covered', of: fill },
];
