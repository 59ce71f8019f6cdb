import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { type Outcome, type Problem, problem } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import { badPartName, badPartSize, type PartSize } from '../../core/lumber/check-part.ts';
import type { Cut, Part } from '../../store/records/piece.ts';
import { formReader } from '../../ui/form-reader.ts';

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
  /** Whether adding it was tried: only then are its problems shown. */
  readonly tried: boolean;
}

export type PartField = Exclude<keyof PartForm, 'kind' | 'cut' | 'tried'>;

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
    tried: false,
  };
}

export interface ReadPart {
  /** The part, when nothing is wrong with it. */
  readonly part: Omit<Part, 'id'> | undefined;
  /** What is wrong, by field, in the order of entry. */
  readonly problems: ReadonlyMap<string, Problem>;
}

/** Reads and checks what was typed; `unit` is what a bare number means. */
export function readPartForm(form: PartForm, unit: 'in' | 'mm'): ReadPart {
  const { problems, read } = formReader();
  const size = (field: PartSize, parse: (text: string) => Outcome<number>): number =>
    read(
      field,
      checked(parse(form[field]), (value) => badPartSize(field, value)),
    ) ?? 0;
  const length = (text: string) => parseLength(text, unit);
  read('species', form.species === '' ? problem('species', 'Choose the wood.') : undefined);
  read('name', badPartName(form.name));
  const sizes = {
    quantity: size('quantity', parseNumber),
    length: size('length', length),
    width: size('width', length),
    thickness: size('thickness', length),
  };
  const part = { name: form.name.trim(), species: form.species, panel: form.kind === 'panel', cut: form.cut, ...sizes };
  return { part: problems.size === 0 ? part : undefined, problems };
}
