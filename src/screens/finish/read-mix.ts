import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { parseVolume } from '../../core/answer/parse-volume.ts';
import { isProblem, type Outcome, type Problem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import {
  type Batches,
  type Mix,
  type MixRatio,
  mixForTotal,
  mixFromPart,
  potLifeBatches,
} from '../../core/finishing/two-part-mix.ts';
import type { MixText } from './finish-form.ts';
import { formReader, isEmpty } from './form-reader.ts';

/** What is mixed for one coat. */
export interface CoatMix {
  readonly batches: Worked<Batches> | undefined;
  /** One batch; all of it where no pot life is given. */
  readonly each: Worked<Mix>;
}

export interface ReadMix {
  readonly ratio: MixRatio | undefined;
  readonly potLifeSeconds: number | undefined;
  /** What the rest of one part is good for. */
  readonly rest: Worked<Mix> | undefined;
  readonly problems: ReadonlyMap<string, Problem>;
}

const minutes = { above: 0, most: 30 * 24 * 60 };

/** Reads two parts as typed. Empty entries are not asked yet; the ratio is. */
export function readMix(mix: MixText, unit: 'in' | 'mm'): ReadMix {
  const { problems, read, found, number } = formReader();
  const density = (entry: 'densityA' | 'densityB') => {
    const value = mix.by === 'volume' || isEmpty(mix[entry]) ? undefined : read(entry, parseNumber(mix[entry]));
    return value !== undefined && { [entry]: value };
  };
  const a = read('a', parseNumber(mix.a));
  const b = read('b', parseNumber(mix.b));
  const densities = { ...density('densityA'), ...density('densityB') };
  const typed = a === undefined || b === undefined ? undefined : { a, b, by: mix.by, ...densities };
  // Any amount shows whether the ratio itself makes sense.
  const ratio = typed && found(mixForTotal(1, typed), (field) => field.replace('ratio.', '')) && typed;
  const potLife = isEmpty(mix.potLife) ? undefined : number('potLife', mix.potLife, 'The pot life', 'count', minutes);
  const left =
    ratio && !isEmpty(mix.left) ? read('left', parseVolume(mix.left, unit === 'in' ? 'floz' : 'ml')) : undefined;
  const rest = ratio && left !== undefined ? read('left', mixFromPart(mix.leftPart, left, ratio)) : undefined;
  return { ratio, potLifeSeconds: potLife && potLife * 60, rest, problems };
}

/** How one coat is mixed: in as many batches as its pot life and the maker's pace ask for. */
export function mixCoat(
  coatLitres: number,
  ratio: MixRatio,
  potLifeSeconds: number | undefined,
  paceMinutes: string,
): Outcome<CoatMix> {
  let batches: Worked<Batches> | undefined;
  if (potLifeSeconds !== undefined && !isEmpty(paceMinutes)) {
    const pace = checked(parseNumber(paceMinutes), (value) =>
      badNumber('', 'The time for a coat', value, 'count', minutes),
    );
    if (isProblem(pace)) return { ...pace, field: 'pace' };
    const found = potLifeBatches(coatLitres, potLifeSeconds, (pace * 60) / coatLitres);
    if (isProblem(found)) return { ...found, field: found.field === 'potLifeSeconds' ? 'potLife' : 'pace' };
    batches = found;
  }
  const each = mixForTotal(coatLitres / (batches?.value.count ?? 1), ratio);
  return isProblem(each) ? each : { batches, each };
}
