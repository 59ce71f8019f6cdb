import { parseRange } from './parse-range.ts';
import { isProblem, type Outcome } from './problem.ts';
import { type Range, scaled } from './range.ts';
import { litresPerGallon, m2PerSquareFoot } from './us-units.ts';

/** m2 per litre in one square foot per US gallon. */
const usRate = m2PerSquareFoot / litresPerGallon;

const metric = /m2?²? ?(?:\/|per) ?l(?:it(?:re|er))?s?$/;
const american = /(?:sq\.? ?ft|ft2?²?) ?(?:\/|per) ?gal(?:lon)?$/;

/**
 * Reads how far a litre or a gallon goes, as the can says it.
 *
 * @param text one number or a range, with or without its unit: `12`, `10-14`, `10 m²/L`, `400 to 500 sq ft/gal`
 * @param bare what a number without a unit means
 * @returns m2 per litre
 * @valid US gallons; limits are checked where the rate is used
 * @errors (field ''): as `parseRange`
 * @example parseSpreadingRate('500 sq ft/gal', 'm2PerLitre') // => { least: 12.27, most: 12.27 }
 * @source NIST SP 811 appendix B
 */
export function parseSpreadingRate(text: string, bare: 'm2PerLitre' | 'ft2PerGallon'): Outcome<Range> {
  const plain = text.trim().toLowerCase();
  const isAmerican = american.test(plain) || (bare === 'ft2PerGallon' && !metric.test(plain));
  const found = parseRange(plain.replace(american, '').replace(metric, ''));
  return isProblem(found) || !isAmerican ? found : scaled(found, usRate);
}
