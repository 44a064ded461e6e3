import { atLeastLimit, atMost, type CheckRule } from '../../core/check.ts';
import { assumed } from '../../core/quantity.ts';

const spindleCable: CheckRule = (look) => {
  if (look.figure('spindle-cable-current') === undefined) return undefined;
  return atLeastLimit({
    id: 'spindle-cable',
    harm: true,
    label: 'Spindle motor cable: current it may carry',
    value: look.figure('spindle-cable-ampacity'),
    limit: look.figure('motor-wire-reserve'),
    remedy: 'Take a thicker cable. More than one size up buys nothing but a stiffer cable.',
    decisions: ['cable', 'spindle-motor'],
  });
};

const axisCable: CheckRule = (look) =>
  atLeastLimit({
    id: 'axis-cable',
    harm: true,
    label: 'Axis motor cables: current they may carry',
    value: look.figure('axis-cable-ampacity'),
    limit: look.figure('axis-wire-reserve'),
    needs: look.figure('axis-wire-reserve') ? [] : ['carriage-motor-current', 'cross-motor-current'],
    remedy: 'Take a thicker cable, the kind made to bend where it moves.',
    decisions: ['cable', 'motor-size'],
  });

const sensors: CheckRule = (look) => {
  if (look.figure('sensor-drop') === undefined) return undefined;
  return atMost({
    id: 'sensor-drop',
    label: 'Volts lost on the way to a switch or sensor',
    value: look.figure('sensor-drop'),
    limit: assumed(0.5, 'V', 'of 24 V; common practice, no source'),
    remedy: 'Take thicker sensor cable or bring the cabinet nearer.',
    decisions: ['cable'],
  });
};

const encoder: CheckRule = (look) => {
  if (look.figure('encoder-drop') === undefined) return undefined;
  return atMost({
    id: 'encoder-drop',
    label: 'Volts lost on the way to the spindle encoder',
    value: look.figure('encoder-drop'),
    limit: assumed(0.25, 'V', 'a twentieth of 5 V, which most encoders still stand; their sheets decide'),
    comfort: 1.2,
    remedy: 'Use two pairs of the cable for the supply, or thicker cable, or an encoder for 24 V.',
    decisions: ['cable', 'spindle-sensor'],
  });
};

export const cableChecks: readonly CheckRule[] = [spindleCable, axisCable, sensors, encoder];
