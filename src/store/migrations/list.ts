import { firstSchema } from './001-first-schema.ts';
import type { Migration } from './migration.ts';

/** Every step, in order, without a gap. */
export const migrations: readonly Migration[] = [firstSchema];

export const schemaVersion = migrations.length;
