import type { Word } from './word.ts';

export const electrics: readonly Word[] = [
  {
    word: 'alarm',
    linked: ['alarm', 'alarms', 'alarm input'],
    means:
      'A wire on which a drive says that something is wrong. It does nothing until you join it to the stop circuit or the control.',
  },
  {
    word: 'back-current',
    kept: 'What makers of supplies and drives write.',
    means: 'What a braking motor sends back to its supply. It pushes the voltage up.',
  },
  {
    word: 'bleed resistor',
    means: 'Empties the capacitors of a supply after it is switched off. Until then they hold a charge.',
  },
  {
    word: 'brake resistor',
    kept: 'Said by the check of the spindle’s stop.',
    means: 'Turns the energy of a braking motor into heat.',
  },
  {
    word: 'breaker',
    also: ['circuit breaker'],
    linked: ['breaker', 'breakers', 'circuit breaker'],
    means: 'Switches a circuit off when too much current flows. It protects the cable, not you.',
  },
  {
    word: 'contactor',
    means: 'A strong switch worked by a small current. In a stop circuit it takes the power away.',
  },
  {
    word: 'direct-current bus',
    means:
      'The conductors inside a drive that hold its direct voltage. They stay charged for minutes after the plug is out.',
  },
  {
    word: 'drive',
    also: ['driver', 'amplifier'],
    linked: [
      'the (drives)',
      'stepper drive',
      'stepper drives',
      'each (drive)',
      'a (drive)',
      'axis drive',
      'axis drives',
      'servo drive',
      'spindle drive',
      'amplifier',
    ],
    means: 'The box between the control and a motor.',
  },
  {
    word: 'earth',
    also: ['ground'],
    linked: ['earth', 'earths', 'earthed', 'earth bar'],
    means: 'The conductor that carries a fault safely away. British: earth. American: ground.',
  },
  {
    word: 'ferrule',
    means: 'A thin sleeve pressed on the end of a stranded wire, so that no strand stands out.',
  },
  { word: 'gland', means: 'Holds a cable where it enters a box, and keeps chips and oil out.' },
  {
    word: 'heartbeat',
    means:
      'Pulses that a control sends all the time. When they end, something outside it knows that it hangs.',
  },
  {
    word: 'leakage',
    also: ['leakage current'],
    linked: ['leakage', 'leakage current'],
    means: 'A small current that drives and filters let go to earth. A residual-current device feels it.',
  },
  {
    word: 'line driver',
    means:
      'An output that sends each signal on two wires, one the opposite of the other. It keeps noise out.',
  },
  {
    word: 'mains',
    also: ['line', 'utility supply'],
    linked: ['mains'],
    means: 'The supply from the wall, 120 V or 230 V. British: mains. American: line.',
  },
  {
    word: 'no-volt release',
    also: ['no-voltage switch', 'magnetic switch'],
    means: 'Drops out when the power fails, so that the machine does not start by itself when it returns.',
  },
  {
    word: 'normally closed',
    means: 'A switch that lets current pass until something happens. A broken wire then reads as a stop.',
  },
  {
    word: 'off-delay timer',
    linked: ['off-delay timer', 'off-delay timers', 'off-delay'],
    means: 'Keeps power on for a set time after the button is hit, so that the spindle can be braked first.',
  },
  {
    word: 'power supply',
    also: ['switch-mode supply'],
    linked: ['power supply', 'power supplies', 'switch-mode supply', 'switch-mode supplies', 'switch-mode'],
    means:
      'Makes low direct voltage from the mains. Those from a shop are mostly switch-mode: light, and steady.',
  },
  {
    word: 'ramp',
    means: 'Slowing down or speeding up evenly over a set time instead of all at once.',
  },
  { word: 'relay', means: 'A switch worked by a current in a coil.' },
  {
    word: 'residual-current device',
    also: ['ground-fault device', 'RCD', 'GFCI'],
    linked: ['residual-current device', 'ground-fault device', 'earth-leakage device', 'RCD', 'GFCI'],
    means: 'Switches off when current leaks to earth. British: residual-current. American: ground-fault.',
  },
  {
    word: 'safe-off input',
    also: ['safe torque off', 'STO'],
    kept: 'An answer of the question about the stop circuit.',
    means:
      'A wired input of some drives that takes the force from the motor without a computer. It does not brake, and parts inside stay live.',
  },
  {
    word: 'safety relay',
    means: 'Watches a stop circuit with two channels and refuses to reset when one of them sticks.',
  },
  {
    word: 'screened cable',
    also: ['shielded cable'],
    linked: ['screened cable', 'screened cables', 'shielded cable', 'screened motor cable'],
    means:
      'Cable wrapped in braid or foil that keeps electrical noise in or out. British: screened. American: shielded.',
  },
  {
    word: 'sinking and sourcing',
    also: ['NPN and PNP'],
    linked: ['sinking', 'sourcing', 'NPN', 'PNP'],
    means:
      'Whether a sensor switches the return side or the supply side. The input must suit the sensor, or it never reacts.',
  },
  {
    word: 'stop by coasting',
    also: ['stop category 0'],
    linked: ['coasts', 'coast'],
    kept: 'Said by the standard on stops.',
    means: 'Power is taken away at once and the machine runs down by itself.',
  },
  {
    word: 'stop by ramp, then power off',
    also: ['stop category 1'],
    kept: 'Said by the standard on stops.',
    means: 'The drive brakes first, then a timer takes the power away.',
  },
  {
    word: 'stop circuit',
    also: ['stop chain', 'emergency stop'],
    means: 'Everything that must lose power when the red button is hit.',
  },
  { word: 'terminal', means: 'A clamp with a screw or a spring, in which a wire ends.' },
  {
    word: 'three-phase drive',
    also: ['inverter', 'variable-frequency drive', 'VFD'],
    linked: [
      'three-phase drive',
      'three-phase drives',
      'speed drive',
      'speed drives',
      'inverter',
      'variable-frequency drive',
      'VFD',
    ],
    means: 'A box that lets a three-phase motor run at any speed from a household supply.',
  },
  { word: 'watchdog', means: 'Removes power when the computer stops sending its heartbeat.' },
];
