import type { Kind, Kinds } from '../records/kinds.ts';
import { kinds } from '../records/kinds.ts';
import type { Schema } from './json-schema.ts';

/** A property that a record may lack. */
interface May<T> {
  readonly may: Schema<T>;
}
type Entries = Readonly<Record<string, Schema | May<unknown>>>;
type Lacking<E> = { [K in keyof E]: E[K] extends May<unknown> ? K : never }[keyof E];
type ObjectOf<E> = {
  readonly [K in Exclude<keyof E, Lacking<E>>]: E[K] extends Schema<infer T> ? T : never;
} & { readonly [K in Lacking<E>]?: E[K] extends May<infer T> ? T : never };

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
const may = <T>(schema: Schema<T>): May<T> => ({ may: schema });
const oneOf = <const T extends string>(words: readonly T[]): Schema<T> => ({ enum: words });
const list = <T>(items: Schema<T>): Schema<readonly T[]> => ({ type: 'array', items, maxItems: 20_000 });
const two = <T>(item: Schema<T>): Schema<readonly [T, T]> => ({
  type: 'array',
  prefixItems: [item, item],
  minItems: 2,
});
const either = <A, B>(one: Schema<A>, other: Schema<B>): Schema<A | B> => ({ anyOf: [one, other] });
const byName = <T>(additionalProperties: Schema<T>): Schema<Readonly<Record<string, T>>> => ({
  type: 'object',
  additionalProperties,
});
function object<const E extends Entries>(entries: E): Schema<ObjectOf<E>> {
  const properties: Record<string, Schema> = {};
  const required: string[] = [];
  for (const [name, entry] of Object.entries(entries)) {
    if ('may' in entry) properties[name] = entry.may;
    else {
      properties[name] = entry;
      required.push(name);
    }
  }
  return { type: 'object', properties, required };
}

const stamps = { id, created: instant, updated: instant, revision, demo: may(yesNo) };

const side = oneOf(['shown', 'inside', 'bare']);
const sides = may(two(side));
const reading = object({ at: instant, percent: amount, celsius: may(number) });
const meeting = object({
  surface: oneOf(['edge', 'face', 'end', 'mitre']),
  grain: oneOf(['along', 'across']),
});
const attachedBy = { distance: amount, margin: may(amount) };
const ticks = byName(object({ pieces: list(text), skipped: may(text), at: instant }));
const saw = object({ owned: yesNo, kerf: amount });
const limit = may(object({ length: may(amount), width: may(amount), thickness: may(amount), depth: may(amount) }));
const airValues = { celsius: number, humidity: amount };
const air = may(object(airValues));
const warp = may(object({ cup: may(number), bow: may(number), crook: may(number), twist: may(number) }));
const warpTool = may(object({ tool: text, error: number, length: amount }));

const climate = may(object({ dry: air, damp: air }));

/** The shape of each kind of record. Unknown properties are allowed: a newer app may have put them there. */
export const schemas: { readonly [K in Kind]: Schema<Kinds[K]> } = {
  shop: object({
    ...stamps,
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
      mitreSaw: saw,
      router: object({ owned: yesNo }),
      handPlanes: object({ owned: yesNo, wide: may(yesNo) }),
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
    climate,
    woods: may(
      list(
        object({
          name: text,
          radial: may(amount),
          tangential: may(amount),
          volumetric: may(amount),
          gravity: may(amount),
          openPores: may(yesNo),
        }),
      ),
    ),
    air: may(list(object({ at: instant, ...airValues }))),
    driedFor: may(text),
    square: may(object({ allowed: may(byName(amount)), springBack: may(amount) })),
    theme: may(oneOf(['light', 'dark', 'contrast'])),
    hand: may(oneOf(['left', 'right'])),
    references: may(
      list(
        object({
          tool: text,
          error: number,
          at: instant,
          kind: may(oneOf(['square', 'straightedge', 'sticks'])),
          length: may(amount),
        }),
      ),
    ),
  }),
  delivery: object({
    ...stamps,
    supplier: text,
    date: text,
    price: object({ per: oneOf(['boardFoot', 'cubicMetre']), amount }),
    freight: amount,
    invoiceBoardFeet: may(amount),
    invoiceTotal: may(amount),
    note: may(text),
  }),
  board: object({
    ...stamps,
    chalk: text,
    species: text,
    thickness: either(object({ quarters: amount }), object({ mm: amount })),
    width: amount,
    farWidth: may(amount),
    length: amount,
    state: oneOf(['rack', 'setAside', 'cut', 'used']),
    warp,
    seen: warp,
    tools: may(object({ straightedge: warpTool, sticks: warpTool })),
    readings: may(list(reading)),
    defects: may(list(object({ start: amount, length: amount, offset: amount, width: amount, kind: text }))),
    deliveryId: may(id),
    parentId: may(id),
    pieceId: may(id),
    cost: may(amount),
    goodFace: may(yesNo),
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
        panel: yesNo,
        cut: may(oneOf(['flat', 'rift', 'quarter'])),
        surfaces: may(object({ faces: sides, edges: sides, ends: sides })),
        fold: may(json),
      }),
    ),
    joints: list(
      object({
        id,
        kind: text,
        parts: list(id),
        meets: may(two(meeting)),
        length: may(amount),
        breadth: may(amount),
        fixing: may(object({ count, inset: amount, shank: amount, head: may(amount), fixed: count, margin: amount })),
        attached: may(
          either(
            object({ kind: oneOf(['button']), ...attachedBy, grooveDepth: amount, hold: may(amount) }),
            either(
              object({ kind: oneOf(['slotted-bracket']), ...attachedBy, slot: amount, shank: amount }),
              object({ kind: oneOf(['swivel-bracket']), ...attachedBy, swing: amount }),
            ),
          ),
        ),
        note: may(text),
      }),
    ),
    stages: list(object({ id, name: text, parts: list(id), doneAt: may(instant) })),
    climate,
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
    chosen: may(yesNo),
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
          dimension: oneOf(['thickness', 'width', 'length']),
          value: amount,
          accepted: may(yesNo),
          clean: may(yesNo),
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
    farEnd: may(oneOf(['parallel', 'square'])),
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
    for: object({ kind: oneOf(kinds), id }),
    phase: text,
    step: may(text),
    startedAt: instant,
    endsAt: instant,
    doneAt: may(instant),
  }),
};

export const tombstoneSchema = object({ kind: oneOf(kinds), id, revision, removed: instant });
