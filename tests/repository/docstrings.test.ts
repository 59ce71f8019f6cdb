import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Documented, documentedIn } from '../setup/docstrings.ts';
import * as samples from '../setup/example-samples.ts';
import { runExample } from '../setup/examples.ts';

const sources = new Map(
  readdirSync('src', { recursive: true, encoding: 'utf8' })
    .map((path) => join('src', path).replaceAll('\\', '/'))
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => [path, readFileSync(path, 'utf8')]),
);
const core = [...sources]
  .filter(([file]) => file.startsWith('src/core/'))
  .flatMap(([file, text]) => documentedIn(file, text));

/** Names that each file of the core gives to files outside of its own folder: `file name`. */
const asked = new Set(
  [...sources].flatMap(([file, text]) =>
    [...text.matchAll(/import (?:type )?\{([^}]*)\} from '(\.[^']+)'/g)].flatMap(([, names = '', from = '']) => {
      const target = normalize(join(dirname(file), from)).replaceAll('\\', '/');
      return dirname(target) === dirname(file) ? [] : names.split(',').map((name) => `${target} ${name.trim()}`);
    }),
  ),
);

const where = ({ file, name }: Documented) => `${file} ${name}`;
const lacking = (functions: readonly Documented[], holds: (one: Documented) => boolean) =>
  functions.filter((one) => !holds(one)).map(where);
const has = ({ tags }: Documented, wanted: string) => tags.some(({ tag, text }) => tag === wanted && text !== '');

/** What the rest of the app may ask: imported from outside of its folder. */
const open = core.filter((one) => asked.has(where(one)));
/** Those that say more than what they are: they must say all. */
const full = core.filter(({ tags }) => tags.length > 0);
/** These write, read and keep account of answers: no figure of the trade is made in them that could have a range or a source. */
const holdsNoFigures = ({ file }: Documented) => /^src\/core\/(answer|steps)\//.test(file);

describe('docstrings of the core', () => {
  test('its functions are found', () => {
    const names = core.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(['surfaceMeasure', 'seamArea', 'planBreakdown', 'CheapestCover']));
    const unread = [...sources]
      .filter(([file]) => file.startsWith('src/core/'))
      .flatMap(([, text]) => [...text.matchAll(/^export (?:function\*?|class) (\w+)/gm)].map(([, name]) => name ?? ''));
    expect(unread.filter((name) => !names.includes(name))).toEqual([]);
    expect(open.length).toBeGreaterThan(100);
  });

  test('each says what it computes', () => {
    expect(lacking(core, ({ summary }) => summary !== undefined && summary !== '')).toEqual([]);
  });

  test('one that the rest of the app may ask says all', () => {
    expect(lacking(open, (one) => full.includes(one))).toEqual([]);
  });

  test('one that says more than what it computes gives inputs, result and an example', () => {
    expect(lacking(full, (one) => has(one, 'returns') && has(one, 'example'))).toEqual([]);
    const inputs = lacking(full, ({ parameters, tags }) => {
      const named = tags.filter(({ tag }) => tag === 'param').map(({ text }) => text.split(/\s/));
      return (
        named.length === parameters.length &&
        named.every(([name, ...words], at) => words.length > 0 && (parameters[at] === '' || parameters[at] === name))
      );
    });
    expect(inputs).toEqual([]);
  });

  test('and errors, where a problem may come in place of the result', () => {
    expect(lacking(full, (one) => one.mayFail === has(one, 'errors'))).toEqual([]);
  });

  test('and where it is valid and the source, where it makes figures', () => {
    expect(lacking(full, (one) => holdsNoFigures(one) || (has(one, 'valid') && has(one, 'source')))).toEqual([]);
  });

  test('in this order, and in no other words', () => {
    const order = ['param', 'returns', 'valid', 'errors', 'example', 'source'];
    const places = ({ tags }: Documented) => tags.map(({ tag }) => order.indexOf(tag));
    expect(lacking(full, (one) => String(places(one)) === String(places(one).toSorted((a, b) => a - b)))).toEqual([]);
    expect(lacking(full, (one) => !places(one).includes(-1))).toEqual([]);
    const others = /^(Computes|Inputs?|Results?|Valid|Errors|Example|Source)\b.*:|^- `/m;
    expect(
      lacking(core, ({ summary = '', tags }) =>
        [summary, ...tags.map(({ text }) => text)].every((text) => !others.test(text)),
      ),
    ).toEqual([]);
  });
});

const modules = {
  ...import.meta.glob<Record<string, unknown>>('../../src/core/**/*.ts', { eager: true }),
  ...import.meta.glob<Record<string, unknown>>('../../src/tables/*.ts', { eager: true }),
};
const everything = { ...Object.assign({}, ...Object.values(modules)), ...samples };

describe('worked examples', () => {
  const examples = full.flatMap((one) =>
    one.tags.filter(({ tag }) => tag === 'example').map(({ text }) => ({ ...one, text })),
  );

  test.each(examples)('of $name: $text', ({ file, text }) => {
    const { got, stated } = runExample(text, { ...everything, ...modules[`../../${file}`] });
    expect(text).toContain('// =>');
    // That would match anything.
    expect(stated).not.toEqual({});
    if (typeof stated === 'object' && stated !== null) expect(got).toMatchObject(stated);
    else expect(got).toEqual(stated);
  });
});
