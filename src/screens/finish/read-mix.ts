import { parseNumber } from '../../core/answer/parse-number.ts';
import { parseVolume } from '../../core/answer/parse-volume.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { type Mix, type MixRatio, mixFor, potLifeBatches } from '../../core/finishing/two-part-mix.ts';
import type { FormReader } from '../../ui/form-reader.ts';
import { units } from '../../ui/units.ts';
import type { MixText } from './finish-form.ts';

export interface ReadMix {
  readonly ratio: MixRatio | undefined;
  readonly potLifeSeconds: number | undefined;
  /** In how many batches a coat is mixed; undefined without a pot life or a pace. */
  readonly batches: Worked | undefined;
  /** What the rest of one part is good for. */
  readonly rest: Worked<Mix> | undefined;
}

/** Reads two parts as typed. Empty entries are not asked yet; the ratio is. */
export function readMix(mix: MixText, { read, typed, number, found }: FormReader): ReadMix {
  const part = (entry: 'a' | 'b' | 'densityA' | 'densityB') => number(`mix.${entry}`, mix[entry]);
  const asked: MixRatio = {
    a: part('a'),
    b: part('b'),
    by: mix.by,
    ...(mix.by === 'mass' && { densityA: part('densityA'), densityB: part('densityB') }),
  };
  // Any amount shows whether the ratio itself makes sense.
  const ratio = found(mixFor('all', 1, asked), (field) => field.replace('ratio', 'mix')) && asked;
  const potLife = typed('mix.potLife', mix.potLife, parseNumber);
  const pace = typed('mix.pace', mix.pace, parseNumber);
  // One of them alone is asked about with an hour for the other.
  const batches = found(potLifeBatches((pace ?? 60) * 60, (potLife ?? 60) * 60), (field) =>
    field === 'workSeconds' ? 'mix.pace' : 'mix.potLife',
  );
  const left = typed('mix.left', mix.left, (text) => parseVolume(text, units.value.unit === 'in' ? 'floz' : 'ml'));
  return {
    ratio,
    potLifeSeconds: potLife && potLife * 60,
    batches: potLife && pace ? batches : undefined,
    rest: ratio && left !== undefined ? read('mix.left', mixFor(mix.leftPart, left, ratio)) : undefined,
  };
}
