import type { Decision } from '../../core/decision.ts';
import { programStarts } from './wired.ts';

const stopCircuit: Decision = {
  id: 'stop-circuit',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Stop circuit',
  ask: 'What does the red button cut?',
  why: 'A computer that hangs cannot stop anything. The button has to work without it.',
  thumb:
    'One red button takes power from the axis motors and stops the spindle even when the control has crashed.',
  findOut:
    'Stand at the chuck and at the tailstock end. Write down whether a button at the headstock is within reach from both.',
  assume: ['cuts-power', 'cuts-power-watched', 'tells-computer-only'],
  assumeWhy: 'Until you choose we plan with a button that cuts power through contactors.',
  open: 'options',
  options: [
    {
      id: 'cuts-power',
      label: 'Cuts power',
      means:
        'The button drops heavy-duty relays (contactors) that feed the drives and let the spindle run, and tells the control. Neither releasing it nor the return of power starts anything.',
      gains: 'Works with the computer dead, and is simple enough to check with a meter.',
      wrong:
        'A single welded contact goes unseen until the monthly test. The spindle coasts unless it is slowed down first.',
      skill: 3,
      needs: 'Control wiring, a drawn circuit and a table of what must stop.',
    },
    {
      id: 'cuts-power-watched',
      label: 'Cuts power, watched',
      means:
        'Two channels and a safety relay that refuses to start again when one channel or contactor sticks; the guard is in the same chain.',
      gains: 'A stuck contact shows at the next start. Fits servos and a chuck that closes by itself.',
      wrong:
        'Dearer, and 5 to 18 hours more. A feedback wire in the wrong place shows as a relay that never resets.',
      skill: 4,
      needs: 'Control wiring, contactors with linked contacts, the manual of the relay.',
    },
    {
      id: 'tells-computer-only',
      label: 'Tells the computer only (not accepted)',
      means: 'The button is one input of the control and cuts nothing by itself.',
      gains: 'Nothing but a pause key.',
      wrong: 'When the program hangs, the button does nothing. It shows on the day it is needed.',
      skill: 1,
      incomplete: 'A stop that depends on software is not a stop circuit.',
    },
  ],
};

const spindleStop: Decision = {
  id: 'spindle-stop',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Spindle at the red button',
  ask: 'How does the spindle come to rest at the red button?',
  why: 'A drive whose supply is cut cannot brake, so a heavy chuck goes on turning. A very hard stop can loosen a screwed chuck.',
  thumb:
    'Slow down first, cut second. With a screwed nose and nothing holding the chuck, take 5 seconds or more.',
  findOut:
    'Run the bare spindle at its usual speed with the guard shut, switch off and time it with a watch. Write down seconds until it stands.',
  assume: ['ramp-then-cut', 'drive-safe-off', 'coast-to-stop', 'mechanical-brake'],
  assumeWhy:
    'Until you choose we plan with a slow-down and a timer; where the motor cannot slow down by command, it coasts.',
  open: 'options',
  options: [
    {
      id: 'ramp-then-cut',
      label: 'Slows down, then power is cut',
      means:
        'The button orders a ramp; a timer that needs no computer opens the contactor when the time is over.',
      gains: 'The chuck stands in seconds and power is gone after that, whatever the drive does.',
      wrong: 'A timer set shorter than the ramp lets the chuck coast. Time it with the largest chuck.',
      skill: 3,
      needs: 'An off-delay timer and a drive with a stop input.',
    },
    {
      id: 'drive-safe-off',
      label: 'Drive’s own safe-off input',
      means:
        'Some drives have a hard-wired input (safe torque off) that takes the push from the motor at once.',
      gains: 'No contactor has to break the drive supply.',
      wrong:
        'The chuck coasts unless a ramp comes first, and parts inside stay live. An ordinary enable input is not the same thing.',
      skill: 4,
      needs: 'A drive whose manual names this input and shows how to wire it.',
    },
    {
      id: 'coast-to-stop',
      label: 'Power off, it coasts',
      means: 'The contactor opens and the spindle runs out by itself.',
      gains: 'Nothing to set; kind to a screwed chuck.',
      wrong: 'Ten to forty seconds of turning chuck with no motor noise: hands go in too early.',
      skill: 2,
    },
    {
      id: 'mechanical-brake',
      label: 'A brake on the spindle',
      means: 'A band or disc that springs or solenoid close when power goes.',
      gains: 'Stops without any electronics.',
      wrong:
        'Wear, heat and a chuck that unscrews when the brake grabs. A chuck that moves on its register is the sign.',
      skill: 4,
      needs: 'Room on the pulley, and a chuck that cannot unscrew.',
    },
  ],
};

const chuckGuard: Decision = {
  id: 'chuck-guard',
  subsystem: 'wiring',
  place: 'guide',
  name: 'Chuck guard',
  ask: 'What stands between you and the chuck?',
  why: 'A program can start the spindle while a hand or a key is still there. A switch on the guard is what prevents it.',
  thumb: 'A lathe that starts by program gets a guard with a switch in the spindle circuit.',
  findOut:
    'Measure the largest chuck with its jaws open and the height above it. Write down both in millimetres.',
  askWhen: programStarts,
  assume: ['shield-with-switch', 'hinged-shield', 'no-guard'],
  assumeWhy: 'Until you choose we plan with a guard that keeps the spindle off while it is open.',
  open: 'options',
  options: [
    {
      id: 'shield-with-switch',
      label: 'Hinged shield with a switch',
      means: 'A clear shield over the chuck; while it is up the spindle cannot be started.',
      gains: 'A key left in the chuck meets the shield before the spindle turns.',
      wrong:
        'A switch that is tied down is no switch. Chips in the hinge show as a spindle that will not start.',
      skill: 3,
      needs: 'A switch made for guards, wired in the run circuit and not to an input alone.',
    },
    {
      id: 'hinged-shield',
      label: 'Hinged shield, no switch',
      means: 'The same shield without any contact.',
      gains: 'Keeps chips and oil away.',
      wrong: 'The spindle starts with it open. Only your habit stands in between.',
      skill: 2,
    },
    {
      id: 'no-guard',
      label: 'No guard',
      means: 'Chip shields only, nothing over the chuck.',
      gains: 'Free sight and reach.',
      wrong: 'A thrown key or a caught sleeve at program start: the worst injury of these machines.',
      skill: 1,
    },
  ],
};

export const stopDecisions: readonly Decision[] = [stopCircuit, spindleStop, chuckGuard];
