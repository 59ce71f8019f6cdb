import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { expect, test } from 'vitest';

const read = (folder: string): Map<string, string> =>
  new Map(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .map((path) => join(folder, path).replaceAll('\\', '/'))
      .filter((path) => /\.tsx?$/.test(path))
      .map((path) => [path, readFileSync(path, 'utf8')]),
  );

interface Exported {
  readonly file: string;
  readonly name: string;
  /** From the declaration to its closing brace. */
  readonly lines: number;
  readonly docstring: string;
}

/** As the formatter leaves it: a declaration begins a line, and its closing brace or semicolon stands at the margin. */
const declaration =
  /^(?<docstring>\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?(?<code>export (?:function\*? |class )(?<name>\w+)[\s\S]*?\n\}|export const (?<arrow>\w+)(?:: [^=\n]+)? =(?: |\n {2})(?:<[^>]*>)?\([^)]*\)(?:: [^=]+)? =>(?:[^\n]*;|[\s\S]*?\n(?:\}|\S[^\n]*);| *\n[\s\S]*?;)$)/gm;

const exportedFrom = ([file, text]: readonly [string, string]): Exported[] =>
  [...text.matchAll(declaration)].map(({ groups: { docstring = '', code = '', name, arrow } = {} }) => ({
    file,
    name: name ?? arrow ?? '',
    lines: code.split('\n').length,
    docstring,
  }));

const sources = read('src');
const exported = [...sources].filter(([file]) => file.startsWith('src/core/')).flatMap(exportedFrom);

/** Names that each file of the core gives to files outside of its own folder: `file name`. */
const asked = new Set(
  [...sources].flatMap(([file, text]) =>
    [...text.matchAll(/import (?:type )?\{([^}]*)\} from '(\.[^']+)'/g)].flatMap(([, names = '', from = '']) => {
      const target = normalize(join(dirname(file), from)).replaceAll('\\', '/');
      return dirname(target) === dirname(file) ? [] : names.split(',').map((name) => `${target} ${name.trim()}`);
    }),
  ),
);

const where = ({ file, name }: Exported) => `${file} ${name}`;
/** A signature, one statement and a brace speak for themselves. */
const isLong = ({ lines }: Exported) => lines > 3;
/** What the rest of the app may ask: more than a few lines, imported from outside of its folder. */
const isPublic = (one: Exported) => one.lines > 5 && asked.has(where(one));
/** These write, read and keep account of answers: no figure of the trade is made in them that could have a source. */
const holdsNoFigures = ({ file }: Exported) => /^src\/core\/(answer|steps)\//.test(file);

test('the functions of the core are found', () => {
  const names = exported.map(({ name }) => name);
  const unread = [...sources]
    .filter(([file]) => file.startsWith('src/core/'))
    .flatMap(([, text]) => [...text.matchAll(/^export function\*? (\w+)/gm)].map(([, name]) => name ?? ''))
    .filter((name) => !names.includes(name));
  expect(unread).toEqual([]);
  expect(names).toEqual(expect.arrayContaining(['surfaceMeasure', 'seamArea', 'planBreakdown', 'CheapestCover']));
  expect(exported.filter(isPublic).length).toBeGreaterThan(100);
});

test('an exported function of the core says what it is', () => {
  expect(exported.filter((one) => isLong(one) && one.docstring === '').map(where)).toEqual([]);
});

test('one that the rest of the app may ask has a worked example', () => {
  expect(exported.filter((one) => isPublic(one) && !/^ \* Example: /m.test(one.docstring)).map(where)).toEqual([]);
});

test('one that makes figures for the rest of the app has a source', () => {
  const lacking = exported.filter(
    (one) => isPublic(one) && !holdsNoFigures(one) && !/^ \* Source: /m.test(one.docstring),
  );
  expect(lacking.map(where)).toEqual([]);
});

test('the source is the last thing that a docstring says, after the example', () => {
  const wrong = exported.filter(({ docstring }) => /\* Source: [\s\S]*\* (Example|Valid|Errors)/.test(docstring));
  expect(wrong.map(where)).toEqual([]);
});
