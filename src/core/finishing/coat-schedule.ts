import { badNumber } from '../answer/bad-number.ts';
import { phrase, type Words } from '../answer/phrase.ts';
import { isProblem, type Outcome } from '../answer/problem.ts';
import { seconds } from '../answer/quantity.ts';
import { type Range, scaled } from '../answer/range.ts';
import type { Finish } from './finish.ts';
import { mostCoats } from './finish-amount.ts';
import { finishCautions, ragsTodo } from './finish-cautions.ts';
import type { FinishStep } from './finish-step.ts';
import { sandingGrits } from './sanding-grits.ts';

export interface CoatScheduleInput {
  /** The kind, with the can's own figures already put in. */
  readonly finish: Finish;
  readonly coats: number;
  /** Grit to begin with: 80 after the machines, 120 after a hand plane. */
  readonly firstGrit: number;
  readonly gritsOwned: readonly number[];
  /** What is coated one after another so that no wet edge dries: `Case`, `Door`. */
  readonly sections?: readonly string[];
  /** Sealed or primed already: what was sanded before isn't sanded through. */
  readonly sealed?: boolean;
  /** Parts finished before assembly: inside corners that no brush reaches later. */
  readonly beforeAssembly?: boolean;
  /** By what today's air makes each wait longer, 1 to 8; see `airFactor`. */
  readonly airFactor?: number;
}

const dust = phrase`Dust mask and extraction: wood dust harms the lungs.`;

/** A step's place in the schedule names it, so that a tick stays with it. */
const step = (
  id: string,
  stage: FinishStep['stage'],
  title: string,
  todo: Words,
  more: Partial<FinishStep> = {},
): FinishStep => ({
  id,
  stage,
  title: phrase`${title}`,
  todo: phrase`${todo}`,
  cautions: stage === 'sand' ? [dust] : [],
  waits: [],
  source: 'common-practice',
  ...more,
});

function sanding(order: readonly number[], waterBorne: boolean): FinishStep[] {
  const passes = order.map((grit, index) =>
    step(
      `sand-${grit}`,
      'sand',
      `Sand with ${grit}`,
      index === 0
        ? 'With the grain until all machine marks are gone: look along the wood against the light.'
        : 'With the grain until the last scratches are gone. Take the dust off.',
    ),
  );
  if (!waterBorne) return passes;
  return [
    ...passes,
    step('raise-grain', 'sand', 'Raise the grain', 'Wipe with a damp rag.', {
      why: phrase`The finish lifts the fibres. Cut off now, they stay down.`,
      cautions: [],
      waits: [{ name: 'Let it dry', leastSeconds: 2 * 3600 }],
    }),
    step('cut-grain', 'sand', 'Take the fuzz off', `Lightly with ${order.at(-1)}.`),
  ];
}

const rubDull = (number: number, what: string, grit: number) =>
  step(
    `between-${number}`,
    'sand',
    `Rub ${what} dull`,
    `Lightly with ${grit}, not through the edges. If it gums up, wait longer. Take the dust off.`,
  );

const asWait = ({ least, most }: Range) => ({ leastSeconds: least, mostSeconds: most });

