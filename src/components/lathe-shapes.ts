/**
 * A small lathe of no make, seen from above with the operator at the foot, in a box of 660 by 306 units.
 * One list serves the large drawing and the map; finer edges are marked so that small sizes can drop them.
 */
export const ROOM_IDS = [
  'purpose',
  'approach',
  'carriage',
  'cross-slide',
  'tooling',
  'motors',
  'control',
  'spindle',
  'wiring',
] as const;
export type RoomId = (typeof ROOM_IDS)[number];
export type RoomState = 'open' | 'part' | 'settled';

/** `part` is filled outline, `loose` a thing lying about that stays paper, `fine` an inner edge (`d2` only on large drawings), `hidden` a dashed edge. */
export type EdgeKind = 'part' | 'loose' | 'fine' | 'fine d2' | 'hidden-edge' | 'wire';
export interface Edge {
  d: string;
  kind: EdgeKind;
  /** The part is turned, and its hatch with it. */
  turned?: boolean;
}
export interface Region {
  room: RoomId;
  edges: Edge[];
  /** Where the map prints the room's number. */
  number: { x: number; y: number };
}

type Point = [number, number];

const box = (x: number, y: number, w: number, h: number) => `M${x} ${y}h${w}v${h}h${-w}z`;
const disc = (x: number, y: number, r: number) =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
/** A plate with its corners cut off by `c`. */
const plate = (x: number, y: number, w: number, h: number, c: number) =>
  `M${x + c} ${y}h${w - 2 * c}l${c} ${c}v${h - 2 * c}l${-c} ${c}h${2 * c - w}l${-c} ${-c}v${2 * c - h}z`;
const ribs = (from: number, to: number, step: number, y: number, h: number) =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => `M${from + i * step} ${y}v${h}`).join(
    '',
  );

