import { enclosureArea, enclosureRise } from '../formulas/heat.ts';
import { curveOf, mm, type Values, type WorkingFigure } from './figure.ts';

const LOSS = { low: 10, high: 500 };
const watts = { unit: 'W', per: 1 } as const;
const degrees = { unit: 'degrees', per: 1 } as const;
/** °C that most drives stand; their sheets decide. */
const MOST = 45;

function answer({ loss = 0, height = 0, width = 0, depth = 0, room = 0 }: Values) {
  const area = enclosureArea.compute({ height, width, depth, mounting: 'wall' });
  const riseAt = (each: number) => enclosureRise.compute({ loss: each, area, wall: 'painted-steel' });
  const rise = riseAt(loss);
  const allowed = MOST - room;
  return {
    say:
      rise <= allowed
        ? 'The box gets {rise} warmer than the room, {inside} inside: most drives stand that.'
        : 'The box gets {rise} warmer than the room, {inside} inside. Most drives stand 45 °C: it wants a fan or a larger box.',
    rows: [
      { id: 'area', label: 'Surface that cools', value: area, written: { unit: 'm²', per: 1 } },
      { id: 'rise', label: 'Warmer than the room', value: rise, written: degrees },
      { id: 'inside', label: 'Inside', value: room + rise, written: celsius },
    ],
    curves: [
      { name: 'closed steel box on a wall', points: curveOf(LOSS.low, LOSS.high, riseAt, 1) },
      {
        name: 'what most drives stand',
        points: curveOf(LOSS.low, LOSS.high, () => allowed, 1),
        broken: true,
      },
    ],
    mark: [loss, rise],
  } as const;
}

const celsius = { unit: '°C', per: 1 } as const;
const edge = { unit: 'm', written: mm, low: 100, high: 1200, step: 10 } as const;

/** How warm a closed cabinet gets. */
export const heat: WorkingFigure = {
  id: 'heat',
  topic: 'cabinet-and-heat',
  question: 'How warm does a closed cabinet get?',
  begin: 'Put in the heat of all that stands inside, and try a larger box.',
  inputs: [
    {
      id: 'loss',
      label: 'Heat inside',
      unit: 'W',
      written: watts,
      ...LOSS,
      step: 5,
      example: 100,
      own: 'cabinet-loss',
    },
    { id: 'height', label: 'Height', ...edge, example: 500 },
    { id: 'width', label: 'Width', ...edge, example: 400 },
    { id: 'depth', label: 'Depth', ...edge, example: 200 },
    {
      id: 'room',
      label: 'Room on a warm day',
      unit: '°C',
      written: celsius,
      low: 5,
      high: 44,
      step: 1,
      example: 28,
    },
  ],
  across: { label: 'heat inside, W', written: watts },
  up: { label: 'degrees warmer than the room', written: degrees },
  formulas: [enclosureRise.id, enclosureArea.id],
  answer,
};
