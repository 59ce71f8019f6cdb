import { type FormRead, readTexts } from '../../app/form.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import type { Outcome } from '../../core/answer/problem.ts';
import { badPartSize, type PartSize, partName } from '../../core/lumber/check-part.ts';
import type { Cut, Part } from '../../store/records/piece.ts';
import { readLength, writeLength } from '../../ui/length-text.ts';
import { chosenWood } from '../../ui/species-pick.tsx';

/** A part as it is typed; kept through a killed tab. A change of shape takes a new draft key. */
export interface PartForm {
  readonly kind: 'panel' | 'solid';
  readonly species: string;
  readonly cut: Cut;
  readonly name: string;
  readonly quantity: string;
  readonly length: string;
  readonly width: string;
  readonly thickness: string;
}

/** An empty form for the next part: kind, wood, cut and thickness are those of the last. */
export function nextForm(last: Omit<Part, 'id'> | undefined, species: string): PartForm {
  return {
    kind: last && !last.panel ? 'solid' : 'panel',
    species: last?.species ?? species,
    cut: last?.cut ?? 'flat',
    name: '',
    quantity: '1',
    length: '',
    width: '',
    thickness: last ? writeLength(last.thickness) : '',
  };
}

const size = (field: PartSize, parse: (text: string) => Outcome<number>) => (text: string) =>
  checked(parse(text), (value) => badPartSize(field, value));

/** What the form says: the part, or what is wrong at which entry. A thickness that stands as carried over is the last part's own. */
export function readPartForm(form: PartForm, last?: Omit<Part, 'id'>): FormRead<Omit<Part, 'id'>> {
  const thickness = (text: string) =>
    last && text === writeLength(last.thickness) ? last.thickness : readLength(text);
  const { value, problems } = readTexts(
    {
      species: chosenWood,
      name: partName,
      quantity: size('quantity', parseNumber),
      length: size('length', readLength),
      width: size('width', readLength),
      thickness: size('thickness', thickness),
    },
    form,
  );
  return { value: value && { ...value, panel: form.kind === 'panel', cut: form.cut }, problems };
}
