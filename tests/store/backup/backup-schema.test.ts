import { readFileSync, writeFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { backupFormat, backupFormatVersion, backupText } from '../../../src/store/backup/backup-text.ts';
import { damage } from '../../../src/store/backup/json-schema.ts';
import { schemas, tombstoneSchema } from '../../../src/store/backup/schemas.ts';
import { schemaVersion } from '../../../src/store/migrations/list.ts';
import { oneOfEach, sampleContents } from '../samples.ts';
import { mutate, randomFrom } from './mutate.ts';

const path = new URL('../../../src/store/backup/backup.schema.json', import.meta.url);

/** The documented schema of a backup file, from what the app itself checks. */
const made = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: 'Boardwright backup',
  description:
    'Everything a shop has recorded, in one JSON file (UTF-8). Lengths are millimetres, areas square metres, instants milliseconds since 1970-01-01 UTC, durations seconds, temperatures degrees Celsius, moisture and humidity percent. Properties not named here are allowed and preserved.',
  type: 'object',
  required: ['format', 'formatVersion', 'schema', 'madeAt', 'checksum', 'kinds', 'removed'],
  properties: {
    format: { const: backupFormat },
    formatVersion: { const: backupFormatVersion, description: 'Version of this envelope.' },
    schema: {
      const: schemaVersion,
      description: 'Version of the records; older ones are converted when they are read.',
    },
    app: { type: 'string' },
    madeAt: { type: 'number' },
    only: {
      type: 'string',
      description:
        'The name of what the file holds, when that is one piece or one delivery rather than everything. Its shop is then no more than the figures of the own woods that it uses.',
    },
    checksum: {
      type: 'object',
      description:
        'SHA-256, in lower-case hexadecimal, of the UTF-8 JSON text of {"kinds": ..., "removed": ...} without white space, the names of every object in order of their UTF-16 code units.',
      required: ['algorithm', 'value'],
      properties: { algorithm: { const: 'SHA-256' }, value: { type: 'string', pattern: '^[0-9a-f]{64}$' } },
    },
    kinds: {
      type: 'object',
      description: 'The records, by kind.',
      properties: Object.fromEntries(
        Object.entries(schemas).map(([kind, schema]) => [kind, { type: 'array', items: schema }]),
      ),
    },
    removed: {
      type: 'array',
      description: 'What stays of removed records: revision is one more than the last one of the record.',
      items: tombstoneSchema,
    },
  },
};

// After a change of the records: UPDATE_SCHEMA=1 npx vitest run --project store backup-schema, then the formatter.
if (process.env.UPDATE_SCHEMA) writeFileSync(path, JSON.stringify(made, null, 2));
const documented = JSON.parse(readFileSync(path, 'utf8'));

test('a fraction that no tape has is refused: nothing could be shown in it', () => {
  const nearest = (finest: number) =>
    damage(schemas.shop, { ...oneOfEach.shop, units: { unit: 'in', nearest: finest } });
  expect([0, 16.5, 1e9].map((finest) => nearest(finest)?.split(':')[0])).toEqual(Array(3).fill('units.nearest'));
  expect(nearest(64)).toBeUndefined();
});

test('the documented schema is the one that the app checks', () => {
  expect(documented).toEqual(JSON.parse(JSON.stringify(made)));
});

test('the app and an independent validator (Ajv) take in and refuse the same records', () => {
  let refused = 0;
  for (const [kind, record] of Object.entries(oneOfEach)) {
    const schema = schemas[kind as keyof typeof schemas];
    const byAjv = new Ajv2020({ strict: false }).compile(schema);
    for (let seed = 0; seed < 300; seed++) {
      const value = parsed(mutate(JSON.stringify(record), randomFrom(seed)));
      if (value === undefined) continue;
      expect(damage(schema, value) === undefined, `${kind} ${seed}: ${damage(schema, value)}`).toBe(byAjv(value));
      if (!byAjv(value)) refused++;
    }
  }
  expect(refused).toBeGreaterThan(300);
});

test('what is spoilt in a plan, and how wide the mitre saw cuts, are checked like all else', () => {
  const { plan, shop } = oneOfEach;
  const marked = (spoilt: unknown) => ({
    ...plan,
    blanks: plan.blanks.map((blank) => ({ ...blank, strips: blank.strips.map((strip) => ({ ...strip, spoilt })) })),
  });
  expect([damage(schemas.plan, marked(true)), damage(schemas.plan, marked('no'))]).toEqual([
    undefined,
    expect.any(String),
  ]);
  const cutting = (width: unknown) => ({
    ...shop,
    machines: { ...shop.machines, mitreSaw: { owned: true, kerf: 3, width } },
  });
  expect([damage(schemas.shop, cutting(150)), damage(schemas.shop, cutting('6 in'))]).toEqual([
    undefined,
    expect.any(String),
  ]);
});

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

describe('by an independent validator of JSON Schema 2020-12 (Ajv)', () => {
  const check = new Ajv2020({ strict: false }).compile(documented);

  test('a backup that the app makes is valid', async () => {
    expect([check(JSON.parse(await backupText(sampleContents(), schemaVersion, 5))), check.errors]).toEqual([
      true,
      null,
    ]);
  });

  test.each(Object.keys(oneOfEach))('a %s that lacks its id is not', async (kind) => {
    const file = JSON.parse(await backupText(sampleContents(), schemaVersion, 5));
    delete file.kinds[kind][0].id;
    expect(check(file)).toBe(false);
  });
});
