import { expect, it } from 'vitest';
import { ask } from '../../src/figure/ask.ts';
import { smallProblem } from '../core/breakdown/small-problem.ts';

/** One good input or more for each figure, with every field that it knows. */
const good: readonly (readonly [name: string, input: object])[] = [
  ['length', { text: '5 3/4', unit: 'in' }],
  ['length', { mm: 146.05, unit: 'in', nearest: 16 }],
  [
    'tally',
    {
      boards: [
        { quarters: 8, width: 158.75, length: 2438.4 },
        { thickness: 27, width: 150, farWidth: 200, length: 2000 },
      ],
    },
  ],
  ['moisture', { celsius: 21.1, humidity: 50 }],
  ['movement', { species: 'cherry, black', cut: 'flat', width: 400, from: 8, to: 11 }],
  [
    'movement',
    { shrinkage: { radial: 3.7, tangential: 7.1, volumetric: 11.5 }, cut: 'rift', width: 400, from: 8, to: 11 },
  ],
  [
    'flatness',
    {
      thickness: 28,
      width: 250,
      length: 2400,
      cup: 2.5,
      bow: 6,
      twist: 1,
      crook: 2,
      faceAllowance: 1,
      rips: 2,
      blankLength: 1000,
    },
  ],
  [
    'square',
    { front: 1800, right: 800, back: 1800, left: 800, diagonalAC: 1970.3, diagonalBD: 1969.3, precision: 0.5 },
  ],
  ['square', { length: 1800, width: 800, difference: 2, farEnd: 'square' }],
  ['square', { length: 1800, width: 800, diagonalAC: 1970, diagonalBD: 1969 }],
  [
    'gluing',
    {
      seams: [{ length: 1200, width: 20 }],
      adhesive: 'PVA',
      species: 'cherry',
      clampForce: 2000,
      outerBoard: 100,
      caul: 20,
      tool: 'brush',
      celsius: 20,
    },
  ],
  [
    'finish',
    { area: 3.2, coverage: 12, coats: 2, waste: 0.1, firstCoat: 1.2, containers: [{ litres: 0.35, price: 24 }] },
  ],
  ['finish', { area: 3.2, coverage: { least: 10, most: 14 }, coats: 2, containers: [{ litres: 1, price: 52 }] }],
  [
    'breakdown',
    {
      ...smallProblem,
      wishes: { keepOut: [], longLeftovers: true, fewerSeams: true },
      cut: [{ board: 'B1', start: 0, length: 500, strips: [{ width: 80, part: 'rail', unit: 1 }] }],
    },
  ],
];

/** What may stand where something else belongs; undefined leaves the field out. */
const nasty = [
  undefined,
  null,
  '',
  '5',
  'constructor',
  '__proto__',
  true,
  0,
  -1,
  1e-9,
  1e9,
  1e308,
  [],
  [null],
  {},
  { a: { b: [] } },
];

type Path = readonly string[];

const pathsIn = (value: unknown, path: Path = []): Path[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, inner]) => [[...path, key], ...pathsIn(inner, [...path, key])])
    : [];

function changed(input: object, path: Path, value: unknown): string {
  const copy = structuredClone(input) as Record<string, unknown>;
  const holder = path.slice(0, -1).reduce((at, key) => at[key] as Record<string, unknown>, copy);
  holder[path.at(-1) ?? ''] = value;
  return JSON.stringify(copy);
}

/** Some hundred plans are made where the input is still good: seconds, more on a busy machine. */
const patience = 60_000;

it.each(good)(
  '%s answers good input, and whatever is wrong in it with a problem that names a field',
  (name, input) => {
    expect(ask(name, JSON.stringify(input))).not.toHaveProperty('problem');
    for (const path of pathsIn(input))
      for (const value of nasty) {
        const asked = changed(input, path, value);
        const answer = ask(name, asked) as { problem?: { field: string; message: string } };
        if (!answer.problem) continue;
        expect(answer.problem.field, asked).not.toBe('');
        expect(answer.problem.message, asked).toMatch(/^(?!.*(NaN|Infinity|undefined|\[object|[{}–])).+[.?]$/);
      }
  },
  patience,
);

it('never leaves a field that is null or of the wrong type unanswered', () => {
  for (const [name, input] of good)
    for (const path of pathsIn(input).filter((path) => path.length === 1))
      expect(ask(name, changed(input, path, null)), `${name} ${path}`).toHaveProperty('problem');
});

it.each([
  ['nothing', ''],
  ['half an object', '{"mm":'],
  ['null', 'null'],
  ['a list', '[1]'],
  ['a number', '5'],
  ['brackets beyond count', '['.repeat(1e6)],
])('says that %s is no JSON object', (_, text) => {
  expect(ask('length', text)).toEqual({
    problem: { field: '', message: expect.stringMatching(/^The input is not (a )?JSON/) },
  });
});

it('names the field of a number beyond all measure, and refuses what is nested beyond all depth', () => {
  expect(ask('tally', '{"boards":[{"quarters":8,"width":1e999,"length":1}]}')).toMatchObject({
    problem: { field: 'boards.0.width' },
  });
  const depth = 50_000;
  const deep = `{"celsius":${'['.repeat(depth)}1${']'.repeat(depth)},"humidity":50}`;
  expect(ask('moisture', deep)).toMatchObject({ problem: { field: 'celsius' } });
});

it.each(['', 'nope', '../core/answer/range', 'constructor'])('lists the figures when asked for "%s"', (name) => {
  expect(ask(name, '{}')).toMatchObject({ problem: { field: 'name', message: /length, tally/ } });
});
