import { atMost, type CheckRule } from '../../core/check.ts';
import { isDriven, usual } from '../motors/axis.ts';

const tolerance = 'tolerance-on-diameter';

/** Good at half of the tolerance. Shows only where the slide turns back in the cut: curves, balls, tapers both ways. */
const play: CheckRule = (look) => {
  if (!isDriven(look, 'cross')) return undefined;
  const value = look.figure('cross-play-on-diameter');
  return atMost({
    id: 'cross-play',
    label: 'Play of the cross slide, seen on the diameter',
    value,
    limit: look.fact(tolerance),
    comfort: 2,
    remedy: value
      ? 'A nut without play and angular-contact bearings. Diameters cut from one side hardly see it; curves that turn back show it twice.'
      : 'Needs the play of the cross slide, measured with an indicator.',
    ...(!value && { needs: ['cross-play'] }),
    testWhen: 'once the slide is together: indicator, wind in 1 mm, wind back until it moves',
    decisions: ['cross-nut', 'cross-screw-hold', 'cross-screw'],
  });
};

const lag: CheckRule = (look) => {
  const value = look.figure('cross-lag-on-diameter');
  if (!value) return undefined;
  return atMost({
    id: 'cross-lag',
    label: 'Lag of the cross motor under its largest push, on the diameter',
    value,
    limit: usual(10e-6, 'm', 'a hundredth of a millimetre; common practice'),
    comfort: 1.25,
    remedy:
      'A stronger motor, a finer lead or a reduction. More microsteps change nothing: the motor lags by its load.',
    decisions: ['motor-size', 'cross-screw', 'axis-motor'],
  });
};

const growth: CheckRule = (look) => {
  const value = look.figure('cross-growth-on-diameter');
  if (!value) return undefined;
  return atMost({
    id: 'cross-growth',
    label: 'Growth of the cross screw as it warms, on the diameter',
    value,
    limit: look.fact(tolerance),
    comfort: 2,
    remedy:
      'Let it run for half an hour before the first good part, and measure a part again after an hour. Keep the motor off the block, so that its heat does not pass into the screw.',
    testWhen: 'in the first long run: home again after an hour and see how far it moved',
    decisions: ['cross-motor-place', 'cross-screw-hold'],
  });
};

/** What errors of the cross slide do on the diameter. */
export const diameterChecks: readonly CheckRule[] = [play, lag, growth];
