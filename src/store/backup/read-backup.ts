import type { Contents, Tombstone } from '../contents.ts';
import { convert } from '../migrations/convert.ts';
import { migrations, schemaVersion } from '../migrations/list.ts';
import type { StoredRecord } from '../records/record.ts';
import { backupFormat, backupFormatVersion } from './backup-text.ts';
import { canonicalJson } from './canonical-json.ts';
import { checksum } from './checksum.ts';
import { damage, type Schema } from './json-schema.ts';
import { schemas, tombstoneSchema } from './schemas.ts';
import { unsound } from './sound.ts';

/** Largest file taken in, in bytes. Ten thousand boards make about 4 MB. */
export const largestBackup = 16 * 1024 * 1024;
const mostRecords = 100_000;

/** A record that can't be taken in, as it stood in the file. */
export interface Damaged {
  readonly kind: string;
  readonly record: unknown;
  readonly why: string;
}

export type ReadOutcome =
  | { readonly kind: 'tooBig'; readonly limit: number }
  | { readonly kind: 'notJson' }
  /** JSON, but not a backup of this app. */
  | { readonly kind: 'notBackup' }
  /** Made by a newer version of the app. */
  | { readonly kind: 'newer' }
  /** An old backup that couldn't be brought to this version. */
  | { readonly kind: 'notConverted'; readonly why: string }
  | {
      readonly kind: 'read';
      readonly contents: Contents;
      readonly damaged: readonly Damaged[];
      /** The checksum doesn't fit: the file has been changed since it was made. */
      readonly altered: boolean;
      readonly madeAt: number;
      /** The name of what it holds, when it isn't everything: such a file can only be merged. */
      readonly only?: string;
    };

/** Parses, checks, migrates and validates a backup file. Changes nothing; never throws, whatever the file holds. */
export async function readBackup(file: string | Blob): Promise<ReadOutcome> {
  const size = typeof file === 'string' ? file.length : file.size;
  if (size > largestBackup) return { kind: 'tooBig', limit: largestBackup };
  const parsed = parse(typeof file === 'string' ? file : await file.text());
  if (parsed === undefined) return { kind: 'notJson' };
  if (!isObject(parsed) || parsed.format !== backupFormat || !isObject(parsed.kinds)) return { kind: 'notBackup' };
  const { formatVersion, schema } = parsed;
  if (!isVersion(formatVersion) || !isVersion(schema)) return { kind: 'notBackup' };
  if (formatVersion > backupFormatVersion || schema > schemaVersion) return { kind: 'newer' };

  const { contents: raw, damaged, total } = sortOut(parsed);
  if (total > mostRecords) return { kind: 'tooBig', limit: largestBackup };
  let converted: Contents;
  try {
    converted = convert(raw, schema, migrations);
  } catch (error) {
    return { kind: 'notConverted', why: error instanceof Error ? error.message : String(error) };
  }
  const contents = await validated(converted, damaged);
  return {
    kind: 'read',
    contents,
    damaged,
    altered: await isAltered(parsed),
    madeAt: typeof parsed.madeAt === 'number' && Math.abs(parsed.madeAt) <= 8.64e15 ? parsed.madeAt : 0,
    ...(typeof parsed.only === 'string' ? { only: parsed.only.slice(0, 200) } : {}),
  };
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isVersion = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 1;

async function isAltered(file: Record<string, unknown>): Promise<boolean> {
  try {
    const expected = isObject(file.checksum) ? file.checksum.value : undefined;
    return expected !== (await checksum(canonicalJson({ kinds: file.kinds, removed: file.removed })));
  } catch {
    return true;
  }
}

/** Sets aside what can't even be called a record, so that migrations meet nothing monstrous. */
function sortOut(file: Record<string, unknown>): { contents: Contents; damaged: Damaged[]; total: number } {
  const damaged: Damaged[] = [];
  let total = 0;
  const sound = (kind: string, records: unknown): unknown[] => {
    if (!Array.isArray(records)) {
      if (records !== undefined) damaged.push({ kind, record: records, why: 'not a list' });
      return [];
    }
    total += records.length;
    if (total > mostRecords) return [];
    return records.filter((record) => {
      const why = isObject(record) ? unsound(record) : 'not a record';
      if (why) damaged.push({ kind, record, why });
      return !why;
    });
  };
  const kinds = new Map(
    Object.entries(file.kinds as object).map(([kind, records]) => [kind, sound(kind, records) as StoredRecord[]]),
  );
  const removed = sound('removed', file.removed) as unknown[] as Tombstone[];
  return { contents: { kinds: Object.fromEntries(kinds), removed }, damaged, total };
}

async function validated(contents: Contents, damaged: Damaged[]): Promise<Contents> {
  let checked = 0;
  const sieve = async <T extends { readonly id: string }>(
    kind: string,
    schema: Schema | undefined,
    records: readonly T[],
    keyOf: (record: T) => string,
  ): Promise<T[]> => {
    const good = new Map<string, T>();
    for (const record of records) {
      checked += 1;
      if (checked % 500 === 0) await new Promise((resolve) => setTimeout(resolve));
      const why = schema ? damage(schema, record) : 'a kind of record that this app does not know';
      if (why) damaged.push({ kind, record, why });
      else if (good.has(keyOf(record))) damaged.push({ kind, record, why: 'there twice' });
      else good.set(keyOf(record), record);
    }
    return [...good.values()];
  };

  const kinds: [string, StoredRecord[]][] = [];
  for (const [kind, records] of Object.entries(contents.kinds)) {
    const schema = Object.hasOwn(schemas, kind) ? schemas[kind as keyof typeof schemas] : undefined;
    const good = await sieve(kind, schema, records, ({ id }) => id);
    if (schema) kinds.push([kind, good]);
  }
  const removed = await sieve('removed', tombstoneSchema, contents.removed, ({ kind, id }) => `${kind}/${id}`);
  return { kinds: Object.fromEntries(kinds), removed };
}
