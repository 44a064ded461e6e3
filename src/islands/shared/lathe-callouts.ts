import type { RoomId } from '../../components/lathe-shapes.ts';

/** A leader: a dot on the part, an optional knee, a numbered balloon. Units of the large drawing. */
export interface Callout {
  room: RoomId;
  dot: [number, number];
  knee?: [number, number];
  balloon: [number, number];
}

/** Leaders never cross: the upper row leaves upward and the lower row downward, both in order from the left. */
export const CALLOUTS: Callout[] = [
  { room: 'spindle', dot: [31, 108], knee: [-22, 44], balloon: [-22, -28] },
  { room: 'cross-slide', dot: [298, 84], knee: [160, 24], balloon: [160, -28] },
  { room: 'motors', dot: [312, 28], balloon: [312, -28] },
  { room: 'tooling', dot: [468, 136], knee: [430, 20], balloon: [430, -28] },
  { room: 'wiring', dot: [606, 54], balloon: [606, -28] },
  { room: 'approach', dot: [18, 293], knee: [-4, 320], balloon: [-4, 344] },
  { room: 'purpose', dot: [214, 222], knee: [214, 300], balloon: [214, 344] },
  { room: 'carriage', dot: [420, 170], knee: [408, 262], balloon: [408, 344] },
  { room: 'control', dot: [531, 252], balloon: [531, 344] },
];
