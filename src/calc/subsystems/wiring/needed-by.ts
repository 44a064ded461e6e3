import type { NeededBy } from '../../core/part.ts';

/** Which tasks wait for the parts of this room. */
export const neededBy: readonly NeededBy[] = [
  {
    tasks: ['fit-out-cabinet'],
    parts: [
      'hook-up-wire',
      'rail-and-terminals',
      'glands-and-trunking',
      'small-box-lot',
      'steel-cabinet-part',
      'plastic-box-part',
      'fan-and-filters',
      'earth-bar',
      'terminals-and-ferrules',
      'labels-and-sleeves',
      'stop-button',
      'safety-relay',
      'off-delay-timer',
      'logic-supply',
      'main-disconnect',
      'fuses-and-breakers',
      'mains-cord',
      'second-earth',
      'mains-filter',
      'contactor',
      'heartbeat-relay-part',
      'dedicated-circuit',
      'residual-device',
    ],
  },
  {
    tasks: ['run-cables'],
    parts: [
      'ferrites',
      'power-cable',
      'sensor-cable',
      'pair-cable',
      'locking-connectors',
      'cable-chain',
      'loose-wire',
    ],
  },
  { tasks: ['bench-motors', 'run-cables'], parts: ['moulded-lead-set'] },
  { tasks: ['fit-guards'], parts: ['spare-stop-button', 'chip-shields'] },
  { tasks: ['fit-spindle-brake'], parts: ['spindle-brake'] },
  { tasks: ['fit-chuck-guard'], parts: ['guard-with-switch', 'hinged-shield-part'] },
  { tasks: ['fit-covers'], parts: ['splash-enclosure', 'wipers', 'bellows-part', 'spring-covers-part'] },
  {
    tasks: ['turn-spacers-and-registers', 'carriage-brackets', 'cross-brackets', 'fit-out-cabinet'],
    parts: ['eye-protection'],
  },
  {
    tasks: ['fit-home-switches'],
    parts: ['inductive-sensor', 'precision-switch', 'flag-and-bracket', 'spare-sensor'],
  },
  { tasks: ['fit-oiler', 'fit-oiler-cross', 'fit-oiler-assembled'], parts: ['one-shot-oiler-part'] },
];
