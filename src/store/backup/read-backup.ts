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
const tooBig = { kind: 'tooBig' } as const;

/** A record that can't be taken in, as it stood in the file. */
export interface Damaged {
  readonly kind: string;
  readonly record: unknown;
  readonly why: string;
}

export type ReadOutcome =
  | typeof tooBig
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
  if (size > largestBackup) return tooBig;
  const parsed = parse(typeof file === 'string' ? file : await file.text());
  if (parsed === undefined) return { kind: 'notJson' };
  if (!isObject(parsed) || parsed.format !== backupFormat || !isObject(parsed.kinds)) return { kind: 'notBackup' };
  const { formatVersion, schema } = parsed;
  if (!isVersion(formatVersion) || !isVersion(schema)) return { kind: 'notBackup' };
  if (formatVersion > backupFormatVersion || schema > schemaVersion) return { kind: 'newer' };

  const lists = Object.entries(parsed.kinds).map(([kind, records]) => [kind, listed(records)] as const);
  const removed = listed(parsed.removed);
  if (lists.reduce((sum, [, records]) => sum + records.length, removed.length) > mostRecords) return tooBig;
  const damaged: Damaged[] = [];
  // What can't even be called a record goes first, so that migrations meet nothing monstrous.
  const raw = await sieve({ kinds: Object.fromEntries(lists), removed } as unknown as Contents, damaged, notRecord);
  let converted: Contents;
  try {
    converted = convert(raw, schema, migrations);
  } catch (error) {
    return { kind: 'notConverted', why: error instanceof Error ? error.message : String(error) };
  }
  const contents = await sieve(converted, damaged, notOfThisApp());
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

/** What should be a list of records; anything else is one that is none. */
const listed = (records: unknown): unknown[] => (records === undefined ? [] : [records].flat());

/** Why a record can't be taken in; undefined when it can. */
type Fault = (kind: string, record: StoredRecord | Tombstone) => string | undefined;

/** The contents without the records in which `fault` finds one: those are put to the damaged. */
async function sieve(contents: Contents, damaged: Damaged[], fault: Fault): Promise<Contents> {
  let looked = 0;
  const good = async <T extends StoredRecord | Tombstone>(kind: string, records: readonly T[]): Promise<T[]> => {
    const sound: T[] = [];
    for (const record of records) {
      looked += 1;
      if (looked % 500 === 0) await new Promise((resolve) => setTimeout(resolve));
      const why = fault(kind, record);
      if (why) damaged.push({ kind, record, why });
      else sound.push(record);
    }
    return sound;
  };
  const kinds: [string, StoredRecord[]][] = [];
  for (const [kind, records] of Object.entries(contents.kinds)) kinds.push([kind, await good(kind, records)]);
  return { kinds: Object.fromEntries(kinds), removed: await good('removed', contents.removed) };
}

const notRecord: Fault = (_, record) => (isObject(record) ? unsound(record) : 'not a record');

const known: Readonly<Record<string, Schema>> = { ...schemas, removed: tombstoneSchema };

function notOfThisApp(): Fault {
  const met = new Set<string>();
  return (kind, record) => {
    const schema = Object.hasOwn(known, kind) ? known[kind] : undefined;
    if (!schema) return 'a kind of record that this app does not know';
    const why = damage(schema, record);
    if (why) return why;
    const key = `${kind}/${kind === 'removed' ? (record as Tombstone).kind : ''}/${record.id}`;
    if (met.has(key)) return 'there twice';
    met.add(key);
    return undefined;
  };
}
