import { joined } from '../answer/joined.ts';
import { isProblem, type Outcome, problem, within } from '../answer/problem.ts';
import type { Worked } from '../answer/worked.ts';
import { type Air, equilibriumMoisture } from '../moisture/equilibrium-moisture.ts';
import { inSeason, type SeasonMoisture } from './seasons.ts';

/**
 * The moisture that wood settles at in the driest and in the dampest season of a place.
 *
 * @param climate temperature (degrees Celsius) and relative humidity (percent) in each season
 * @returns moisture in percent in each
 * @valid seasons of weeks. Wide or finished wood lags behind and moves less than this, so that the result is on the
 *   safe side
 * @errors a `Problem` on `dry` or `wet`
 * @example seasonMoisture({ dry: { celsius: 20, humidity: 30 }, wet: { celsius: 24, humidity: 60 } }).value
 *   // => { dry: 6.2, wet: 10.9 }
 * @source Wood handbook (FPL-GTR-190), Eq. 4-5
 */
export function seasonMoisture(climate: { readonly dry: Air; readonly wet: Air }): Outcome<Worked<SeasonMoisture>> {
  const dry = equilibriumMoisture(climate.dry);
  if (isProblem(dry)) return within(dry, 'dry');
  const wet = equilibriumMoisture(climate.wet);
  if (isProblem(wet)) return within(wet, 'wet');
  if (dry.value > wet.value) return problem('wet', 'The dry season is the damper one. Swap the two.');
  return {
    value: { dry: dry.value, wet: wet.value },
    working: joined(inSeason('dry', dry.working), inSeason('damp', wet.working)),
  };
}