function coat(number: number, coats: number, finish: Finish, sections: readonly string[]): FinishStep[] {
  const lastCoat = number === coats;
  const { waitSeconds, wipeOffSeconds: wipeOff, betweenGrit } = finish;
  const wait = lastCoat
    ? { name: 'Until it can be handled', leastSeconds: waitSeconds.least }
    : { name: `Before coat ${number + 1}`, ...asWait(waitSeconds) };
  const todo = wipeOff
    ? phrase`Spread it thin, keep the edge wet. Wipe off what stands after ${seconds(wipeOff.least)}, before ${seconds(wipeOff.most)}.`
    : 'Spread it thin, keep the edge wet. Lay it off with the grain.';
  const wiping = wipeOff ? [{ name: 'Wipe off', ...asWait(wipeOff) }] : [];
  const steps = (sections.length === 0 ? [''] : sections).map((section, index, all) =>
    step(`coat-${number}${section && `-${index + 1}`}`, 'coat', `Coat ${number}${section && `: ${section}`}`, todo, {
      cautions: finishCautions(finish),
      waits: index === all.length - 1 ? [...wiping, wait] : wiping,
    }),
  );
  if (finish.dryingOil)
    steps.push(
      step(`rags-${number}`, 'rags', `Rags after coat ${number}`, ragsTodo, {
        why: phrase`A heap of oily rags heats up by itself and burns, hours after you have left.`,
        cautions: [phrase`Local rules and the safety sheet come first.`],
        source: 'osha-3157',
      }),
    );
  if (!lastCoat && betweenGrit !== undefined) steps.push(rubDull(number, `coat ${number}`, betweenGrit));
  return steps;
}

/**
 * All steps from the sanded wood to the cured finish.
 *
 * @param input kind of finish, number of coats, grits as P numbers, sections in order, whether the wood is
 *   sealed already, and whether parts are finished before assembly
 * @returns steps as plain data, with waits in seconds; the rags are a step of their own after every coat with a drying
 *   oil
 * @valid one finish on one piece; the can's waits at 20 degrees Celsius, made longer by `airFactor`. Time to wipe off
 *   is kept
 * @errors coats outside 1 to 20; grits as `sandingGrits`
 * @example coatSchedule({ finish: finishById('oil-varnish'), coats: 1, firstGrit: 120, gritsOwned: [180, 320] }).map(
 *   ({ id }) => id,
 * ) // => ['sand-120', 'sand-180', 'sand-220', 'sample', 'coat-1', 'rags-1', 'rub-out', 'cure']
 * @source common practice; rags also OSHA 3157
 */
export function coatSchedule(input: CoatScheduleInput): Outcome<readonly FinishStep[]> {
  const { coats, firstGrit, gritsOwned, sections = [], sealed = false, beforeAssembly = false, airFactor = 1 } = input;
  const bad =
    badNumber('coats', 'The number of coats', coats, 'count', { least: 1, most: mostCoats, whole: true }) ??
    badNumber('airFactor', 'The factor for the air', airFactor, 'factor', { least: 1, most: 8 });
  if (bad) return bad;
  const finish = { ...input.finish, waitSeconds: scaled(input.finish.waitSeconds, airFactor) };
  const { bareGrit, betweenGrit = bareGrit } = finish;
  const order = sealed ? [] : sandingGrits(firstGrit, bareGrit, gritsOwned);
  if (isProblem(order)) return order;
  const useAfter = finish.useAfterSeconds.most * airFactor;
  const cured = finish.cureSeconds.most * airFactor;
  const mask = step('mask', 'prepare', 'Mask for glue', 'Tape every surface that gets glue, to a knife line.', {
    why: phrase`Glue does not hold on finish.`,
  });
  return [
    ...(beforeAssembly ? [mask] : []),
    ...(sealed ? [rubDull(0, 'the sealed wood', betweenGrit)] : sanding(order, finish.waterBorne)),
    step('sample', 'sample', 'Sample board', 'All coats on an offcut sanded the same way. Look at it dry.'),
    ...Array.from({ length: coats }, (_, index) => coat(index + 1, coats, finish, sections)).flat(),
    step(
      'rub-out',
      'rub',
      'Rub out, if you like',
      'Once hard: fine pad, wax or soap water, with the grain, lightly at the edges.',
      { waits: [{ name: 'Ready for gentle use', leastSeconds: useAfter }] },
    ),
    step(
      'cure',
      'cure',
      'Leave it to cure',
      phrase`Gentle use after ${seconds(useAfter)}. Nothing hot, wet or heavy before ${seconds(cured)}.`,
      {
        cautions: [phrase`Children and food only after full cure.`],
        waits: [{ name: 'Full cure', leastSeconds: cured }],
      },
    ),
  ];
}
