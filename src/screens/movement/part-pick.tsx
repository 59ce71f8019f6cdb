import { isProblem } from '../../core/answer/problem.ts';
import { movementRate } from '../../core/movement/movement-rate.ts';
import type { Part } from '../../store/records/piece.ts';
import { Pick } from '../../ui/fields.tsx';
import { FiguresNote } from '../../ui/figures-note.tsx';
import { woodOfPart } from './wood-of-part.ts';

interface Props {
  parts: readonly Part[];
  value: string;
  onInput(partId: string): void;
}

export function PartPick({ parts, ...rest }: Props) {
  return <Pick label="Part" options={parts.map(({ id, name }) => ({ value: id, label: name }))} {...rest} />;
}

/** What a part's movement rests on, where that is not the handbook. */
export function PartNote({ part }: { part: Part }) {
  const { figures, cut } = woodOfPart(part);
  // Any two moistures: a figure is a guess, or the maker's own, whatever they are.
  const rate = movementRate(figures, cut, 8, 12);
  return isProblem(rate) ? null : <FiguresNote {...rate} />;
}

/** The part that moves most is the one to look at first: the widest. */
export const widestOf = (parts: readonly Part[]): Part | undefined =>
  parts.reduce<Part | undefined>((widest, part) => (widest && widest.width >= part.width ? widest : part), undefined);
