import type { Kind, Kinds } from '../records/kinds.ts';
import { kinds } from '../records/kinds.ts';
import type { Schema } from './json-schema.ts';

type Shapes = Readonly<Record<string, Schema>>;
type None = Readonly<Record<never, never>>;
type Of<S> = S extends Schema<infer T> ? T : never;
type ObjectOf<Must, May> = { readonly [K in keyof Must]: Of<Must[K]> } & { readonly [K in keyof May]?: Of<May[K]> };

const text: Schema<string> = { type: 'string', maxLength: 10_000 };
const id: Schema<string> = { type: 'string', minLength: 1, maxLength: 100 };
const yesNo: Schema<boolean> = { type: 'boolean' };
const number: Schema<number> = { type: 'number' };
const amount: Schema<number> = { type: 'number', minimum: 0, maximum: 1e9 };
const count: Schema<number> = { type: 'integer', minimum: 0, maximum: 1e9 };
const instant: Schema<number> = { type: 'number', minimum: 0, maximum: 8.64e15 };
const revision: Schema<number> = { type: 'integer', minimum: 1, maximum: Number.MAX_SAFE_INTEGER };
/** What the core generates and reads itself. */
// biome-ignore lint/suspicious/noExplicitAny: it may be anything
const json: Schema<any> = {};
const oneOf = <const T extends string>(words: readonly T[]): Schema<T> => ({ enum: words });
const list = <T>(items: Schema<T>): Schema<readonly T[]> => ({ type: 'array', items, maxItems: 20_000 });
const two = <T>(item: Schema<T>) => ({ ...list(item), minItems: 2 }) as Schema<readonly [T, T]>;
const either = <S extends readonly Schema[]>(...anyOf: S): Schema<Of<S[number]>> => ({ anyOf });
const byName = <T>(additionalProperties: Schema<T>): Schema<Readonly<Record<string, T>>> => ({
  type: 'object',
  additionalProperties,
});
/** What an object must hold, and what it may. */
const object = <M extends Shapes, O extends Shapes = None>(must: M, may = {} as O): Schema<ObjectOf<M, O>> => ({
  type: 'object',
  properties: { ...must, ...may },
  required: Object.keys(must),
});
const stamps = { id, created: instant, updated: instant, revision };
const record = <M extends Shapes, O extends Shapes = None>(must: M, may = {} as O) =>
  object({ ...stamps, ...must }, { demo: yesNo, ...may });

const sides = two(oneOf(['shown', 'inside', 'bare']));
const reading = object({ at: instant, percent: amount }, { celsius: number });
const meeting = object({
  surface: oneOf(['edge', 'face', 'end', 'mitre']),
  grain: oneOf(['along', 'across']),
});
const ticks = byName(object({ pieces: list(text), at: instant }, { skipped: text }));
const saw = object({ owned: yesNo, kerf: amount });
const limit = object({}, { length: amount, width: amount, thickness: amount, depth: amount });
const air = { celsius: number, humidity: amount };
const warp = object({}, { cup: number, bow: number, crook: number, twist: number });
const warpTool = object({ tool: text, error: number, length: amount });
const climate = object({}, { dry: object(air), damp: object(air) });

