import type { Look } from '../core/figure.ts';
import { stopTable } from '../subsystems/wiring/stop-table.ts';
import { blank, planned, type Setting, settled } from './setting.ts';

const drives = 'At least twice what the sheet of the drive asks; low-voltage outputs need more.';

function pulses(): Setting[] {
  return [
    blank('both', 'pulse-length', 'Length of a step pulse and the gap after it', { how: drives }),
    blank(
      'both',
      'direction-lead',
      'Time between a change of direction and the next pulse, before and after',
      {
        how: drives,
      },
    ),
  ];
}

function homing(look: Look): Setting[] {
  if (look.chosen('home-limits', 'no-homing')) return [];
  return [
    settled(
      'both',
      'home-order',
      'Order of homing',
      'cross slide first, then carriage',
      'A tool inside a bore, a groove or behind a shoulder: jog the carriage out by hand first. Then cross slide, then carriage.',
    ),
  ];
}

function hands(look: Look): Setting[] {
  if (
    !look.chosen('operator-panel', 'handwheel-panel', 'pendant-and-buttons') &&
    !look.chosen('hand-use', 'electronic-handwheels')
  )
    return [];
  const how = 'One click in the finest position: an indicator on the slide shows it.';
  return [
    blank('carriage', 'carriage-handwheel', 'Travel for each click of the handwheel', { how }),
    blank('cross', 'cross-handwheel', 'Travel for each click of the handwheel', {
      how: `${how} The display may show twice that.`,
      diameterOrRadius: 'radius',
    }),
  ].filter(
    ({ axis }) => !look.chosen('driven-axes', axis === 'cross' ? 'carriage-only' : 'cross-slide-only'),
  );
}

function tools(): Setting[] {
  return [
    blank('machine', 'tool-table', 'Tools: number, length along, position across, wear', {
      how: 'Skim a bar, measure its diameter, type it in; touch the end face. The figure across is a diameter.',
      diameterOrRadius: 'diameter',
    }),
    blank('machine', 'tool-nose', 'Tools: nose radius and which way the tip points', {
      how: 'On the box of the insert. A wrong direction shows as a wrong taper, never as an error message.',
      diameterOrRadius: 'radius',
    }),
  ];
}

/** One line for each event, worded as it must behave; ticked by the one who proved it. */
const stops = (look: Look): Setting[] =>
  stopTable(look).map(({ id, event, axes, spindle, control, again }) => ({
    ...settled(
      'machine',
      `stop-${id}`,
      event,
      `axes ${axes}; spindle ${spindle}; control ${control}`,
      `Proved with lamps, then on the lathe. ${again}`,
    ),
    writeIn: true,
  }));

function cards(look: Look): Setting[] {
  return [
    planned(
      'machine',
      'largest-drill-card',
      'Largest drill, for the machine card',
      look.fact('largest-drill'),
      {
        how: 'Pilot 4 mm, then 6, 8, 10 mm in small pecks. Eight tenths of the largest with no alarm and a return within 0.01 mm.',
        diameterOrRadius: 'diameter',
      },
    ),
    blank('machine', 'wire-list', 'Inputs and outputs with wire numbers', {
      how: 'Copied from the drawing; a number on both ends of every wire. Switch each by hand and watch it on the screen.',
    }),
    blank('machine', 'settings-version', 'Version and date of these settings, and where the copies are', {
      how: 'Save after every change, in two places that are not the same computer. Print this sheet again.',
    }),
  ];
}

/** What belongs to the whole machine. */
export const machineSettings = (look: Look): Setting[] => [
  ...pulses(),
  ...homing(look),
  ...hands(look),
  ...(look.chosen('control', 'thread-synchroniser') ? [] : tools()),
  ...stops(look),
  ...cards(look),
];
