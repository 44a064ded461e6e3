import type { Decision } from '../../core/decision.ts';

export const sharingDecision: Decision = {
  id: 'machines-served',
  subsystem: 'control',
  place: 'guide',
  name: 'Machines served',
  ask: 'Will one cabinet and control serve two machines in turn?',
  why: 'Sharing saves a second control, drives and cabinet. It adds plugs, an interlock and a set of settings that can be mixed up.',
  thumb: 'It pays where both machines use motors of one kind and size and you never want both at once.',
  findOut:
    'Write down motor kind, size and voltage of both machines side by side. Rows that differ cannot share a drive.',
  assume: ['one-machine', 'two-machines-in-turn'],
  assumeWhy: 'Until you choose we plan for this lathe alone.',
  open: 'options',
  options: [
    {
      id: 'one-machine',
      label: 'This lathe only',
      means: 'Cabinet and control belong to this lathe and stay wired to it.',
      gains: 'Nothing to change over, and nothing to mix up.',
      wrong: 'A second machine later needs a second set, or this one wired again.',
      skill: 1,
    },
    {
      id: 'two-machines-in-turn',
      label: 'Two machines, one at a time',
      means:
        'Locking plugs for each motor lead the same drives to either machine, and a key lets only one be live. The second machine’s own motors and screws are another plan.',
      gains: 'One control to learn, and one cabinet for two machines.',
      wrong:
        'Settings of one machine on the other drive a slide twice as far as told. A plug pulled while the drive is on kills the drive, and the stop button in reach must be the one that counts.',
      skill: 4,
      needs:
        'Motors of one kind and voltage, an interlock that works by wire, and a settings set for each machine.',
    },
  ],
};
