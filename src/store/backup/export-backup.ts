import { schemaVersion } from '../migrations/list.ts';
import { backupText } from './backup-text.ts';
import { type Extract, extractContents } from './extract-contents.ts';
import { failedContents } from './failed-contents.ts';
import { mergeContents } from './merge.ts';
import { storedContents } from './stored-contents.ts';

export interface Export {
  /** Suggested name of the file. */
  readonly name: string;
  readonly text: string;
}

/** One file with everything, writes that failed included. Works also while the database can't be migrated. */
export async function exportBackup(now = Date.now()): Promise<Export> {
  const { everything, schema } = await allContents();
  return { name: fileName('boardwright', now), text: await backupText(everything, schema, now) };
}

/** A file with one piece or one delivery, for another phone; `called` is what the maker calls it. */
export async function exportExtract(what: Extract, called: string, now = Date.now()): Promise<Export> {
  const { everything, schema } = await allContents();
  const slug = called
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
  return {
    name: fileName(`boardwright-${slug || what.kind}`, now),
    text: await backupText(extractContents(everything, what), schema, now, called),
  };
}

async function allContents() {
  const { contents, schema } = await storedContents();
  return { everything: mergeContents(contents, failedContents()).merged, schema };
}

/** One file with the writes that failed, for when the database can't be read at all. */
export async function exportFailedWrites(now = Date.now()): Promise<Export> {
  return {
    name: fileName('boardwright-not-stored', now),
    text: await backupText(failedContents(), schemaVersion, now),
  };
}

const fileName = (start: string, now: number) => `${start}-${new Date(now).toISOString().slice(0, 10)}.json`;
