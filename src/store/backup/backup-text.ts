import type { Contents } from '../contents.ts';
import { checksum } from './checksum.ts';

export const backupFormat = 'boardwright-backup';
export const backupFormatVersion = 1;

/** A backup file; `backup.schema.json` describes it for other programs. */
export interface BackupFile extends Contents {
  readonly format: typeof backupFormat;
  readonly formatVersion: number;
  /** Version of the records' schema. */
  readonly schema: number;
  readonly app: string;
  readonly madeAt: number;
  readonly checksum: { readonly algorithm: 'SHA-256'; readonly value: string };
}

/** The text of a backup file that holds these contents. */
export async function backupText(contents: Contents, schema: number, madeAt: number): Promise<string> {
  const file: BackupFile = {
    format: backupFormat,
    formatVersion: backupFormatVersion,
    schema,
    app: 'Boardwright',
    madeAt,
    checksum: { algorithm: 'SHA-256', value: await checksum(contents) },
    kinds: contents.kinds,
    removed: contents.removed,
  };
  return JSON.stringify(file);
}
