import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { type DryRun, learnPace, type Pace, usualPace } from '../../core/gluing/pace.ts';
import type { Shop } from '../../store/records/shop.ts';

type Learnt = NonNullable<Shop['pace']>;

/** Under which names the shop keeps the pace at the glue: all seconds so far, and all cm2, seams and clamps done in them. */
const kept = {
  spread: 'glue-spread',
  close: 'glue-close',
  clamp: 'glue-clamp',
} as const;

const cm2PerM2 = 1e4;

/** All dry runs so far as one. */
function soFar(pace: Learnt = {}): DryRun {
  const { [kept.spread]: spread, [kept.close]: close, [kept.clamp]: clamp } = pace;
  return {
    areaM2: (spread?.count ?? 0) / cm2PerM2,
    seams: close?.count ?? 0,
    clamps: clamp?.count ?? 0,
    ...(spread && spread.count > 0 && { spreadSeconds: spread.seconds }),
    ...(close && close.count > 0 && { closeSeconds: close.seconds }),
    ...(clamp && clamp.count > 0 && { clampSeconds: clamp.seconds }),
  };
}

/** The maker's own pace where dry runs have shown it, the usual one elsewhere. */
export function paceOf({ pace }: Pick<Shop, 'pace'>): Pace {
  const learnt = learnPace([soFar(pace)]);
  return isProblem(learnt) ? usualPace : learnt;
}

/** Whether any dry run has been timed. */
export const hasLearnt = ({ pace = {} }: Pick<Shop, 'pace'>): boolean =>
  Object.values(kept).some((name) => pace[name] !== undefined);

/** What the shop keeps once one more dry run is timed. */
export function withDryRun(pace: Learnt | undefined, run: DryRun): Outcome<Learnt> {
  const checked = learnPace([run]);
  if (isProblem(checked)) return checked;
  const add = (name: string, seconds: number | undefined, count: number): Learnt => {
    const before = pace?.[name] ?? { seconds: 0, count: 0 };
    return seconds === undefined ? {} : { [name]: { seconds: before.seconds + seconds, count: before.count + count } };
  };
  return {
    ...pace,
    ...add(kept.spread, run.spreadSeconds, Math.max(1, Math.round(run.areaM2 * cm2PerM2))),
    ...add(kept.close, run.closeSeconds, run.seams),
    ...add(kept.clamp, run.clampSeconds, run.clamps),
  };
}
