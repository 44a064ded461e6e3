import { atMost, type CheckRule } from '../../core/check.ts';
import { assumed } from '../../core/quantity.ts';
import { hasFan } from './design-cabinet.ts';

const heat: CheckRule = (look) => {
  if (look.figure('cabinet-area') === undefined) return undefined;
  const fan = hasFan(look);
  return atMost({
    id: 'cabinet-heat',
    label: fan ? 'Warming of the cabinet with its fan' : 'Warming of the closed box',
    value: look.figure(fan ? 'cabinet-rise-ventilated' : 'cabinet-rise-sealed'),
    limit: look.figure('cabinet-rise-allowed'),
    comfort: 1.2,
    remedy: fan
      ? 'Take a larger fan or a second one, and clean the filters. Half of the air on its label is what comes through.'
      : 'Add a fan with filters, or take a larger box. Plastic lets little heat through.',
    testWhen: 'Thermometer in the shut cabinet after an hour of work on a warm day: 45 °C at most.',
    decisions: ['housing', 'drives', 'spindle-motor'],
  });
};

const room: CheckRule = (look) => {
  if (look.figure('panel-fill') === undefined) return undefined;
  return atMost({
    id: 'panel-fill',
    label: 'How full the back plate is',
    value: look.figure('panel-fill'),
    limit: assumed(0.75, '1', 'a quarter stays free for wires and for what comes later; common practice'),
    comfort: 1.1,
    remedy: 'Take the next larger cabinet. Lay the devices out on paper at full size before buying it.',
    decisions: ['housing', 'drives'],
  });
};

export const cabinetChecks: readonly CheckRule[] = [heat, room];
