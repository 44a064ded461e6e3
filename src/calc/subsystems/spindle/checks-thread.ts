import { atLeastLimit, atMost, type CheckRule } from '../../core/check.ts';
import { assumed } from '../../core/quantity.ts';
import { productOf } from '../../core/steps.ts';
import { cutsThreads, followsMark } from './design-thread.ts';

const allowed = assumed(0.03e-3, 'm', 'what a nut of ordinary length still forgives; common practice');

const feed: CheckRule = (look) => {
  if (!cutsThreads(look)) return undefined;
  return atMost({
    id: 'thread-feed-speed',
    label: 'Carriage speed in the coarsest thread',
    value: look.figure('thread-feed'),
    limit: productOf('m/s', {
      rapid: look.fact('carriage-rapid'),
      share: assumed(0.7, '1', 'a thread needs something in hand to catch up; common practice'),
    }),
    comfort: 1.2,
    remedy:
      'Turn the spindle more slowly for coarse threads, or let the carriage run faster: a lighter screw, a smaller ratio or a stronger motor.',
    decisions: ['carriage-coupling', 'motor-size', 'axis-motor'],
  });
};

const runOut: CheckRule = (look) => {
  if (!cutsThreads(look)) return undefined;
  return atLeastLimit({
    id: 'thread-run-out',
    label: 'Room behind the thread',
    value: look.fact('thread-relief'),
    limit: look.figure('thread-run-out'),
    comfort: 1.2,
    remedy:
      'A wider groove, a slower spindle, or let the tool pull out across while it still follows. The same way and one pitch more is needed in front of the thread.',
    decisions: ['thread-kinds', 'control'],
  });
};

const phase: CheckRule = (look) => {
  if (!cutsThreads(look) || !followsMark(look)) return undefined;
  return atMost({
    id: 'thread-phase-shift',
    label: 'Same start of the thread in every pass',
    value: look.figure('thread-phase-shift'),
    limit: allowed,
    remedy:
      'Cut every pass of a thread at the same spindle speed, and never change the belt or the knob in between. A control that follows the angle does not mind.',
    decisions: ['spindle-sensor', 'control', 'spindle-motor'],
  });
};

const lead: CheckRule = (look) => {
  if (!cutsThreads(look)) return undefined;
  const byMark = followsMark(look);
  return atMost({
    id: 'thread-lead-error',
    label: byMark ? 'Lead of a thread with one mark a turn' : 'Lead of a thread that follows the angle',
    value: look.figure(byMark ? 'thread-error-each-turn' : 'thread-error-tracked'),
    limit: allowed,
    comfort: 1.5,
    remedy:
      'A sensor with many lines and a control whose manual says that it follows the angle all through the thread, or a motor that does not sag and lighter passes. Whether your control puts the lead right in every turn is in its manual.',
    decisions: ['spindle-sensor', 'control', 'spindle-motor'],
    testWhen: 'Thread a test bar, measure over ten crests, then again at another spindle speed on a new bar.',
  });
};

export const threadChecks: readonly CheckRule[] = [feed, runOut, phase, lead];
