import { type FormRead, readTexts } from '../../app/form.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import type { Outcome } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import { badPartSize, type PartSize, partName } from '../../core/lumber/check-part.ts';
import type { Cut, Part } from '../../store/records/piece.ts';
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
export function nextForm(last: Part | undefined, species: string, thickness = ''): PartForm {
  return {
    kind: last && !last.panel ? 'solid' : 'panel',
    species: last?.species ?? species,
    cut: last?.cut ?? 'flat',
    name: '',
    quantity: '1',
    length: '',
    width: '',
    thickness,
  };
}

const size = (field: PartSize, parse: (text: string) => Outcome<number>) => (text: string) =>
  checked(parse(text), (value) => badPartSize(field, value));

/** What the form says: the part, or what is wrong at which entry. */
export function readPartForm(form: PartForm, unit: 'in' | 'mm'): FormRead<Omit<Part, 'id'>> {
  const length = (text: string) => parseLength(text, unit);
  const { value, problems } = readTexts(
    {
      species: chosenWood,
      name: partName,
      quantity: size('quantity', parseNumber),
      length: size('length', length),
      width: size('width', length),
      thickness: size('thickness', length),
    },
    form,
  );
  return { value: value && { ...value, panel: form.kind === 'panel', cut: form.cut }, problems };
}
