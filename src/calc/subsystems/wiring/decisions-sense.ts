import type { Decision } from '../../core/decision.ts';
import { computerRuns } from './wired.ts';

const watchdog: Decision = {
  id: 'watchdog',
  subsystem: 'wiring',
  place: 'guide',
  name: 'If the computer stops',
  ask: 'What drops the drives when the computer hangs?',
  why: 'A frozen computer leaves its outputs as they were. Something outside it has to notice.',
  thumb: 'The drives run only while the control keeps sending a sign of life.',
  askWhen: computerRuns,
  assume: ['heartbeat-relay', 'drive-enable-chain', 'no-watchdog'],
  assumeWhy: 'Until you choose we plan with a relay that holds only while the control pulses it.',
  open: 'options',
  options: [
    {
      id: 'heartbeat-relay',
      label: 'A relay fed by a heartbeat',
      means:
        'A small board (charge pump) that holds a relay while the control sends pulses and lets go when they stop.',
      gains: 'Cheap, and proved by pulling one plug.',
      wrong:
        'A motion box that makes the pulses itself goes on after the computer has died. Test by crashing the program.',
      skill: 2,
    },
    {
      id: 'drive-enable-chain',
      label: 'The control’s own enable chain',
      means: 'A card or box with its own watchdog drops the enable wire of all drives.',
      gains: 'Nothing more to buy where the card has it.',
      wrong:
        'Some watchdogs are off until they are set. Pull the network plug while a slow move runs and look.',
      skill: 3,
      needs: 'A watchdog named in the manual of the card, and drives with an enable input.',
    },
    {
      id: 'no-watchdog',
      label: 'Nothing (not accepted)',
      means: 'The last state of the outputs stays.',
      gains: 'Nothing to wire.',
      wrong: 'The spindle goes on turning after a crash of the computer.',
      skill: 1,
      incomplete: 'Spindle and drives would keep running when the computer hangs.',
    },
  ],
};

const oldSwitchgear: Decision = {
  id: 'old-switchgear',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Old switches of the lathe',
  ask: 'What happens to the switches the lathe came with?',
  why: 'The old switch is often the only thing that keeps the lathe off after a power cut (no-volt release).',
  thumb: 'Whatever goes, its job has to be done by something new.',
  findOut:
    'With the chuck off and nothing near the spindle, run the lathe slowly, pull the plug and put it back without touching the switch. Write down whether it starts again.',
  assume: ['replace-switchgear', 'keep-no-volt-switch'],
  assumeWhy: 'Until you choose we plan with new switches that do the same jobs in the new circuit.',
  open: 'options',
  options: [
    {
      id: 'replace-switchgear',
      label: 'New switches take over every job',
      means: 'Main switch, latching contactor and guard switch of the new circuit replace the old panel.',
      gains: 'One drawing, no unknown wires.',
      wrong: 'An interlock that nobody noticed is gone: a belt cover that opens while running is the sign.',
      skill: 3,
    },
    {
      id: 'keep-no-volt-switch',
      label: 'Keep the old no-volt switch',
      means: 'The old switch stays in front of everything and drops out when power fails.',
      gains: 'A proven off switch, and cover switches that still work.',
      wrong:
        'Its rating was for one motor. A warm or buzzing switch is too small for motor, drives and supply.',
      skill: 3,
      needs: 'A rating plate at or above the current of the whole machine.',
    },
  ],
};

const homeLimits: Decision = {
  id: 'home-limits',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Home and limit switches',
  ask: 'How does each slide find its place at switch-on?',
  why: 'A slide that finds the same place again keeps all tool offsets. It also gives fast moves a fence.',
  thumb:
    'Cross slide: repeat within 0.01 mm, which is 0.02 mm on diameter. Carriage: 0.05 mm is enough, as lengths count from the faced end of the part.',
  findOut:
    'With an indicator on the slide, home ten times, warm and cold. Write down the largest difference in millimetres.',
  assume: ['home-switches', 'home-and-limit-switches', 'home-and-motor-mark', 'no-homing'],
  assumeWhy: 'Until you choose we plan with one home switch for each slide and limits in the control.',
  open: 'options',
  options: [
    {
      id: 'home-switches',
      label: 'A home switch on each slide',
      means: 'One switch for each slide; the control knows its limits from there.',
      gains: 'Offsets survive switch-off and limits cost nothing more.',
      wrong:
        'The inductive sensor on the carriage drifts 0.02 to 0.05 mm over a day: too much for the cross slide, which gets a precision switch. A chip on a sensor gives false limits.',
      skill: 2,
    },
    {
      id: 'home-and-limit-switches',
      label: 'Home switches and limits at both ends',
      means: 'Switches at both ends as well, closed while all is well.',
      gains: 'A last fence when homing went wrong.',
      wrong:
        'Noise from a spindle drive reads as a limit and stops the cut. Stops only with the spindle on are the sign.',
      skill: 2,
      needs: 'Normally closed contacts on 24 V and 5 to 10 ms of filtering.',
    },
    {
      id: 'home-and-motor-mark',
      label: 'Home switch plus motor mark',
      means: 'The switch finds the turn and a mark on the motor encoder finds the exact place.',
      gains: 'Repeats within 0.002 to 0.005 mm.',
      wrong:
        'Switch edge near the mark: now and then home is wrong by a whole turn. Set it half a turn away.',
      skill: 3,
      needs: 'Motors with an encoder mark and a control that reads it.',
    },
    {
      id: 'no-homing',
      label: 'No switches, touch off every time',
      means: 'You touch the tool on the work and set zero after each switch-on.',
      gains: 'Nothing to fit.',
      wrong: 'After each slip or stop every tool is touched again, and fast moves have no fence.',
      skill: 1,
    },
  ],
};

export const senseDecisions: readonly Decision[] = [watchdog, oldSwitchgear, homeLimits];
