import type { Decision, Option } from '../../core/decision.ts';

const fact = (id: string, label: string, means: string): Option => ({
  id,
  label,
  means,
  gains: '',
  wrong: '',
  skill: 1,
});

const mainsSupply: Decision = {
  id: 'mains-supply',
  subsystem: 'purpose',
  place: 'lathe',
  name: 'Mains voltage',
  ask: 'Which mains voltage is there where the lathe stands?',
  why: 'It decides which spindle drives can run at all. At 120 V the same machine draws twice the current.',
  thumb: 'A 0.75 kW spindle drive with the rest of the machine draws about 18 A at 120 V and 9 A at 230 V.',
  findOut:
    'Read the plate of the lathe or of another fixed tool on that outlet, and the figure on its breaker. Write down volts and amps. Do not measure inside an outlet.',
  assume: ['volts-230', 'both-voltages', 'volts-120'],
  assumeWhy:
    'Most of the world has about 230 V; say so if yours is 120 V, because it changes the spindle drive.',
  open: 'assumed',
  options: [
    fact('volts-120', 'About 120 V', 'Ordinary outlets in North America and a few other places.'),
    fact('volts-230', 'About 230 V', 'Ordinary outlets in most of the world.'),
    fact(
      'both-voltages',
      'Both: 120 V and a 240 V outlet',
      'A workshop with ordinary 120 V outlets and one large outlet, as for a dryer or a welder.',
    ),
  ],
};

const groundFaultDevice: Decision = {
  id: 'ground-fault-device',
  subsystem: 'purpose',
  place: 'lathe',
  name: 'Earth-leakage device',
  ask: 'Does an earth-leakage (ground-fault) device guard that outlet?',
  why: 'Drives with filters leak a little current to earth by design. A sensitive device can trip on that alone.',
  thumb:
    'A filtered drive with a computer leaks about 5 mA: a fifth of what a 30 mA device stands, all of what a 5 mA device stands.',
  findOut:
    'Look for a test button on the outlet or on the breaker and read the figure beside it: 30 mA, or 5 mA ("Class A" in North America). Write it down. If you cannot find one, ask an electrician.',
  assume: ['device-not-known', 'trips-at-30-ma', 'trips-at-5-ma', 'no-device'],
  assumeWhy: 'Until you have looked we neither count on a device nor rule one out.',
  open: 'assumed',
  options: [
    fact('no-device', 'No device', 'Neither the outlet nor the breaker has a test button.'),
    fact(
      'trips-at-5-ma',
      'Yes, trips at about 5 mA',
      'Usual in North American garages and basements: a test button on the outlet or breaker.',
    ),
    fact(
      'trips-at-30-ma',
      'Yes, trips at 30 mA',
      'Usual in Europe and elsewhere: a wide breaker with a test button, marked 30 mA or 0.03 A.',
    ),
    fact(
      'device-not-known',
      'Looked, and cannot tell',
      'There is a device, or there may be one, and no figure on it.',
    ),
  ],
};

const whoWires: Decision = {
  id: 'who-wires',
  subsystem: 'purpose',
  place: 'lathe',
  name: 'Who wires the mains',
  ask: 'Who will do the mains wiring of the cabinet?',
  why: 'Half of this job is electrical, and part of it is at mains voltage. In many places the law says who may do it.',
  thumb: 'If you cannot explain what the earth wire does and prove that it works, ask somebody who can.',
  findOut:
    'Look up what your local rules let an owner do, and write down the name of the person who will check the work before the first switch-on.',
  assume: ['i-can-wire', 'electrician-wires', 'nobody-wires'],
  assumeWhy: 'The hours in the plan are those of an owner who may wire and knows how.',
  open: 'assumed',
  options: [
    fact(
      'i-can-wire',
      'I can, and I may',
      'You have wired mains equipment before and your local rules allow it.',
    ),
    fact(
      'electrician-wires',
      'An electrician does it',
      'A licensed person wires or checks everything at mains voltage; you do the low-voltage side.',
    ),
    fact('nobody-wires', 'Nobody yet', 'Neither you nor anyone you know is able or allowed to.'),
  ],
};

const country: Decision = {
  id: 'country',
  subsystem: 'purpose',
  place: 'lathe',
  name: 'Where parts arrive',
  ask: 'To which part of the world will the parts be sent?',
  why: 'Freight, sales tax and import duty come on top of every shop price. They are among the largest lines of the job.',
  thumb:
    'Add a quarter to shop prices for freight, tax and duty; for imported goods alone it can be a third or more.',
  findOut:
    'Take two recent orders from abroad: what you paid to your door, divided by the price of the goods. Type your own figure if you have one.',
  assume: ['united-states', 'vat-country', 'elsewhere'],
  assumeWhy: 'Our prices are in US dollars, so we begin with what comes on top of them in the United States.',
  open: 'assumed',
  options: [
    fact(
      'united-states',
      'United States',
      'Sales tax and freight; duty on imports, which changes from month to month.',
    ),
    fact(
      'vat-country',
      'A country with VAT',
      'Europe, the United Kingdom and others where VAT comes on top of goods, freight and duty.',
    ),
    fact('elsewhere', 'Somewhere else', 'Anywhere else; type your own rate if you know it.'),
  ],
};

export const mainsDecisions: readonly Decision[] = [mainsSupply, groundFaultDevice, whoWires, country];
