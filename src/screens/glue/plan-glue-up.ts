import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import type { Adhesive, AdhesiveTimes } from '../../core/gluing/adhesive.ts';
import { adhesiveTimes } from '../../core/gluing/adhesive-times.ts';
import { type ClampCount, clampCount } from '../../core/gluing/clamp-count.ts';
import { clampPressure } from '../../core/gluing/clamp-pressure.ts';
import { type ClampsCompared, compareClamps } from '../../core/gluing/clamps-owned.ts';
import { type GlueAmount, glueAmount, glueLoss } from '../../core/gluing/glue-amount.ts';
import { type SpreadTime, slowerKinds, spreadTime } from '../../core/gluing/spread-time.ts';
import type { Shop } from '../../store/records/shop.ts';
import { adhesives } from '../../tables/adhesives.ts';
import { woodById } from '../../ui/wood-by-id.ts';
import { clampForceFor, ownedClamps } from './clamp-force.ts';
import { paceOf } from './glue-pace.ts';
import type { ReadGlue } from './read-glue-form.ts';

export interface ClampPlan {
  readonly pressure: Worked;
  readonly needed: Worked<ClampCount>;
  readonly owned: ClampsCompared;
}

/** The glue and the time that the seams take. */
export interface GlueWork {
  readonly times: Worked<AdhesiveTimes>;
  readonly amount: Worked<GlueAmount>;
  readonly spread: Worked<SpreadTime>;
  /** The kinds that are slow enough for all at once. */
  readonly slower: readonly Adhesive[];
}

export interface GluePlan {
  readonly times: Outcome<Worked<AdhesiveTimes>>;
  /** Undefined for mitres, which are pressed otherwise, and for a wood whose density isn't known. */
  readonly clamps: Outcome<ClampPlan> | undefined;
  /** How many clamps there are to set; 0 where that can't be told. */
  readonly setting: number;
  readonly work: Outcome<GlueWork>;
}

type Asked = Omit<ReadGlue, 'outerBoard' | 'problems' | 'missing'> & { readonly outerBoard?: number | undefined };

/** All that is worked out before the glue is opened. */
export function planGlueUp(asked: Asked, shop: Pick<Shop, 'clamps' | 'pace'>): GluePlan {
  const times = adhesiveTimes(asked.adhesive, asked.celsius, asked.label);
  const clamps = clampPlan(asked, shop);
  const setting = clamps && !isProblem(clamps) ? clamps.needed.value.clamps : 0;
  return { times, clamps, setting, work: isProblem(times) ? times : glueWork(asked, setting, times, shop) };
}

function clampPlan({ seams, meets, species, adhesive, across, outerBoard, caul }: Asked, shop: Pick<Shop, 'clamps'>) {
  const gravity = woodById(species)?.specificGravity?.value;
  if (gravity === undefined || meets === 'mitre-case' || meets === 'mitre-frame') return undefined;
  const pressure = clampPressure(gravity, adhesive.pressureShare);
  if (isProblem(pressure)) return pressure;
  const owned = ownedClamps(shop.clamps);
  const clampForce = clampForceFor(owned, across);
  // Joints other than parallel seams are pressed one by one: the longest tells the clamps for each.
  const needed = clampCount({ seams, kPa: pressure.value, clampForce, outerBoard, caul });
  if (isProblem(needed)) return needed;
  // A width that isn't known shuts out no clamp.
  const compared = compareClamps(needed.value, across ?? 1, owned);
  return isProblem(compared) ? compared : { pressure, needed, owned: compared };
}

function glueWork(
  { seams, hands, celsius, adhesive, tool }: Asked,
  clamps: number,
  times: Worked<AdhesiveTimes>,
  shop: Pick<Shop, 'pace'>,
): Outcome<GlueWork> {
  const { gramsPerM2, kgPerM3, source } = adhesive;
  const amount = glueAmount({ seams, gramsPerM2, kgPerM3, loss: glueLoss[tool], source });
  if (isProblem(amount)) return amount;
  const work = { seams, clamps, hands, pace: paceOf(shop) };
  const spread = spreadTime(work, times.value);
  if (isProblem(spread)) return spread;
  // Kinds that may not be used at this temperature are left out, and the one at hand, whose label may give it less.
  const today = adhesives.flatMap((kind) => {
    const its = adhesiveTimes(kind, celsius);
    return isProblem(its) || kind === adhesive ? [] : [{ kind, times: its.value }];
  });
  return { times, amount, spread, slower: slowerKinds(work, today).map(({ kind }) => kind) };
}
