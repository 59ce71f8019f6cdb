import type { Meeting } from '../../store/records/piece.ts';

/** A joint of the trade: which part comes first, and how the two usually meet. */
export interface JointKind {
  readonly id: string;
  readonly name: string;
  readonly first: string;
  readonly second: string;
  readonly meets: readonly [Meeting, Meeting];
}

const edge: Meeting = { surface: 'edge', grain: 'along' };
const end: Meeting = { surface: 'end', grain: 'across' };
const face = (grain: Meeting['grain']): Meeting => ({ surface: 'face', grain });
const mitre: Meeting = { surface: 'mitre', grain: 'across' };

export const jointKinds: readonly JointKind[] = [
  {
    id: 'cleat',
    name: 'Cleat across a panel',
    first: 'Panel',
    second: 'Cleat',
    meets: [face('across'), face('along')],
  },
  { id: 'top', name: 'Top on an apron or case', first: 'Top', second: 'Apron', meets: [face('across'), edge] },
  { id: 'seam', name: 'Edge to edge', first: 'Board', second: 'Other board', meets: [edge, edge] },
  { id: 'mitre', name: 'Mitred corner', first: 'Side', second: 'Other side', meets: [mitre, mitre] },
  { id: 'corner', name: 'Dovetailed or boxed corner', first: 'Side', second: 'Other side', meets: [end, end] },
  { id: 'rail', name: 'Rail into a leg or stile', first: 'Rail', second: 'Leg', meets: [end, edge] },
  { id: 'shelf', name: 'Shelf between sides', first: 'Shelf', second: 'Side', meets: [end, face('across')] },
  { id: 'breadboard', name: 'Breadboard end', first: 'Panel', second: 'End piece', meets: [end, edge] },
  {
    id: 'groove',
    name: 'Panel in grooves',
    first: 'Panel',
    second: 'Rail across its grain',
    meets: [face('across'), edge],
  },
  { id: 'faces', name: 'Face to face', first: 'Part', second: 'Other part', meets: [face('along'), face('along')] },
];

/** None for a kind that only a newer version knows. */
export const jointKind = (id: string): JointKind | undefined => jointKinds.find((kind) => kind.id === id);
