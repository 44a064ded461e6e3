import {
  CENTRE_LINES,
  type Edge,
  REGIONS,
  type RoomId,
  WORK,
  WORK_OVER,
} from '../components/lathe-shapes.ts';
import type { Look } from './look.ts';

const WEIGHT: Readonly<Record<Edge['kind'], number>> = {
  part: 1.5,
  loose: 1.5,
  fine: 0.8,
  'fine d2': 0.8,
  'hidden-edge': 0.8,
  wire: 1.2,
};

function drawn({ d, kind }: Edge, named: boolean, wash: string, look: Look): string {
  const solid = kind === 'part' || kind === 'loose';
  const fill = solid ? (named && kind === 'part' ? wash : look.paper) : 'none';
  const dash = kind === 'hidden-edge' ? ' stroke-dasharray="6 3"' : '';
  return `<path d="${d}" fill="${fill}" stroke="${named ? look.blue : look.quiet}" stroke-width="${WEIGHT[kind]}" stroke-linejoin="round"${dash}/>`;
}

/** The lathe seen from above in a box of 660 by 306 units, with one of its rooms picked out, or all of them. */
export function latheDrawing(look: Look, room: RoomId | 'all'): string {
  const regions = REGIONS.map((region) => {
    const named = room === 'all' || region.room === room;
    const work = `<path d="${WORK}" fill="${look.paper}" stroke="${look.ink}" stroke-width="1.5"/>`;
    const wash = region.room === 'purpose' ? look.wash : look.wash2;
    const edges = region.edges.map((edge) => drawn(edge, named, wash, look)).join('');
    return edges + (region.room === WORK_OVER ? work : '');
  });
  const centres = `<path d="${CENTRE_LINES.join('')}" fill="none" stroke="${look.blue}" stroke-width="0.8" stroke-dasharray="22 4 4 4"/>`;
  return regions.join('') + centres;
}
