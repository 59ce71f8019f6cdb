import type { Part } from './piece.ts';

/** A panel that is cut across later and folds round corners: its sections in order along the grain. */
export interface PartFold {
  readonly sections: readonly { readonly name: string; readonly length: number }[];
  /** One between each two sections: the angle between their outsides in degrees, and what is trimmed beside the kerf. */
  readonly corners: readonly { readonly degrees: number; readonly trim: number }[];
}

/** The fold of a part, when it has one that makes sense. */
export function foldOf({ fold, panel }: Pick<Part, 'fold' | 'panel'>): PartFold | undefined {
  if (!panel || typeof fold !== 'object' || fold === null) return undefined;
  const { sections, corners } = fold as unknown as PartFold;
  const sound =
    Array.isArray(sections) &&
    Array.isArray(corners) &&
    corners.length === sections.length - 1 &&
    sections.every((section) => typeof section?.name === 'string' && typeof section.length === 'number') &&
    corners.every((corner) => typeof corner?.degrees === 'number' && typeof corner.trim === 'number');
  return sound ? { sections, corners } : undefined;
}
