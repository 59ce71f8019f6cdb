import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { parseVolume } from '../../core/answer/parse-volume.ts';
import type { Worked } from '../../core/answer/worked.ts';
import {
  type Mix,
  type MixRatio,
  mixForTotal,
  mixFromPart,
  potLifeBatches,
} from '../../core/finishing/two-part-mix.ts';
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
  const minutes = (entry: 'potLife' | 'pace', name: string) => {
    const said = typed(`mix.${entry}`, mix[entry], (text) =>
      checked(parseNumber(text), (value) => badNumber('', name, value, 'count', { least: 1, most: 30 * 24 * 60 })),
    );
    return said && said * 60;
  };
  const asked: MixRatio = {
    a: part('a'),
    b: part('b'),
    by: mix.by,
    ...(mix.by === 'mass' && { densityA: part('densityA'), densityB: part('densityB') }),
  };
  // Any amount shows whether the ratio itself makes sense.
  const ratio = found(mixForTotal(1, asked), (field) => field.replace('ratio', 'mix')) && asked;
  const potLifeSeconds = minutes('potLife', 'The pot life');
  const paceSeconds = minutes('pace', 'The time for a coat');
  const left = typed('mix.left', mix.left, (text) => parseVolume(text, units.value.unit === 'in' ? 'floz' : 'ml'));
  return {
    ratio,
    potLifeSeconds,
    batches: potLifeSeconds && paceSeconds ? read('mix.pace', potLifeBatches(paceSeconds, potLifeSeconds)) : undefined,
    rest: ratio && left !== undefined ? read('mix.left', mixFromPart(mix.leftPart, left, ratio)) : undefined,
  };
}
