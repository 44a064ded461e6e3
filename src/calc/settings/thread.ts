import type { Look } from '../core/figure.ts';
import { derive } from '../core/formula.ts';
import { assumed } from '../core/quantity.ts';
import { productOf } from '../core/steps.ts';
import { threadFeed } from '../formulas/thread.ts';
import { planned, type Setting, settled, worked } from './setting.ts';

const cuts = (look: Look): boolean =>
  !look.chosen('thread-kinds', 'no-threads') &&
  look.option('thread-kinds') !== undefined &&
  !look.chosen('driven-axes', 'cross-slide-only');

/** How the passes are shared out, where the design works it out. */
function passes(look: Look): Setting[] {
  const lines = [
    ['thread-passes', 'Passes for the coarsest thread'],
    ['thread-first-infeed', 'Depth of the first thread pass'],
    ['thread-last-infeed', 'Depth of the last thread pass'],
  ] as const;
  return lines.flatMap(([id, label]) => {
    const value = look.figure(id);
    const how = 'Try it in scrap first; a torn flank asks for more passes.';
    const depth = id === 'thread-passes' ? {} : ({ diameterOrRadius: 'radius' } as const);
    return value ? [worked('cross', id, label, value, { how, ...depth })] : [];
  });
}

/** Feed that follows the spindle, and threads. */
export function threadSettings(look: Look): Setting[] {
  if (!cuts(look)) return [];
  const pitch = look.fact('coarsest-thread');
  const speed = look.fact('thread-spindle-speed');
  return [
    worked('carriage', 'thread-run-up', 'Run-up before the first thread', look.figure('thread-run-up'), {
      how: 'For the coarsest thread of your list at the speed you cut it. Start the tool at least this far off the end of the work.',
    }),
    worked(
      'carriage',
      'thread-feed-most',
      'Fastest feed while threading',
      productOf('m/s', {
        rapid: look.fact('carriage-rapid'),
        share: assumed(0.7, '1', 'seven tenths, so that the slide can still catch up; common practice'),
      }),
      {
        how: 'Pitch × spindle speed stays below it. Lower the spindle speed for coarse threads.',
      },
    ),
    worked(
      'carriage',
      'thread-feed-coarsest',
      'Feed of your coarsest thread',
      derive(threadFeed, { pitch, speed }),
      {
        how: 'Must be below the fastest feed while threading.',
      },
    ),
    settled(
      'cross',
      'thread-depth-figure',
      'Depth of a thread pass',
      'each pass counts from the surface, on the radius',
      'In diameter mode the tool goes twice that on the display. First pass light, later ones lighter still, then two passes at no depth.',
      'radius',
    ),
    ...passes(look),
    planned('spindle', 'feed-by-turn', 'Feed for each spindle turn: switched on', look.fact('cut-feed'), {
      how: 'Scrap bar: command an ordinary feed, measure the travel over ten turns.',
    }),
  ];
}
