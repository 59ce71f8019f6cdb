import * as v from 'valibot';
import type { Kind, Kinds } from '../records/kinds.ts';
import { kinds } from '../records/kinds.ts';

const text = v.pipe(v.string(), v.maxLength(10_000));
const id = v.pipe(v.string(), v.minLength(1), v.maxLength(100));
const number = v.pipe(v.number(), v.finite());
const amount = v.pipe(v.number(), v.minValue(0), v.maxValue(1e9));
const count = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1e9));
const instant = v.pipe(v.number(), v.minValue(0), v.maxValue(8.64e15));
const list = <T extends v.GenericSchema>(item: T) => v.pipe(v.array(item), v.maxLength(20_000));
const byName = <T extends v.GenericSchema>(item: T) => v.record(v.string(), item);
const object = v.looseObject;
const may = v.optional;
/** What the core generates and reads itself. */
const json = v.any();

const stamps = {
  id,
  created: instant,
  updated: instant,
  revision: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
  demo: may(v.boolean()),
};

const side = v.picklist(['shown', 'inside', 'bare']);
const sides = may(v.tuple([side, side]));
const reading = object({ at: instant, percent: amount, celsius: may(number) });
const meeting = object({
  surface: v.picklist(['edge', 'face', 'end', 'mitre']),
  grain: v.picklist(['along', 'across']),
});
const ticks = byName(object({ pieces: list(text), skipped: may(text), at: instant }));
const saw = object({ owned: v.boolean(), kerf: amount });
const limit = may(object({ length: may(amount), width: may(amount), thickness: may(amount), depth: may(amount) }));
const air = may(object({ celsius: number, humidity: amount }));

