/** The part of JSON Schema (2020-12) that records are described by; `T` is what a good value is. */
export interface Schema<T = unknown> {
  readonly type?: 'string' | 'number' | 'integer' | 'boolean' | 'array' | 'object';
  readonly enum?: readonly T[];
  readonly anyOf?: readonly Schema[];
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly items?: Schema;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: Schema;
}

/** What is wrong with a value, with the path of the part that is; undefined when it is as the schema says. */
export function damage(schema: Schema, value: unknown, path: readonly string[] = []): string | undefined {
  const within = (part: Schema | undefined, inner: unknown, name: string | number) =>
    part && damage(part, inner, [...path, `${name}`]);
  const what = wrong(schema, value);
  if (what) return `${path.join('.') || 'record'}: ${what}`;
  const { items, properties = {}, required = [], additionalProperties } = schema;
  if (Array.isArray(value)) return first(value.entries(), ([at, item]) => within(items, item, at));
  if (!isObject(value)) return undefined;
  const missing = required.find((name) => !Object.hasOwn(value, name));
  if (missing !== undefined) return `${[...path, missing].join('.')}: missing`;
  return first(Object.entries(value), ([name, inner]) =>
    within(Object.hasOwn(properties, name) ? properties[name] : additionalProperties, inner, name),
  );
}

/** What is wrong with a value as a whole, whatever it holds. */
function wrong({ type, enum: words, anyOf, ...limits }: Schema, value: unknown): string | undefined {
  if (words && !words.includes(value)) return `none of ${words.join(', ')}`;
  if (anyOf?.every((one) => damage(one, value))) return 'has none of the shapes that it may have';
  if (type && !is[type](value)) return `not the ${type} that it should be`;
  const least = limits.minimum ?? limits.minLength ?? limits.minItems ?? -Infinity;
  const most = limits.maximum ?? limits.maxLength ?? limits.maxItems ?? Infinity;
  const size = typeof value === 'number' ? value : typeof value === 'string' || Array.isArray(value) ? value.length : 0;
  return size < least ? 'too small' : size > most ? 'too large' : undefined;
}

const isObject = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const is: Readonly<Record<NonNullable<Schema['type']>, (value: unknown) => boolean>> = {
  string: (value) => typeof value === 'string',
  boolean: (value) => typeof value === 'boolean',
  number: Number.isFinite,
  integer: Number.isInteger,
  array: Array.isArray,
  object: isObject,
};

function first<T>(all: Iterable<T>, look: (one: T) => string | undefined): string | undefined {
  for (const one of all) {
    const found = look(one);
    if (found) return found;
  }
  return undefined;
}
