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

/** Which part it is about, and what its movement rests on where that is not the handbook. */
export function PartPick({ parts, ...rest }: Props) {
  const part = parts.find(({ id }) => id === rest.value);
  const wood = part && woodOfPart(part);
  // Any two moistures: a figure is a guess, or the maker's own, whatever they are.
  const rate = wood && movementRate(wood.figures, wood.cut, 8, 12);
  return (
    <>
      <Pick label="Part" options={parts.map(({ id, name }) => ({ value: id, label: name }))} {...rest} />
      {rate && !isProblem(rate) && <FiguresNote {...rate} />}
    </>
  );
}

/** The part that moves most is the one to look at first: the widest. */
export const widestOf = (parts: readonly Part[]): Part | undefined =>
  parts.reduce<Part | undefined>((widest, part) => (widest && widest.width >= part.width ? widest : part), undefined);