function turnedPath(points: Point[], [cx, cy]: Point, degrees: number): string {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const spots = points.map(([x, y]) => {
    const [dx, dy] = [x - cx, y - cy];
    return `${(cx + dx * c - dy * s).toFixed(1)} ${(cy + dx * s + dy * c).toFixed(1)}`;
  });
  return `M${spots.join('L')}z`;
}
const corners = (x: number, y: number, w: number, h: number): Point[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

const PIVOT: Point = [312, 176];
const swung = (x: number, y: number, w: number, h: number) => turnedPath(corners(x, y, w, h), PIVOT, 28);

const part = (...ds: string[]): Edge[] => ds.map((d) => ({ d, kind: 'part' }));
const edge = (kind: EdgeKind, ...ds: string[]): Edge[] => ds.map((d) => ({ d, kind }));

const tray: Edge[] = [...part(plate(12, 58, 560, 176, 9)), ...edge('fine', plate(18, 64, 548, 164, 7))];

const bench: Edge[] = [
  ...part(box(0, 280, 660, 26)),
  ...edge(
    'loose',
    'M36 258 170 250 170.6 260 36.6 268z',
    'M190 242 199 243 196 263 231 267 230 275 186 270z',
  ),
  ...edge('fine d2', 'M0 286h660', ribs(46, 162, 8, 257, 3.5)),
];

const carriage: Edge[] = [
  ...part(box(168, 103, 392, 14), box(168, 163, 392, 14)),
  ...edge('fine', 'M168 107.5h392M168 113h392M168 167h392M168 172.5h392'),
  ...edge('fine d2', 'M232 117v46M238 117v46M404 117v46M410 117v46M476 117v46M482 117v46'),
  ...part(box(556, 92, 8, 110)),
  ...part(box(172, 192.5, 384, 6)),
  ...edge('fine d2', ribs(178, 548, 5, 192.5, 6)),
  ...part(plate(168, 186, 18, 19, 2), plate(540, 186, 18, 19, 2)),
  ...part('M252 90h28v22h64V90h30v30l-10 10v28l10 8v34H340v-6h-60v6h-28v-34l8-8v-28l-8-10z'),
  ...part(box(258, 202, 26, 16), box(250, 221, 40, 5), plate(253, 226, 7, 16, 2)),
  ...edge('fine', disc(261, 98, 2.5), disc(365, 98, 2.5), disc(261, 191, 2.5), disc(365, 191, 2.5)),
];

const crossSlide: Edge[] = [
  ...part(box(286, 72, 52, 150)),
  ...edge('hidden-edge', 'M308 54v168M316 54v168'),
  ...edge('fine', 'M294 72v150M330 72v150'),
  ...part(box(298, 222, 28, 7), box(302, 229, 20, 7), plate(290, 236, 44, 6, 2), plate(325, 242, 7, 17, 2)),
  ...edge('fine d2', ribs(304, 320, 3, 229, 4)),
  { d: disc(312, 176, 30), kind: 'part' },
  ...edge('fine d2', disc(312, 176, 26)),
  { d: swung(292, 163, 84, 26), kind: 'part', turned: true },
  ...edge('fine', swung(292, 168, 84, 16)),
  { d: swung(376, 169, 7, 14), kind: 'part' },
  { d: swung(383, 161, 5, 30), kind: 'part' },
  { d: swung(388, 185, 13, 5), kind: 'part' },
];

const tooling: Edge[] = [
  ...part(box(168, 104, 9, 72), plate(177, 100, 34, 80, 5)),
  ...part('M211 112h9v5h9v8h-18zM211 155h18v8h-9v5h-9zM204 135h22v10h-22z'),
  ...edge('fine', box(185, 112, 9, 8), box(185, 160, 9, 8)),
  ...part(
    'M398 140 410 132v16z',
    box(410, 131, 36, 18),
    plate(444, 112, 92, 56, 9),
    plate(440, 122, 94, 36, 5),
  ),
  ...edge('fine d2', ribs(418, 440, 4, 131, 5), box(456, 114, 12, 6), box(512, 160, 12, 6)),
  ...part(box(536, 134, 9, 12), plate(545, 114, 6, 52, 2), plate(551, 158, 15, 5, 2)),
  ...part('M482 140l12-26 4 2-11 26z', disc(498, 112, 3.5), disc(483, 141, 4)),
  ...part(box(296, 162, 32, 30), 'M299 166v-18l4-6 4 6v18z'),
  ...edge('fine', disc(312, 177, 9), disc(312, 177, 4)),
];

const spindle: Edge[] = [
  ...part(plate(16, 30, 30, 154, 7), box(8, 132, 8, 16)),
  ...edge('hidden-edge', box(24, 42, 14, 62), box(24, 112, 14, 62)),
  ...part(plate(58, 28, 78, 44, 5), box(52, 42, 6, 16), plate(136, 32, 14, 36, 4)),
  ...edge('fine', box(78, 38, 36, 24), 'M62 33h70M62 67h70'),
  ...part(plate(46, 80, 122, 120, 8)),
  ...edge(
    'fine',
    plate(56, 90, 102, 100, 4),
    disc(64, 98, 2.5),
    disc(150, 98, 2.5),
    disc(64, 182, 2.5),
    disc(150, 182, 2.5),
  ),
  ...edge(
    'hidden-edge',
    'M46 131h122M46 149h122',
    box(60, 122, 14, 9),
    box(60, 149, 14, 9),
    box(140, 122, 14, 9),
    box(140, 149, 14, 9),
  ),
  ...part(box(74, 200, 5, 7), disc(76.5, 211, 4), box(112, 200, 5, 7), disc(114.5, 211, 4)),
];

const motors: Edge[] = [
  ...part(box(298, 50, 28, 22), plate(291, 8, 42, 42, 4), box(304, 2, 16, 6)),
  ...edge('fine', 'M299 14v30M305 14v30M319 14v30M325 14v30'),
  ...part(box(564, 188, 14, 14), box(578, 176, 5, 40), plate(583, 178, 40, 36, 4), box(623, 186, 10, 20)),
  ...edge('fine', 'M590 186h26M590 193h26M590 200h26M590 207h26'),
];

const wiring: Edge[] = [
  ...edge(
    'wire',
    'M320 4C390-8 430 28 506 28',
    'M333 32C400 40 440 36 506 40',
    'M150 52C200 96 270 70 300 66',
    'M330 66C400 70 450 60 506 54',
  ),
  ...edge('wire', 'M648 52C664 60 656 170 633 196', 'M600 214C600 224 566 222 566 234'),
  ...part(
    plate(512, 12, 130, 74, 2),
    box(506, 24, 6, 8),
    box(506, 36, 6, 8),
    box(506, 50, 6, 8),
    box(642, 48, 6, 8),
  ),
  ...part(box(524, 86, 10, 4), box(620, 86, 10, 4)),
  ...edge(
    'hidden-edge',
    box(522, 20, 22, 30),
    box(550, 20, 22, 30),
    box(578, 20, 26, 30),
    box(610, 20, 24, 16),
    box(522, 60, 112, 14),
  ),
];

const control: Edge[] = [
  ...part('M500 240 636 233 642 264 498 271z'),
  ...edge('fine', 'M508 245 554 242.5 555 259 509 261.5z', disc(604, 248, 7), disc(624, 247, 5)),
  ...edge('fine d2', ...[562, 570, 578].flatMap((x) => [243, 250, 257].map((y) => box(x, y, 5, 5)))),
];

/** Regions from the bench upward: a later one lies on top of an earlier one. */
export const REGIONS: Region[] = [
  { room: 'purpose', edges: tray, number: { x: 112, y: 229 } },
  { room: 'carriage', edges: carriage, number: { x: 436, y: 206 } },
  { room: 'cross-slide', edges: crossSlide, number: { x: 312, y: 108 } },
  { room: 'tooling', edges: tooling, number: { x: 488, y: 151 } },
  { room: 'spindle', edges: spindle, number: { x: 107, y: 151 } },
  { room: 'motors', edges: motors, number: { x: 603, y: 207 } },
  { room: 'wiring', edges: wiring, number: { x: 577, y: 60 } },
  { room: 'control', edges: control, number: { x: 570, y: 264 } },
  { room: 'approach', edges: bench, number: { x: 330, y: 304 } },
];

/** The piece being turned is ink and never a room; it lies over the carriage and under the chuck's jaws. */
export const WORK = 'M220 126h34v4h50v20h-50v4h-34z';
export const CENTRE_LINES = ['M-4 140H578', 'M312-6V262'];
/** The room whose region the work lies on top of. */
export const WORK_OVER: RoomId = 'cross-slide';

/** The number a room carries on the drawing and in the list, 1 to 9, in the order of the guide. */
export function roomNumber(room: RoomId): number {
  return ROOM_IDS.indexOf(room) + 1;
}
