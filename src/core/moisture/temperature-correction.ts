import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { celsius as inCelsius, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { temperatureProblem } from './equilibrium-moisture.ts';
import { moistureProblem } from './moisture-problem.ts';

/** Percent of moisture per degree Celsius: half a percent for each 5.6 degrees (10 degrees Fahrenheit). */
const percentPerDegree = 0.5 / 5.6;
/** What meters are calibrated for, degrees Celsius: 70 degrees Fahrenheit. */
const calibratedAt = 21.1;
/** Departure from the calibration temperature, in degrees Celsius, up to which the rule is offered. */
const furthest = 30;

/**
 * What a resistance meter would have read on wood of the temperature it is calibrated for. Warm wood conducts better,
 * so that it reads too wet; cold wood reads too dry.
 *
 * @param reading what the meter shows in percent; the wood's temperature in degrees Celsius
 * @returns corrected moisture content in percent
 * @valid readings up to 30 %, wood within 30 degrees of calibration; a rule of thumb to about half a percent, for meters
 *   calibrated at 21.1 degrees. A meter that corrects by itself needs none, and the table in the meter's manual comes first
 * @errors a `Problem` on `percent` or `celsius`
 * @example temperatureCorrection({ percent: 10, celsius: 10 }) // => { value: 11.0 }
 * @source Wood handbook (FPL-GTR-190), recalled: about half a percent for each 5.6 degrees
 */
export function temperatureCorrection(reading: {
  readonly percent: number;
  readonly celsius: number;
}): Outcome<Worked> {
  const wrong = moistureProblem('percent', reading.percent) ?? temperatureProblem('celsius', reading.celsius);
  if (wrong) return wrong;
  const departure = reading.celsius - calibratedAt;
  if (Math.abs(departure) > furthest) {
    return problem(
      'celsius',
      phrase`Too far from the meter’s ${inCelsius(calibratedAt)}. Let the wood come to shop temperature.`,
    );
  }
  const correction = -departure * percentPerDegree;
  const value = Math.max(0, reading.percent + correction);
  return {
    value,
    working: {
      steps: [
        workingStep(
          'correction',
          phrase`half a percent for each 5.6 °C (10 °F) that ${inCelsius(reading.celsius)} is below ${inCelsius(calibratedAt)}`,
          percent(correction),
        ),
        workingStep('corrected moisture', phrase`reading ${percent(reading.percent)} + correction`, percent(value)),
      ],
      holds: phrase`Pin meters without their own correction, to about half a percent. The meter’s manual comes first.`,
      sources: ['wood-handbook-memory'],
    },
  };
}
