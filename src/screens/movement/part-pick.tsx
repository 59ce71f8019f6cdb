import type { Part } from '../../store/records/piece.ts';
import { Pick } from '../../ui/fields.tsx';

interface Props {
  parts: readonly Part[];
  value: string;
  onInput(partId: string): void;
}

export function PartPick({ parts, ...rest }: Props) {
  return <Pick label="Part" options={parts.map(({ id, name }) => ({ value: id, label: name }))} {...rest} />;
}

/** The part that moves most is the one to look at first: the widest. */
export const widestOf = (parts: readonly Part[]): Part | undefined =>
  parts.reduce<Part | undefined>((widest, part) => (widest && widest.width >= part.width ? widest : part), undefined);
