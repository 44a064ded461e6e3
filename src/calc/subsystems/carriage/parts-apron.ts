import { all, is } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { ballOnCross } from '../cross-slide/screw.ts';
import { ballOnCarriage, noKit } from './screw.ts';

/** What the nut bolts to, and what holds a slide without power. */
export const apronParts: readonly Part[] = [
  {
    id: 'apron-plate',
    subsystem: 'carriage',
    name: 'Plate to replace the apron',
    note: 'Aluminium or steel, thick enough for dowels, with the nut bracket from the same piece.',
    unit: 'lot',
    combine: 'most',
    scaled: true,
    needs: [
      { when: all(is('apron', 'replace-apron'), noKit), qty: 1, why: 'it takes the place of the apron' },
    ],
  },
  {
    id: 'nut-bracket-stock-carriage',
    subsystem: 'carriage',
    name: 'Metal for the nut bracket of the carriage',
    note: 'Plate and shims to carry the nut on the emptied apron, or on a tongue behind the saddle.',
    unit: 'lot',
    combine: 'most',
    scaled: true,
    needs: [
      {
        when: all(
          is('apron', 'strip-apron'),
          is('carriage-drive', 'ball-screw-front', 'sliding-screw'),
          noKit,
        ),
        qty: 1,
        why: 'the nut is carried by the emptied apron',
      },
      {
        when: all(is('carriage-drive', 'ball-screw-back'), noKit),
        qty: 1,
        why: 'a tongue behind the saddle carries the nut',
      },
    ],
  },
  {
    id: 'axis-brake',
    subsystem: 'carriage',
    name: 'Brake that closes without power',
    note: 'Held open by 24 V, closed by a spring; fits the rear shaft of the motor or the end of the screw. Price from little experience.',
    unit: 'each',
    combine: 'sum',
    inspect: 'It lets go at 24 V with a click and holds the shaft by hand when unplugged.',
    needs: [
      {
        when: all(is('power-off-hold', 'holding-brake'), ballOnCarriage),
        qty: 1,
        why: 'one for the carriage screw',
      },
      {
        when: all(is('power-off-hold', 'holding-brake'), ballOnCross),
        qty: 1,
        why: 'one for the cross screw',
      },
    ],
  },
];
