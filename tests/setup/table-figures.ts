import type { SourceId } from '../../src/core/answer/source-id.ts';

/** Figures of a table with what they belong to: `cherry, black: coefficients`. */
export interface TableFigure {
  readonly of: string;
  readonly figures: string;
  readonly source: SourceId;
}

/** The figures of a table, gathered at the objects that carry their source. */
export function tableFigures(value: unknown, of = ''): TableFigure[] {
  if (typeof value !== 'object' || value === null) return [];
  const { source } = value as { readonly source?: SourceId };
  const name = joined(of, labelOf(value));
  const inner = Object.entries(value).flatMap(([key, part]) =>
    tableFigures(part, joined(name, Array.isArray(value) || labelOf(part) !== '' ? '' : key)),
  );
  const figures = source === undefined ? '' : ownFigures(value).join(', ');
  return source === undefined || figures === '' ? inner : [{ of: name, figures, source }, ...inner];
}

const joined = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join(': ');

function labelOf(value: unknown): string {
  const { name, label, id } = (value ?? {}) as Readonly<Record<string, unknown>>;
  const [found = ''] = [name, label, id].filter((one) => typeof one === 'string');
  return found;
}

/** `radial 0.00126`: the numbers in an object and below it, as far as no other source takes over. */
function ownFigures(value: object, path = ''): string[] {
  const { least, most } = value as { readonly least?: number; readonly most?: number };
  if (least !== undefined && most !== undefined) return [`${path} ${least === most ? least : `${least} to ${most}`}`];
  return Object.entries(value).flatMap(([key, inner]) => {
    const at = path === '' ? key : `${path} ${key}`;
    if (typeof inner === 'number') return [`${at} ${Number(inner.toPrecision(9))}`];
    return typeof inner === 'object' && inner !== null && !('source' in inner) ? ownFigures(inner, at) : [];
  });
}
