import type { Board } from '../records/board.ts';
import type { Fields } from '../records/record.ts';

type Row = readonly [chalk: string, width: number, length: number, cup: number, bow: number, percent: number];

/** Invented boards: rough 4/4, of random width; several are wider than an 8 in jointer. */
const cherry: readonly Row[] = [
  ['C1', 222, 2745, 2, 5, 8.4],
  ['C2', 184, 2440, 1, 4, 8.1],
  ['C3', 241, 3050, 2.5, 7, 8.9],
  ['C4', 165, 2440, 1, 3, 8.2],
  ['C5', 203, 3050, 1.5, 6, 8.6],
  ['C6', 152, 2135, 0.5, 3, 7.9],
  ['C7', 178, 2745, 1, 5, 8.3],
  ['C8', 210, 2440, 1.5, 4, 8.7],
  ['C9', 191, 2745, 1, 6, 9.6],
];
const softMaple: readonly Row[] = [
  ['M1', 197, 2440, 1, 4, 8.0],
  ['M2', 229, 3050, 2, 6, 8.5],
  ['M3', 171, 2440, 1, 3, 7.8],
  ['M4', 184, 2745, 1.5, 5, 8.2],
  ['M5', 159, 2135, 0.5, 2, 8.1],
];

/** Marked as having a face that is good enough to show. */
const goodFaces = ['C1', 'C5', 'C7', 'M2'];

const dayLong = 86_400_000;

/** How many days ago the boards were read, the first time as they came, and how much wetter they were then. */
const driedSince = [
  [24, 1.7],
  [11, 0.4],
  [1, 0],
] as const;

/** When the boards came. */
export const demoDelivered = (now: number) => now - driedSince[0][0] * dayLong;

export function demoBoards(now: number): { id: string; fields: Fields<Board> }[] {
  return [
    ...of(cherry, 'cherry-black', 'demo-delivery-cherry', now),
    ...of(softMaple, 'maple-red', 'demo-delivery-maple', now),
  ];
}

function of(rows: readonly Row[], species: string, deliveryId: string, now: number) {
  return rows.map(([chalk, width, length, cup, bow, percent]) => ({
    id: `demo-board-${chalk}`,
    fields: {
      chalk,
      species,
      thickness: { quarters: 4 },
      width,
      length,
      state: 'rack' as const,
      warp: { cup, bow },
      readings: driedSince.map(([days, more]) => ({
        at: now - days * dayLong,
        percent: Math.round((percent + more) * 10) / 10,
        celsius: 18,
      })),
      deliveryId,
      ...(goodFaces.includes(chalk) && { goodFace: true }),
    },
  }));
}
