import type { Word } from './word.ts';

export const sensing: readonly Word[] = [
  { word: 'encoder', means: 'A sensor that counts how far and which way a shaft has turned.' },
  {
    word: 'home switch',
    means: 'The place from which the machine counts.',
  },
  {
    word: 'homing',
    linked: ['homing', 'homed'],
    means: 'Moving a slide to its home switch, so that the control knows where it is.',
  },
  {
    word: 'index pulse',
    also: ['one mark a turn'],
    linked: ['index pulse', 'one mark a turn', 'index'],
    means: 'A signal once every turn. It tells the control where a thread starts.',
  },
  {
    word: 'indicator',
    also: ['dial indicator', 'dial gauge'],
    means: 'A dial with a stylus that shows movements of a hundredth of a millimetre.',
  },
  {
    word: 'inductive sensor',
    also: ['proximity sensor'],
    linked: ['inductive sensor', 'inductive sensors', 'inductive', 'proximity sensor'],
    means: 'A sensor that feels metal near it without touching.',
  },
  { word: 'limit switch', means: 'Stops a slide before it reaches the end of its travel.' },
  {
    word: 'lines',
    linked: ['encoder lines', 'disc with (lines)', '200 (lines)'],
    means: 'Marks on an encoder. A control counts four edges for each line.',
  },
  {
    word: 'quadrature',
    kept: 'What makers of encoders call their signals.',
    means: 'Two counting signals a quarter apart. Together they tell direction.',
  },
  {
    word: 'readout',
    also: ['digital readout', 'DRO'],
    means: 'Scales on the slides with a display that shows where the tool is. Nothing is driven.',
  },
  { word: 'soft limit', means: 'A fence that the control keeps in its head once it knows where home is.' },
  { word: 'test bar', means: 'A straight, round, ground bar to set things true by.' },
];