/** The shape of each kind of record. Unknown properties are allowed: a newer app may have put them there. */
export const schemas: { readonly [K in Kind]: Schema<Kinds[K]> } = {
  shop: record(
    {
      units: object({
        unit: oneOf(['in', 'mm']),
        nearest: { type: 'integer', minimum: 1, maximum: 64 } as Schema<number>,
      }),
      tapePrecision: amount,
      machines: object({
        jointer: object({ owned: yesNo, width: amount }),
        planer: object({ owned: yesNo, width: amount, sled: yesNo }),
        tableSaw: saw,
        guidedSaw: saw,
        mitreSaw: object({ owned: yesNo, kerf: amount }, { width: amount }),
        router: object({ owned: yesNo }),
        handPlanes: object({ owned: yesNo }, { wide: yesNo }),
      }),
      allowances: object({ edge: amount, length: amount, face: amount }),
      strips: object({ min: amount, max: amount }),
      clamps: list(object({ kind: text, opening: amount, count })),
    },
    {
      manualLimits: byName(limit),
      pace: byName(object({ seconds: amount, count })),
      climate,
      woods: list(
        object(
          { name: text },
          { radial: amount, tangential: amount, volumetric: amount, gravity: amount, openPores: yesNo },
        ),
      ),
      air: list(object({ at: instant, ...air })),
      driedFor: text,
      square: object({}, { allowed: byName(amount), springBack: amount }),
      theme: oneOf(['light', 'dark', 'contrast']),
      hand: oneOf(['left', 'right']),
      references: list(
        object(
          { tool: text, error: number, at: instant },
          { kind: oneOf(['square', 'straightedge', 'sticks']), length: amount },
        ),
      ),
    },
  ),
  delivery: record(
    {
      supplier: text,
      date: text,
      price: object({ per: oneOf(['boardFoot', 'cubicMetre']), amount }),
      freight: amount,
    },
    { invoiceBoardFeet: amount, invoiceTotal: amount },
  ),
  board: record(
    {
      chalk: text,
      species: text,
      thickness: either(object({ quarters: amount }), object({ mm: amount })),
      width: amount,
      length: amount,
      state: oneOf(['rack', 'setAside', 'cut', 'used']),
    },
    {
      farWidth: amount,
      warp,
      seen: warp,
      tools: object({}, { straightedge: warpTool, sticks: warpTool }),
      readings: list(reading),
      defects: list(object({ start: amount, length: amount, offset: amount, width: amount, kind: text })),
      deliveryId: id,
      parentId: id,
      pieceId: id,
      cost: amount,
      goodFace: yesNo,
      note: text,
    },
  ),
  piece: record(
    {
      name: text,
      parts: list(
        object(
          {
            id,
            name: text,
            species: text,
            length: amount,
            width: amount,
            thickness: amount,
            quantity: count,
            panel: yesNo,
          },
          {
            cut: oneOf(['flat', 'rift', 'quarter']),
            surfaces: object({}, { faces: sides, edges: sides, ends: sides }),
            fold: json,
          },
        ),
      ),
      joints: list(
        object(
          { id, kind: text, parts: list(id) },
          {
            meets: two(meeting),
            length: amount,
            breadth: amount,
            fixing: object({ count, inset: amount, shank: amount, fixed: count, margin: amount }, { head: amount }),
            attached: either(
              object(
                { kind: oneOf(['button']), distance: amount, grooveDepth: amount },
                { margin: amount, hold: amount },
              ),
              object(
                { kind: oneOf(['slotted-bracket']), distance: amount, slot: amount, shank: amount },
                { margin: amount },
              ),
              object({ kind: oneOf(['swivel-bracket']), distance: amount, swing: amount }, { margin: amount }),
            ),
            note: text,
          },
        ),
      ),
      stages: list(object({ id, name: text, parts: list(id) }, { doneAt: instant })),
    },
    { climate, reading, finishedAt: instant },
  ),
  plan: record(
    {
      pieceId: id,
      problem: json,
      blanks: list(
        object({
          board: id,
          start: amount,
          length: amount,
          strips: list(object({ width: amount, part: id, unit: count }, { spoilt: yesNo })),
        }),
      ),
      short: list(object({ part: id, unit: count, missingWidth: amount })),
    },
    {
      cutDone: list(id),
      chosen: yesNo,
    },
  ),
  milling: record(
    { pieceId: id, planId: id, input: json, steps: list(json), ticks },
    {
      measured: list(
        object(
          { step: text, piece: text, dimension: oneOf(['thickness', 'width', 'length']), value: amount },
          { accepted: yesNo, clean: yesNo },
        ),
      ),
      lost: byName(text),
      finishedAt: instant,
    },
  ),
  square: record(
    {
      readings: object(
        {},
        {
          front: amount,
          right: amount,
          back: amount,
          left: amount,
          diagonalAC: amount,
          diagonalBD: amount,
          difference: number,
        },
      ),
      precision: amount,
      use: text,
      at: instant,
    },
    { pieceId: id, farEnd: oneOf(['parallel', 'square']) },
  ),
  glueup: record(
    {
      name: text,
      stage: text,
      adhesive: text,
      celsius: number,
      seams: list(object({ length: amount, width: amount })),
      phases: list(object({ name: text, seconds: amount }, { startedAt: instant })),
    },
    {
      pieceId: id,
      label: object(
        {},
        { seconds: byName(object({ least: amount, most: amount })), leastCelsius: number, atCelsius: number },
      ),
      clamps: count,
      startedAt: instant,
      unclampedAt: instant,
      restedAt: instant,
      log: list(object({ at: instant, text })),
    },
  ),
  finish: record(
    {
      pieceId: id,
      kind: text,
      coats: count,
      area: amount,
      containers: list(object({ litres: amount, price: amount }, { count })),
      steps: list(json),
      ticks,
    },
    { label: byName(number), finishedAt: instant },
  ),
  timer: record(
    { name: text, for: object({ kind: oneOf(kinds), id }), phase: text, startedAt: instant, endsAt: instant },
    { step: text, doneAt: instant },
  ),
};

export const tombstoneSchema = object({ kind: oneOf(kinds), id, revision, removed: instant }, { demo: yesNo });
