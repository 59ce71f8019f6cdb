import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import { speciesName } from '../../ui/species-name.ts';

/** What the maker calls the boards and parts of a plan, by id. */
export interface Names {
  of(id: string): string;
  /** A part, and which of its pieces where it has several. */
  piece(id: string, unit: number): string;
}

export function namesOf(piece: Piece, rack: readonly Board[]): Names {
  const known = new Map([
    ...unique(rack.map(({ id, chalk }) => [id, chalk])),
    ...unique(piece.parts.map(({ id, name }) => [id, name])),
  ]);
  const several = new Set(piece.parts.filter(({ quantity }) => quantity > 1).map(({ id }) => id));
  const of = (id: string) => known.get(id) ?? `deleted ${id.slice(0, 4)}`;
  return { of, piece: (id, unit) => (several.has(id) ? `${of(id)} ${unit}` : of(id)) };
}

/** Names that two things share are counted: `Side`, `Side (2)`. */
function unique(named: readonly (readonly [id: string, name: string])[]): [id: string, name: string][] {
  const times = new Map<string, number>();
  return named.map(([id, name]) => {
    const time = (times.get(name) ?? 0) + 1;
    times.set(name, time);
    return [id, time === 1 ? name : `${name} (${time})`];
  });
}

/** A problem or a plan in the maker's own names, for what the core says about it: all words in it are ids but those of the shop. */
export const inNames = <T>(asked: T, names: Names): T =>
  JSON.parse(
    JSON.stringify(asked, (property, said) => {
      if (typeof said !== 'string' || property === 'flattenBy') return said;
      return property === 'species' ? speciesName(said) : names.of(said);
    }),
  );