/** The shape of each kind of record. Unknown properties are allowed: a newer app may have put them there. */
export const schemas: { readonly [K in Kind]: v.GenericSchema<unknown, Kinds[K]> } = {
  shop: object({
    ...stamps,
    units: object({ unit: v.picklist(['in', 'mm']), nearest: amount }),
    tapePrecision: amount,
    machines: object({
      jointer: object({ owned: v.boolean(), width: amount }),
      planer: object({ owned: v.boolean(), width: amount, sled: v.boolean() }),
      tableSaw: saw,
      guidedSaw: saw,
      mitreSaw: saw,
      router: object({ owned: v.boolean() }),
      handPlanes: object({ owned: v.boolean() }),
    }),
    manualLimits: may(
      object({
        jointer: limit,
        planer: limit,
        tableSaw: limit,
        guidedSaw: limit,
        mitreSaw: limit,
        router: limit,
        handPlanes: limit,
      }),
    ),
    allowances: object({ edge: amount, length: amount, face: amount }),
    strips: object({ min: amount, max: amount }),
    clamps: list(object({ kind: text, opening: amount, count })),
    pace: may(byName(object({ seconds: amount, count }))),
    climate: may(object({ dry: air, damp: air })),
    theme: may(v.picklist(['light', 'dark', 'contrast'])),
    hand: may(v.picklist(['left', 'right'])),
    references: may(
      list(
        object({
          tool: text,
          error: number,
          at: instant,
          kind: may(v.picklist(['square', 'straightedge', 'sticks'])),
          length: may(amount),
        }),
      ),
    ),
  }),
  delivery: object({
    ...stamps,
    supplier: text,
    date: text,
    price: object({ per: v.picklist(['boardFoot', 'cubicMetre']), amount }),
    freight: amount,
    invoiceBoardFeet: may(amount),
    invoiceTotal: may(amount),
    note: may(text),
  }),
  board: object({
    ...stamps,
    chalk: text,
    species: text,
    thickness: v.union([object({ quarters: amount }), object({ mm: amount })]),
    width: amount,
    farWidth: may(amount),
    length: amount,
    state: v.picklist(['rack', 'setAside', 'cut', 'used']),
    warp: may(object({ cup: may(number), bow: may(number), crook: may(number), twist: may(number) })),
    readings: may(list(reading)),
    defects: may(list(object({ start: amount, length: amount, offset: amount, width: amount, kind: text }))),
    deliveryId: may(id),
    parentId: may(id),
    pieceId: may(id),
    cost: may(amount),
    note: may(text),
  }),
  piece: object({
    ...stamps,
    name: text,
    parts: list(
      object({
        id,
        name: text,
        species: text,
        length: amount,
        width: amount,
        thickness: amount,
        quantity: count,
        panel: v.boolean(),
        cut: may(v.picklist(['flat', 'rift', 'quarter'])),
        surfaces: may(object({ faces: sides, edges: sides, ends: sides })),
        fold: may(json),
      }),
    ),
    joints: list(
      object({
        id,
        kind: text,
        parts: list(id),
        meets: may(v.tuple([meeting, meeting])),
        length: may(amount),
        breadth: may(amount),
        fixing: may(object({ count, inset: amount, shank: amount, head: may(amount), fixed: count, margin: amount })),
        note: may(text),
      }),
    ),
    stages: list(object({ id, name: text, parts: list(id), doneAt: may(instant) })),
    reading: may(reading),
    finishedAt: may(instant),
    note: may(text),
  }),
  plan: object({
    ...stamps,
    pieceId: id,
    problem: json,
    blanks: list(
      object({
        board: id,
        start: amount,
        length: amount,
        strips: list(object({ width: amount, part: id, unit: count })),
      }),
    ),
    short: list(object({ part: id, unit: count, missingWidth: amount })),
    cutDone: may(list(id)),
    spoilt: may(list(object({ blank: count, why: may(text), at: instant }))),
    chosen: may(v.boolean()),
    note: may(text),
  }),
  milling: object({
    ...stamps,
    pieceId: id,
    planId: id,
    input: json,
    steps: list(json),
    ticks,
    measured: may(
      list(
        object({
          step: text,
          piece: text,
          dimension: v.picklist(['thickness', 'width', 'length']),
          value: amount,
          accepted: may(v.boolean()),
          clean: may(v.boolean()),
        }),
      ),
    ),
    lost: may(byName(text)),
    finishedAt: may(instant),
  }),
  square: object({
    ...stamps,
    pieceId: may(id),
    readings: object({
      front: may(amount),
      right: may(amount),
      back: may(amount),
      left: may(amount),
      diagonalAC: may(amount),
      diagonalBD: may(amount),
      difference: may(number),
    }),
    farEnd: may(v.picklist(['parallel', 'square'])),
    precision: amount,
    use: text,
    at: instant,
    note: may(text),
  }),
  glueup: object({
    ...stamps,
    pieceId: may(id),
    name: text,
    stage: text,
    adhesive: text,
    celsius: number,
    seams: list(object({ length: amount, width: amount })),
    label: may(
      object({
        seconds: may(byName(object({ least: amount, most: amount }))),
        leastCelsius: may(number),
        atCelsius: may(number),
      }),
    ),
    clamps: may(count),
    startedAt: may(instant),
    phases: list(object({ name: text, seconds: amount, startedAt: may(instant) })),
    unclampedAt: may(instant),
    restedAt: may(instant),
    log: may(list(object({ at: instant, text }))),
  }),
  finish: object({
    ...stamps,
    pieceId: id,
    kind: text,
    label: may(byName(number)),
    coats: count,
    area: amount,
    containers: list(object({ litres: amount, price: amount, count: may(count) })),
    steps: list(json),
    ticks,
    finishedAt: may(instant),
  }),
  timer: object({
    ...stamps,
    name: text,
    for: object({ kind: v.picklist(kinds), id }),
    phase: text,
    step: may(text),
    startedAt: instant,
    endsAt: instant,
    doneAt: may(instant),
  }),
};

export const tombstoneSchema = v.looseObject({
  kind: v.picklist(kinds),
  id,
  revision: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
  removed: instant,
});

/** What is wrong with a record of this kind, with the path of the field; undefined when nothing is. */
export function damage(schema: v.GenericSchema, record: unknown): string | undefined {
  const { success, issues } = v.safeParse(schema, record, { abortEarly: true });
  if (success) return undefined;
  const [issue] = issues;
  return `${v.getDotPath(issue) ?? 'record'}: ${issue.message}`;
}
