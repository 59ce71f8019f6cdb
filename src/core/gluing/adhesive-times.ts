import { badRange, firstBad } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, type Problem, problem } from '../answer/problem.ts';
import { celsius as degreesCelsius, factor, seconds } from '../answer/quantity.ts';
import { likely, scaled } from '../answer/range.ts';
import { roughDuration } from '../answer/rough-duration.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import {
  type Adhesive,
  type AdhesivePhase,
  type AdhesiveTimes,
  adhesivePhases,
  isHurry,
  phaseNames,
  timesBy,
} from './adhesive.ts';

/** What the maker has typed in from the label: it wins over the table. */
export interface AdhesiveLabel {
  readonly seconds?: Partial<AdhesiveTimes>;
  readonly leastCelsius?: number;
  /** The temperature at which the label's times hold; 20 degrees Celsius when it doesn't say. */
  readonly atCelsius?: number;
}

/** The temperature at which the table's times hold. */
export const tableCelsius = 20;

/** Above this the model says nothing: the glue may skin over while it is spread. */
export const warmestCelsius = 35;

const limits = { above: 0, most: 60 * 86400 };

function badLabel({ seconds: typed = {} }: AdhesiveLabel): Problem | undefined {
  for (const phase of adhesivePhases) {
    const given = typed[phase];
    const bad = given && badRange(`label.seconds.${phase}`, phaseNames[phase], given, 'seconds', limits);
    if (bad) return bad;
  }
  return tooShort(typed, 'cure', 'clamp') ?? tooShort(typed, 'clamp', 'open');
}

/** A time on the label can't be shorter than one that ends within it. */
function tooShort(typed: Partial<AdhesiveTimes>, phase: AdhesivePhase, within: AdhesivePhase): Problem | undefined {
  const [long, short] = [typed[phase], typed[within]];
  return long && short && long.most < short.least
    ? problem(
        `label.seconds.${phase}`,
        phrase`${phaseNames[phase]} is ${seconds(long.most)}, but ${phaseNames[within].toLowerCase()} ${seconds(short.least)}. Check the label.`,
      )
    : undefined;
}

/**
 * The working and setting times of an adhesive at a temperature.
 *
 * The model: a time is multiplied by the adhesive's factor once for each 10 degrees Celsius above the temperature at
 * which it was given, `time x factor ^ ((now - given) / 10)`. About 0.5 for resins that set by reaction (the usual
 * doubling of speed each 10 degrees), 0.67 for glues that set by losing water, above 1 where warmth keeps a gel open.
 *
 * @param adhesive a row of the adhesives' table
 * @param celsius temperature of wood, glue and room, degrees Celsius
 * @param label what the maker typed in from the label; wins over the table, and is shifted in the same way
 * @returns open, closed, clamp, rest and cure time, seconds
 * @valid from the adhesive's least temperature to 35 degrees Celsius, about 50 percent humidity, wood at 6 to 12
 *   percent moisture. Dry air and thirsty wood shorten the open time further
 * @errors `celsius` below the least temperature or above 35; `label.seconds...` reversed, zero or absurd
 * @example adhesiveTimes(findAdhesive('PVA, interior'), 30).value // => { open: { least: 201.0, most: 402.0 } }
 * @source the model is an assumption, stated to the maker; the times are common practice or the label's
 */
export function adhesiveTimes(
  adhesive: Adhesive,
  celsius: number,
  label: AdhesiveLabel = {},
): Outcome<Worked<AdhesiveTimes>> {
  const at = label.atCelsius ?? tableCelsius;
  const leastCelsius = label.leastCelsius ?? adhesive.leastCelsius;
  const bad =
    firstBad([
      ['celsius', 'The temperature', celsius, 'celsius', {}],
      ['label.atCelsius', 'The label’s temperature', at, 'celsius', { least: 0, most: 50 }],
      ['label.leastCelsius', 'The label’s least temperature', leastCelsius, 'celsius', { least: -20, most: 40 }],
    ]) ?? badLabel(label);
  if (bad) return bad;
  const now = degreesCelsius(celsius);
  const least = degreesCelsius(leastCelsius);
  const most = degreesCelsius(warmestCelsius);
  if (celsius < leastCelsius)
    return problem(
      'celsius',
      phrase`Don’t glue at ${now}: below ${least} ${adhesive.tooCold}. Warm the wood, glue and room first.`,
    );
  if (celsius > warmestCelsius)
    return problem('celsius', phrase`Above ${most} the glue may skin over: wait for a cooler hour.`);

  const steps: WorkingStep[] = [];
  const shift = (phase: AdhesivePhase) => {
    const per10 = adhesive.per10Celsius[isHurry(phase) ? 'working' : 'setting'];
    const typed = label.seconds?.[phase];
    const given = typed ?? adhesive.seconds[phase];
    const from = typed ? at : tableCelsius;
    const shifted = scaled(given, per10 ** ((celsius - from) / 10));
    steps.push(
      workingStep(
        phaseNames[phase].toLowerCase(),
        phrase`${seconds(likely(given))} at ${degreesCelsius(from)} (${typed ? 'label' : 'table'}), times ${factor(per10)} for each 10 °C (18 °F) warmer, at ${now}.`,
        seconds(roughDuration(likely(shifted))),
      ),
    );
    return shifted;
  };
  const sources = new Set<SourceId>([adhesive.source, 'assumption']);
  if (label.seconds || label.leastCelsius !== undefined) sources.add('label');
  return {
    value: timesBy(shift),
    working: {
      steps,
      holds: phrase`${least} to ${most}, middling humidity. Dry air and thirsty wood leave less time.`,
      sources: [...sources],
    },
  };
}
