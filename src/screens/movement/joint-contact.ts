import type { Joint, Meeting, Part } from '../../store/records/piece.ts';

export interface Contact {
  /** Along the seam, mm. */
  readonly length: number;
  /** Across the seam, mm; where a face lies on another part. */
  readonly breadth?: number;
}

const alongSeam = (part: Part, { grain }: Meeting): number => (grain === 'along' ? part.length : part.width);

function acrossSeam(part: Part, { surface, grain }: Meeting): number {
  if (surface !== 'face') return part.thickness;
  return grain === 'along' ? part.width : part.length;
}

/** How much two parts touch: as the maker measured, or as if the smaller lies fully on the larger. */
export function jointContact(
  { length, breadth }: Pick<Joint, 'length' | 'breadth'>,
  parts: readonly [Part, Part],
  meets: readonly [Meeting, Meeting],
): Contact {
  const smaller = (size: typeof alongSeam) => Math.min(size(parts[0], meets[0]), size(parts[1], meets[1]));
  const faces = meets.some(({ surface }) => surface === 'face') && meets.every(({ surface }) => surface !== 'end');
  return { length: length ?? smaller(alongSeam), ...(faces && { breadth: breadth ?? smaller(acrossSeam) }) };
}
