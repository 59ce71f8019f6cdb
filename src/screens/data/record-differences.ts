import type { StoredRecord } from '../../store/records/record.ts';

/** One property, however deep, that two sides of a record don't agree on. */
export interface RecordDifference {
  /** Where it stands: `parts`, `Door`, `far width`. */
  readonly path: readonly string[];
  /** Undefined where this side has nothing there. */
  readonly mine: unknown;
  readonly theirs: unknown;
}

type Tree = { readonly [name: string]: unknown };

const stamps = new Set(['id', 'created', 'updated', 'revision', 'demo']);

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;

/** What two sides of one record don't agree on, leaf by leaf, in the order in which they are kept; stamps left out. */
export const recordDifferences = (mine: StoredRecord, theirs: StoredRecord): RecordDifference[] =>
  leaves(mine as unknown as Tree, theirs as unknown as Tree, []);

function leaves(mine: Tree, theirs: Tree, path: readonly string[]): RecordDifference[] {
  return [...new Set([...Object.keys(mine), ...Object.keys(theirs)])].flatMap((name) => {
    if (path.length === 0 && stamps.has(name)) return [];
    const [a, b] = [own(mine, name), own(theirs, name)];
    const here = [...path, called(name, a ?? b)];
    if (isTree(a) && isTree(b)) return leaves(byIdentity(a), byIdentity(b), here);
    return Object.is(a, b) ? [] : { path: here, mine: a, theirs: b };
  });
}

const own = (tree: Tree, name: string): unknown => (Object.hasOwn(tree, name) ? tree[name] : undefined);

/** Members of a list are matched by their id where they have one, so that one more in between isn't a change of all. */
function byIdentity(value: Tree): Tree {
  if (!Array.isArray(value)) return value;
  return Object.fromEntries(value.map((item, at) => [isTree(item) && 'id' in item ? String(item.id) : `${at}`, item]));
}

/** A member of a list goes by its name, or by its place counted from 1; a property by its words. */
function called(name: string, value: unknown): string {
  if (isTree(value) && typeof value.name === 'string') return value.name;
  return /^\d+$/.test(name)
    ? `${Number(name) + 1}`
    : name.replace(/(?<=[a-z])[A-Z](?=[a-z])/g, (letter) => ` ${letter.toLowerCase()}`);
}
