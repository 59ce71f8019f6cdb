import type { PanelFold } from '../../core/breakdown/folded-panel.ts';
import type { Part } from './piece.ts';

/** The fold of a part, when it has one that makes sense. */
export function foldOf({ fold, panel }: Pick<Part, 'fold' | 'panel'>): PanelFold | undefined {
  if (!panel || typeof fold !== 'object' || fold === null) return undefined;
  const { sections, corners } = fold as unknown as PanelFold;
  const sound =
    Array.isArray(sections) &&
    Array.isArray(corners) &&
    corners.length === sections.length - 1 &&
    sections.every((section) => typeof section?.name === 'string' && typeof section.length === 'number') &&
    corners.every((corner) => typeof corner?.degrees === 'number' && typeof corner.trim === 'number');
  return sound ? { sections, corners } : undefined;
}
