import type { Contents } from '../contents.ts';
import type { Migration } from './migration.ts';

/** Takes contents of schema version `from` through every later step. Throws when a step can't convert them. */
export function convert(contents: Contents, from: number, migrations: readonly Migration[]): Contents {
  return migrations
    .filter((step) => step.to > from)
    .reduce((current, step) => step.convert?.(current) ?? current, contents);
}
