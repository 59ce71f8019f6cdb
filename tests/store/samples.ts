import type { Contents } from '../../src/store/contents.ts';
import type { Board } from '../../src/store/records/board.ts';
import type { Kinds } from '../../src/store/records/kinds.ts';
import type { Fields } from '../../src/store/records/record.ts';
import { defaultShop } from '../../src/store/records/shop.ts';

export function aBoard(given: Partial<Fields<Board>>): Fields<Board> {
  return {
    chalk: 'A',
    species: 'cherry-black',
    thickness: { quarters: 4 },
    width: 180,
    length: 2440,
    state: 'rack',
    ...given,
  };
}

const stamps = (id: string) => ({ id, created: 1_700_000_000_000, updated: 1_700_000_100_000, revision: 2 });

/** One record of every kind, with every optional property. */
export const oneOfEach: { readonly [K in keyof Kinds]: Kinds[K] } = {
  shop: {
    ...defaultShop(1_700_000_000_000),
    revision: 3,
    manualLimits: { jointer: { length: 300 }, planer: { length: 350, thickness: 5 } },
    pace: { joint: { seconds: 90, count: 12 } },
    climate: { dry: { celsius: 20, humidity: 30 }, damp: { celsius: 24, humidity: 65 } },
    woods: [{ name: 'plum', radial: 4.2, tangential: 9.1, volumetric: 13.6, gravity: 0.7, openPores: true }],
    air: [{ at: 1_700_000_000_000, celsius: 19, humidity: 46 }],
    driedFor: 'most',
    square: { allowed: { drawers: 0.6 }, springBack: 0.25 },
    theme: 'dark',
    hand: 'left',
    references: [
      { tool: 'small square', error: 0.05, at: 1_700_000_000_000, kind: 'square' },
      { tool: 'long edge', error: 0.3, at: 1_700_000_000_000, kind: 'straightedge', length: 900 },
    ],
  },
  delivery: {
    ...stamps('delivery-1'),
    supplier: 'The yard by the river',
    date: '2025-03-14',
    price: { per: 'boardFoot', amount: 9.5 },
    freight: 40,
    invoiceBoardFeet: 86,
    invoiceTotal: 857,
  },
  board: {
    ...stamps('board-1'),
    ...aBoard({ chalk: 'C1' }),
    farWidth: 172,
    warp: { cup: 1.5, bow: 4, crook: 2, twist: 0 },
    seen: { cup: 2, bow: 3, crook: 1, twist: 0.5 },
    tools: {
      straightedge: { tool: 'long edge', error: 0.1, length: 900 },
      sticks: { tool: 'oak sticks', error: 0.2, length: 600 },
    },
    readings: [{ at: 1_700_000_000_000, percent: 9.5, celsius: 18 }],
    defects: [{ start: 0, length: 120, offset: 0, width: 180, kind: 'end check' }],
    deliveryId: 'delivery-1',
    parentId: 'board-0',
    pieceId: 'piece-1',
    cost: 61.2,
    goodFace: true,
    note: 'sapwood on one edge',
  },
  piece: {
    ...stamps('piece-1'),
    name: 'Blanket chest',
    parts: [
      {
        id: 'lid',
        name: 'Lid',
        species: 'cherry-black',
        length: 980,
        width: 520,
        thickness: 19,
        quantity: 1,
        panel: true,
        cut: 'flat',
        surfaces: { faces: ['shown', 'inside'], edges: ['shown', 'shown'], ends: ['bare', 'shown'] },
        fold: { with: 'front' },
      },
    ],
    joints: [
      { id: 'j1', kind: 'cleat', parts: ['lid'], note: 'slots' },
      {
        id: 'j2',
        kind: 'top',
        parts: ['lid'],
        attached: { kind: 'button', distance: 200, grooveDepth: 10, margin: 1, hold: 4 },
      },
    ],
    stages: [{ id: 's1', name: 'Lid panel', parts: ['lid'], doneAt: 1_700_000_000_000 }],
    climate: { dry: { celsius: 21, humidity: 20 }, damp: { celsius: 26, humidity: 40 } },
    finishedAt: 1_700_000_000_000,
  },
  plan: {
    ...stamps('plan-1'),
    pieceId: 'piece-1',
    problem: { boards: [], parts: [] },
    blanks: [{ board: 'board-1', start: 0, length: 1030, strips: [{ width: 105.4, part: 'lid', unit: 1 }] }],
    short: [{ part: 'lid', unit: 1, missingWidth: 31.5 }],
    cutDone: ['board-1'],
    chosen: true,
  },
  milling: {
    ...stamps('milling-1'),
    pieceId: 'piece-1',
    planId: 'plan-1',
    input: { boards: [], parts: [] },
    steps: [{ id: 'joint-face', say: 'Joint one face.' }],
    ticks: { 'joint-face': { pieces: ['lid-1'], skipped: 'by hand', at: 1_700_000_000_000 } },
    measured: [{ step: 'joint-face', piece: 'lid-1', dimension: 'thickness', value: 24.1, accepted: true }],
    lost: { 'lid-1': 'split' },
    finishedAt: 1_700_000_000_000,
  },
  square: {
    ...stamps('square-1'),
    pieceId: 'piece-1',
    readings: { front: 900, right: 450, back: 900, left: 450, diagonalAC: 1006, diagonalBD: 1007, difference: -1 },
    farEnd: 'parallel',
    precision: 0.5,
    use: 'case',
    at: 1_700_000_000_000,
  },
  glueup: {
    ...stamps('glueup-1'),
    pieceId: 'piece-1',
    name: 'Lid',
    stage: 's1',
    adhesive: 'pva',
    celsius: 19,
    seams: [{ length: 1030, width: 21 }],
    startedAt: 1_700_000_000_000,
    phases: [{ name: 'open', seconds: 300, startedAt: 1_700_000_000_000 }],
    unclampedAt: 1_700_000_000_000,
    log: [{ at: 1_700_000_000_000, text: 'squeeze-out even' }],
  },
  finish: {
    ...stamps('finish-1'),
    pieceId: 'piece-1',
    kind: 'oil-varnish',
    label: { coverage: 12 },
    coats: 3,
    area: 3.2,
    containers: [{ litres: 0.5, price: 24, count: 2 }],
    steps: [{ id: 'coat-1' }],
    ticks: { 'coat-1': { pieces: [], at: 1_700_000_000_000 } },
    finishedAt: 1_700_000_000_000,
  },
  timer: {
    ...stamps('timer-1'),
    name: 'Clamp time',
    for: { kind: 'glueup', id: 'glueup-1' },
    phase: 'clamp',
    startedAt: 1_700_000_000_000,
    endsAt: 1_700_003_600_000,
    doneAt: 1_700_003_600_000,
  },
};

export function sampleContents(): Contents {
  return structuredClone({
    kinds: Object.fromEntries(Object.entries(oneOfEach).map(([kind, record]) => [kind, [record]])),
    removed: [{ kind: 'board', id: 'board-0', revision: 4, removed: 1_700_000_050_000 }],
  });
}
