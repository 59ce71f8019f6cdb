import { type Outcome, type Problem, problem } from '../core/answer/problem.ts';
import type { BreakdownProblem } from '../core/breakdown/problem-types.ts';

type Kind = 'number' | 'string' | 'boolean';
type Shape = Readonly<Record<string, Kind>>;

const shop: Shape = {
  jointerWidth: 'number',
  planerWidth: 'number',
  ripKerf: 'number',
  crosscutKerf: 'number',
  edgeAllowance: 'number',
  lengthAllowance: 'number',
  faceAllowance: 'number',
  minStrip: 'number',
  maxStrip: 'number',
};
const board: Shape = {
  id: 'string',
  species: 'string',
  thickness: 'number',
  width: 'number',
  length: 'number',
  cup: 'number',
  bow: 'number',
};
const part: Shape = {
  id: 'string',
  species: 'string',
  quantity: 'number',
  length: 'number',
  width: 'number',
  thickness: 'number',
  panel: 'boolean',
};
const clear: Shape = { start: 'number', length: 'number', offset: 'number', width: 'number' };
const cutBlank: Shape = { board: 'string', start: 'number', length: 'number' };
const cutStrip: Shape = { width: 'number', part: 'string', unit: 'number' };

/** Reads a breakdown problem: the shapes are looked at here, the sense of the figures by the core. */
export function readBreakdown(input: unknown): Outcome<BreakdownProblem> {
  const asked = record(input);
  const wrong =
    fields(asked.shop, 'shop', shop) ??
    flatteningWay(record(asked.shop).flattenBy) ??
    rows(
      asked.boards,
      'boards',
      board,
      (row, at) => flag(row, at, 'goodFace') ?? optionalRows(row.clear, `${at}.clear`, clear),
    ) ??
    rows(asked.parts, 'parts', part) ??
    optionalRows(asked.cut, 'cut', cutBlank, (row, at) => rows(row.strips, `${at}.strips`, cutStrip)) ??
    wishes(asked.wishes);
  return wrong ?? (input as BreakdownProblem);
}

const record = (value: unknown): Record<string, unknown> =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};

function fields(value: unknown, at: string, shape: Shape): Problem | undefined {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return problem(at, `${at} is missing, or not an object.`);
  for (const [name, kind] of Object.entries(shape))
    if (typeof record(value)[name] !== kind) return problem(`${at}.${name}`, `${name} is missing, or not a ${kind}.`);
  return undefined;
}

type Look = (row: Record<string, unknown>, at: string) => Problem | undefined;

function rows(value: unknown, at: string, shape: Shape, further: Look = () => undefined): Problem | undefined {
  if (!Array.isArray(value)) return problem(at, `${at} is missing, or not a list.`);
  for (const [index, row] of value.entries()) {
    const wrong = fields(row, `${at}.${index}`, shape) ?? further(record(row), `${at}.${index}`);
    if (wrong) return wrong;
  }
  return undefined;
}

const optionalRows = (value: unknown, at: string, shape: Shape, further?: Look): Problem | undefined =>
  value === undefined ? undefined : rows(value, at, shape, further);

const ways = ['jointer', 'planer-sled', 'hand-plane'];

const flatteningWay = (way: unknown): Problem | undefined =>
  way === undefined || ways.includes(way as string)
    ? undefined
    : problem('shop.flattenBy', `flattenBy must be one of: ${ways.join(', ')}.`);

const flag = (row: Record<string, unknown>, at: string, name: string): Problem | undefined =>
  row[name] === undefined || typeof row[name] === 'boolean'
    ? undefined
    : problem(`${at}.${name}`, `${name} must be true or false.`);

function ids(row: Record<string, unknown>, name: string, what: string): Problem | undefined {
  const list = row[name];
  return list === undefined || (Array.isArray(list) && list.every((id) => typeof id === 'string'))
    ? undefined
    : problem(`wishes.${name}`, `${name} must be a list of ${what} ids.`);
}

function wishes(value: unknown): Problem | undefined {
  if (value === undefined) return undefined;
  const asked = record(value);
  const { fix, together } = asked;
  return (
    fields(value, 'wishes', {}) ??
    ids(asked, 'keepOut', 'board') ??
    ids(asked, 'show', 'part') ??
    flag(asked, 'wishes', 'longLeftovers') ??
    flag(asked, 'wishes', 'fewerSeams') ??
    optionalRows(fix, 'wishes.fix', { part: 'string', board: 'string' }) ??
    optionalRows(together, 'wishes.together', { part: 'string', boards: 'number' })
  );
}
