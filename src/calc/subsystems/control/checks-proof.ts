import { atMost, between, type CheckRule } from '../../core/check.ts';
import type { Look } from '../../core/figure.ts';
import { assumed } from '../../core/quantity.ts';
import { productOf } from '../../core/steps.ts';

const missing = (look: Look, ...facts: readonly string[]): string[] =>
  facts.filter((id) => look.measured(id) === undefined);

/** Voltages can be compared on paper; sinking or sourcing, and a broken wire, only on the bench. */
const levels: CheckRule = (look) => {
  const wanted = look.measured('drive-input-volts');
  const share = (value: number, why: string) => productOf('V', { wanted, share: assumed(value, '1', why) });
  return between({
    id: 'signal-levels',
    label: 'Signals of the control against the drives',
    value: look.measured('control-output-volts'),
    limitLow: share(0.8, 'less may not be seen as on; common practice'),
    limit: share(1.1, 'more may burn the input; common practice'),
    remedy:
      'Write beside every wire: 5 or 24 V, to plus or to minus (sourcing or sinking), single wire or signal pair. Choose alarm and limit contacts so that a broken wire stops the machine.',
    decisions: ['control', 'drives', 'spindle-sensor'],
    needs: missing(look, 'control-output-volts', 'drive-input-volts'),
    testWhen: 'On the bench: pull each alarm, limit and stop wire in turn; every one must stop the machine.',
  });
};

const clamp: CheckRule = (look) => {
  const byProgram = look.chosen('speed-command', 'speed-by-voltage', 'speed-by-serial');
  if (!byProgram || look.chosen('control', 'thread-synchroniser')) return undefined;
  return atMost({
    id: 'program-speed-clamp',
    harm: true,
    label: 'Speed limit in every program',
    value: look.measured('program-speed-clamp'),
    limit: look.figure('chuck-speed-limit'),
    remedy:
      'Constant surface speed asks for full speed as the tool comes to the centre: the first lines of every program limit it. The limit in the drive stays as the second fence.',
    decisions: ['speed-command', 'work-holding'],
    needs: missing(look, 'program-speed-clamp'),
    testWhen:
      'Before the first run of every program: find the line with the limit and read the figure aloud.',
  });
};

export const proofChecks: readonly CheckRule[] = [levels, clamp];
