import type { Meeting } from '../../store/records/piece.ts';

/** A joint of the trade: its parts in order, and how two of them usually meet. */
export interface JointKind {
  readonly id: string;
  readonly name: string;
  readonly parts: readonly string[];
  readonly meets: readonly [Meeting, Meeting];
}

const kind = (id: string, name: string, parts: readonly string[], ...meets: JointKind['meets']): JointKind => ({
  id,
  name,
  parts,
  meets,
});

const edge: Meeting = { surface: 'edge', grain: 'along' };
const end: Meeting = { surface: 'end', grain: 'across' };
const face: Meeting = { surface: 'face', grain: 'along' };
const faceAcross: Meeting = { surface: 'face', grain: 'across' };
const mitre: Meeting = { surface: 'mitre', grain: 'across' };
const sides = ['Side', 'Other side'];

const cleat = kind('cleat', 'Cleat across a panel', ['Panel', 'Cleat'], faceAcross, face);

/** The first is what a new entry begins with. */
export const jointKinds = [
  cleat,
  kind('top', 'Top on an apron or case', ['Top', 'Apron'], faceAcross, edge),
  kind('seam', 'Edge to edge', ['Board', 'Other board'], edge, edge),
  kind('mitre', 'Mitred corner', sides, mitre, mitre),
  kind('corner', 'Dovetailed or boxed corner', sides, end, end),
  kind('rail', 'Rail into a leg or stile', ['Rail', 'Leg'], end, edge),
  kind('shelf', 'Shelf between sides', ['Shelf', 'Side'], end, faceAcross),
  kind('breadboard', 'Breadboard end', ['Panel', 'End piece'], end, edge),
  kind('groove', 'Panel in grooves', ['Panel', 'Rail across its grain'], faceAcross, edge),
  kind('faces', 'Face to face', ['Part', 'Other part'], face, face),
  // Not one joint but four: each is kept as a mitre.
  kind('case', 'Mitred case, four corners', ['One side', 'Next', 'Opposite', 'Last'], mitre, mitre),
] as const;

/** None for a kind that only a newer version knows. */
export const jointKind = (id: string): JointKind | undefined => jointKinds.find((kind) => kind.id === id);
