import type { Outcome } from '../../core/answer/problem.ts';
import { type FoldedPanel, foldedPanel } from '../../core/breakdown/folded-panel.ts';
import { foldOf, type PartFold } from '../../store/records/part-fold.ts';
import type { Part } from '../../store/records/piece.ts';

/** A square corner, mitred, with nothing to trim beside the kerf. */
const squareCorner = { degrees: 90, trim: 0 };

/** The part as one long panel with the place of each section and cut; undefined when it doesn't fold. */
export function foldLayout(part: Part, kerf: number): Outcome<FoldedPanel> | undefined {
  const fold = foldOf(part);
  if (!fold) return undefined;
  const sections = fold.sections.map(({ name, length }) => ({ id: name, length }));
  const corners = fold.corners.map(({ degrees, trim }) => ({ corner: degrees, trim }));
  const { id, species, quantity, width, thickness } = part;
  return foldedPanel({ id, species, quantity, width, thickness }, sections, corners, kerf);
}

/** Two sections as long as each other round a square corner, which come out of the panel as it is. */
export function firstFold(part: Part, kerf: number): PartFold {
  const length = (part.length - kerf * Math.SQRT2) / 2;
  return {
    sections: [
      { name: 'First', length },
      { name: 'Second', length },
    ],
    corners: [squareCorner],
  };
}

export const withSection = ({ sections, corners }: PartFold): PartFold => ({
  sections: [...sections, { name: `Part ${sections.length + 1}`, length: sections.at(-1)?.length ?? 300 }],
  corners: [...corners, squareCorner],
});

/** Without its last section; a panel of one section doesn't fold. */
export const withoutSection = ({ sections, corners }: PartFold): PartFold | undefined =>
  sections.length > 2 ? { sections: sections.slice(0, -1), corners: corners.slice(0, -1) } : undefined;

export const changeSection = (fold: PartFold, at: number, change: Partial<PartFold['sections'][number]>): PartFold => ({
  ...fold,
  sections: fold.sections.map((section, n) => (n === at ? { ...section, ...change } : section)),
});

export const changeCorner = (fold: PartFold, at: number, change: Partial<PartFold['corners'][number]>): PartFold => ({
  ...fold,
  corners: fold.corners.map((corner, n) => (n === at ? { ...corner, ...change } : corner)),
});
