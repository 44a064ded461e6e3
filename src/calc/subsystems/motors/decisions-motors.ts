import { is, not } from '../../core/condition.ts';
import type { Decision } from '../../core/decision.ts';

const axisMotor: Decision = {
  id: 'axis-motor',
  subsystem: 'motors',
  place: 'guide',
  name: 'Axis motors',
  ask: 'What kind of motor moves the slides?',
  why: 'The motors differ most in what happens when the push runs short. One kind slips without a word, one stops and tells, one bends the machine.',
  thumb:
    'A plain stepper: plan for half of what it can pull at the speed you need. One that notices a slip helps only if its alarm is wired to stop the program.',
  assume: ['closed-loop-stepper', 'open-loop-stepper', 'mains-servo', 'used-dc-servo'],
  assumeWhy:
    'Until you choose we plan with steppers that notice a slip: the alarm costs little beside one spoilt part.',
  open: 'options',
  options: [
    {
      id: 'open-loop-stepper',
      label: 'Plain stepper (open loop)',
      means: 'Moves a small angle for each pulse it is sent, and nobody checks that it did.',
      gains: 'The cheapest and simplest; nothing to tune and no alarm to wire.',
      wrong:
        'When it slips it loses its place without telling. The next pass or the next part is cut in the wrong place; lengths that creep and a growl are the signs.',
      skill: 2,
      needs: 'Twice the push you need, and homing again for every part.',
    },
    {
      id: 'closed-loop-stepper',
      label: 'Stepper that notices a slip (closed loop)',
      means:
        'A stepper with an encoder on its tail; its drive corrects small errors and raises an alarm at large ones.',
      gains: 'Lost motion stops the program instead of spoiling the part, and it runs cooler.',
      wrong:
        'With the alarm left unwired it is a plain stepper with a light on it. It is still weak at speed, and a lag it is correcting shows as poor finish.',
      skill: 2,
      needs: 'One input at the control for all alarms in a row, closed while all is well.',
    },
    {
      id: 'mains-servo',
      label: 'Mains servo (AC servo)',
      means: 'A brushless motor whose drive takes mains and holds the position by an encoder.',
      gains: 'The same push up to about 3,000 turns a minute, and three times that for a moment.',
      wrong:
        'A 400 W motor with 2:1 can push 8 kN: enough to bend a screw or pull a bracket out. Wired the wrong way round, it runs away at the first enable.',
      skill: 3,
      needs: 'A torque limit set in the drive, screened cable, a stop that cuts power, patience for tuning.',
    },
    {
      id: 'used-dc-servo',
      label: 'Used servo with brushes (DC)',
      means: 'A motor and drive taken out of older machinery.',
      gains: 'A lot of motor for the money, if motor, drive and encoder belong together.',
      wrong:
        'No spares, worn brushes, encoders that nobody documents. It shows as a week of finding out which wire is which.',
      skill: 4,
      needs: 'Bench skills, a drive that takes step pulses, and a matching spare.',
    },
  ],
};

const motorSize: Decision = {
  id: 'motor-size',
  subsystem: 'motors',
  place: 'guide',
  name: 'Motor size',
  ask: 'How large are the motors across their face?',
  why: 'The size of the square front face sets bolt pattern, shaft, pulley bore and the voltage of the drive. Larger steppers are slower, not better.',
  thumb:
    'Small lathe: 57 mm, 1.5 to 2.5 N·m across, 2 to 3 along. Medium: 57 mm, 2 to 3 across and 3 with a 2:1 belt along. Large: 86 mm, 4.5 to 8 along.',
  findOut:
    'Hook a spring scale to the carriage, half-nut open, and pull until it creeps, both ways. Do the same on the cross slide. Write down the highest reading in newtons (kilograms times 10).',
  askWhen: not(is('axis-motor', 'used-dc-servo')),
  assume: ['face-57-both', 'face-57-and-86', 'face-86-both'],
  assumeWhy: 'Until you choose we plan with 57 mm motors, which move small and medium slides.',
  open: 'options',
  options: [
    {
      id: 'face-57-both',
      label: '57 mm face on every slide',
      means:
        'Motors with a square face of 57 or 60 mm, about a kilogram each; a servo of this size gives 400 W.',
      gains: 'Light on the cross slide, quick enough, one voltage for all.',
      wrong: 'On a large lathe the carriage has little to spare: 10 mm drills stall it.',
      skill: 2,
    },
    {
      id: 'face-57-and-86',
      label: '57 mm across, 86 mm along',
      means: 'The small motor on the cross slide and a large one, 86 mm or a 750 W servo, on the carriage.',
      gains: 'Push for drilling and heavy carriages, where it is wanted.',
      wrong:
        'Two voltages, so two supplies, and a heavier plate on the bed. Mixed up, the higher voltage kills the small drive.',
      skill: 2,
      needs: 'Two supplies and a stiffer carriage mount.',
    },
    {
      id: 'face-86-both',
      label: '86 mm face on every slide',
      means: 'The large motor on each slide that is driven, 2.5 to 4 kg each.',
      gains: 'Force to spare at low speed.',
      wrong:
        'Kilograms hang on the saddle, and the windings are slow: they stall in fast moves that the small ones would make.',
      skill: 3,
      needs: 'A strong cross-slide bracket and a supply of 60 to 70 V for 80 V drives.',
    },
  ],
};

export const motorDecisions: readonly Decision[] = [axisMotor, motorSize];
