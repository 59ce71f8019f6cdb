import type { Outcome } from '../../core/answer/problem.ts';
import { type FoldedPanel, foldedPanel, type PanelFold } from '../../core/breakdown/folded-panel.ts';
import { foldOf } from '../../store/records/part-fold.ts';
import type { Part } from '../../store/records/piece.ts';

/** A square corner, mitred, with nothing to trim beside the kerf. */
const squareCorner = { degrees: 90, trim: 0 };

/** The part as one long panel with the place of each section and cut; undefined when it doesn't fold. */
export function foldLayout(part: Part, kerf: number): Outcome<FoldedPanel> | undefined {
  const fold = foldOf(part);
  return fold && foldedPanel(fold, kerf);
}

/** Two sections as long as each other round a square corner, which come out of the panel as it is. */
export function firstFold(part: Part, kerf: number): PanelFold {
  const length = (part.length - kerf * Math.SQRT2) / 2;
  return { sections: ['First', 'Second'].map((name) => ({ name, length })), corners: [squareCorner] };
}

export const withSection = ({ sections, corners }: PanelFold): PanelFold => ({
  sections: [...sections, { name: `Part ${sections.length + 1}`, length: sections.at(-1)?.length ?? 300 }],
  corners: [...corners, squareCorner],
});

/** Without its last section; a panel of one section doesn't fold. */
export const withoutSection = ({ sections, corners }: PanelFold): PanelFold | undefined =>
  sections.length > 2 ? { sections: sections.slice(0, -1), corners: corners.slice(0, -1) } : undefined;

/** The list with something else about the one at this place. */
export const changedAt = <T>(list: readonly T[], at: number, change: Partial<T>): T[] =>
  list.map((one, place) => (place === at ? { ...one, ...change } : one));
