import { badNumber } from '../../core/answer/bad-number.ts';
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
  const problems = new Map<string, Problem>();
  const needed = (entry: keyof MixText, text: string) => {
    const value = parseNumber(text);
    if (!isProblem(value)) return value;
    problems.set(entry, value);
    return undefined;
  };
  const number = (entry: keyof MixText, text: string) => (text.trim() === '' ? undefined : needed(entry, text));
  const a = needed('a', mix.a);
  const b = needed('b', mix.b);
  const byMass = mix.by === 'mass';
  const densityA = byMass ? number('densityA', mix.densityA) : undefined;
  const densityB = byMass ? number('densityB', mix.densityB) : undefined;
  const potLife = number('potLife', mix.potLife);
  const wrong = potLife === undefined ? undefined : badNumber('', 'The pot life', potLife, 'count', minutes);
  if (wrong) problems.set('potLife', wrong);

  let ratio: MixRatio | undefined;
  if (a !== undefined && b !== undefined) {
    ratio = {
      a,
      b,
      by: mix.by,
      ...(densityA !== undefined && { densityA }),
      ...(densityB !== undefined && { densityB }),
    };
    // Any amount shows whether the ratio itself makes sense.
    const tried = mixForTotal(1, ratio);
    if (isProblem(tried)) {
      problems.set(tried.field.replace('ratio.', ''), tried);
      ratio = undefined;
    }
  }
  let rest: Worked<Mix> | undefined;
  if (ratio && mix.left.trim() !== '') {
    const left = parseVolume(mix.left, unit === 'in' ? 'floz' : 'ml');
    const found = isProblem(left) ? left : mixFromPart(mix.leftPart, left, ratio);
    if (isProblem(found)) problems.set('left', found);
    else rest = found;
  }
  return { ratio, potLifeSeconds: potLife === undefined || wrong ? undefined : potLife * 60, rest, problems };
}

/** How one coat is mixed: in as many batches as its pot life and the maker's pace ask for. */
export function mixCoat(
  coatLitres: number,
  ratio: MixRatio,
  potLifeSeconds: number | undefined,
  paceMinutes: string,
): Outcome<CoatMix> {
  let batches: Worked<Batches> | undefined;
  if (potLifeSeconds !== undefined && paceMinutes.trim() !== '') {
    const pace = parseNumber(paceMinutes);
    const bad = isProblem(pace) ? pace : badNumber('', 'The time for a coat', pace, 'count', minutes);
    if (bad) return { ...bad, field: 'pace' };
    const found = potLifeBatches(coatLitres, potLifeSeconds, ((pace as number) * 60) / coatLitres);
    if (isProblem(found)) return { ...found, field: found.field === 'potLifeSeconds' ? 'potLife' : 'pace' };
    batches = found;
  }
  const each = mixForTotal(coatLitres / (batches?.value.count ?? 1), ratio);
  return isProblem(each) ? each : { batches, each };
}
