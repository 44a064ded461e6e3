// Worked by hand, no published source: what the cross slide does to a diameter, and whether its nut goes in.
import { expect, test } from 'vitest';
import { checks } from '../../../../src/calc/subsystems/cross-slide/checks.ts';
import { type Bench, finder, judges, over, type Row, without } from './bench.ts';

const find = finder(checks);
const fine: Bench = { facts: { 'tolerance-on-diameter': 20e-6 } };

const tunnel = (id: string, fact: string, screw: string, need: number): Row => {
  const at = (margin: number) => ({
    answers: { 'cross-screw': screw },
    measured: { [fact]: need * margin },
  });
  return { id, when: screw, sense: 'at-least', comfort: 1, at, absent: [{ ...at(2), answers: {} }] };
};

const play = (margin: number): Bench => over(fine, { figures: { 'cross-play-on-diameter': 20e-6 / margin } });
const growth = (margin: number): Bench =>
  over(fine, { figures: { 'cross-growth-on-diameter': 20e-6 / margin } });

judges(checks, [
  tunnel('cross-tunnel', 'tunnel-height', 'ball-screw-8', 0.024),
  tunnel('cross-tunnel', 'tunnel-height', 'ball-screw-12', 0.032),
  tunnel('cross-tunnel', 'tunnel-height', 'ball-screw-16', 0.042),
  tunnel('cross-tunnel', 'tunnel-height', 'sliding-cross-screw', 0.024),
  tunnel('cross-tunnel-width', 'tunnel-width', 'ball-screw-8', 0.031),
  tunnel('cross-tunnel-width', 'tunnel-width', 'ball-screw-12', 0.042),
  tunnel('cross-tunnel-width', 'tunnel-width', 'ball-screw-16', 0.05),
  tunnel('cross-tunnel-width', 'tunnel-width', 'sliding-cross-screw', 0.03),
  {
    id: 'cross-play',
    sense: 'at-most',
    comfort: 2,
    at: play,
    absent: [over(play(2), { answers: { 'driven-axes': 'carriage-only' } })],
  },
  {
    id: 'cross-lag',
    sense: 'at-most',
    comfort: 1.25,
    at: (margin) => ({ figures: { 'cross-lag-on-diameter': 10e-6 / margin } }),
    absent: [{}],
  },
  { id: 'cross-growth', sense: 'at-most', comfort: 2, at: growth, absent: [fine] },
]);

test('the room under the slide is asked for until it was measured, with a screw whose nut has to go in', () => {
  const screw = { answers: { 'cross-screw': 'ball-screw-12' } };
  expect(find('cross-tunnel', screw)).toMatchObject({ result: 'not-yet', needs: ['tunnel-height'] });
  expect(find('cross-tunnel-width', screw)).toMatchObject({ needs: ['tunnel-width'] });
  const known = over(screw, { measured: { 'tunnel-height': 0.05, 'tunnel-width': 0.05 } });
  expect(find('cross-tunnel', known)).not.toHaveProperty('needs');
  expect(find('cross-tunnel', { answers: { 'cross-screw': 'original-cross-screw' } })).toBeUndefined();
});

test('the play is asked for until it was measured', () => {
  const open = find('cross-play', without(play(2), 'cross-play-on-diameter'))!;
  expect(open).toMatchObject({ result: 'not-yet', needs: ['cross-play'] });
  expect(open.remedy).toMatch(/^Needs /);
  expect(find('cross-play', play(0.5))).not.toHaveProperty('needs');
  expect(find('cross-play', play(0.5))?.remedy).not.toMatch(/^Needs /);
});
