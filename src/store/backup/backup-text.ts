import type { Contents } from '../contents.ts';
import { checksum } from './checksum.ts';
import { contentsText } from './contents-text.ts';

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
  /** What it holds, when that is one piece or one delivery rather than everything. */
  readonly only?: string;
  readonly checksum: { readonly algorithm: 'SHA-256'; readonly value: string };
}

/** The text of a backup file that holds these contents; `only` names them when they are a part. */
export async function backupText(contents: Contents, schema: number, madeAt: number, only?: string): Promise<string> {
  const text = await contentsText(contents);
  const about: Omit<BackupFile, keyof Contents> = {
    format: backupFormat,
    formatVersion: backupFormatVersion,
    schema,
    app: 'Boardwright',
    madeAt,
    ...(only === undefined ? {} : { only }),
    checksum: { algorithm: 'SHA-256', value: await checksum(text) },
  };
  return `${JSON.stringify(about).slice(0, -1)},${text.slice(1)}`;
}
