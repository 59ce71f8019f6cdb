import { isProblem, type Outcome, type Problem, problem, within } from '../core/answer/problem.ts';
import type { Adhesive } from '../core/gluing/adhesive.ts';
import { adhesiveTimes } from '../core/gluing/adhesive-times.ts';
import { clampCount } from '../core/gluing/clamp-count.ts';
import { clampPressure } from '../core/gluing/clamp-pressure.ts';
import { type GlueTool, glueAmount, glueLoss } from '../core/gluing/glue-amount.ts';
import type { Seam } from '../core/gluing/seam.ts';
import { findAdhesive } from '../tables/adhesive-names.ts';
import { adhesives } from '../tables/adhesives.ts';
import type { Figure } from './ask.ts';
import { speciesAsked } from './species-asked.ts';

interface Input {
  readonly seams: readonly Seam[];
  readonly adhesive: string;
  readonly species?: string;
  /** In place of a species, or where the table has none. */
  readonly specificGravity?: number;
  /** Newtons per clamp. */
  readonly clampForce: number;
  readonly outerBoard?: number;
  readonly caul?: number;
  readonly tool?: GlueTool;
  readonly celsius?: number;
}

function badSeamShape(seams: unknown): Problem | undefined {
  if (!Array.isArray(seams)) return problem('seams', 'Give a list of seams, each with a length and a width.');
  const index = seams.findIndex((seam) => typeof seam !== 'object' || seam === null);
  return index < 0 ? undefined : problem(`seams.${index}`, 'A seam is a length and a width.');
}

function adhesiveAsked(name: unknown): Outcome<Adhesive> {
  const found = typeof name === 'string' ? findAdhesive(name) : undefined;
  return (
    found ?? problem('adhesive', `No such kind of adhesive. There are: ${adhesives.map(({ id }) => id).join(', ')}.`)
  );
}

function gravityAsked({ species, specificGravity }: Input): Outcome<number> {
  if (specificGravity !== undefined) return specificGravity;
  const found = speciesAsked(species, 'Name another, or give specificGravity.');
  if (isProblem(found)) return found;
  return (
    found.specificGravity?.value ??
    problem('species', `The table has no density for ${found.name}. Name another, or give specificGravity.`)
  );
}

/** Glue, clamps and pressure for the parallel seams of one panel. */
export const figure: Figure = (input) => {
  const asked = input as Input;
  const badSeams = badSeamShape(asked.seams);
  if (badSeams) return badSeams;
  const adhesive = adhesiveAsked(asked.adhesive);
  if (isProblem(adhesive)) return adhesive;
  const gravity = gravityAsked(asked);
  if (isProblem(gravity)) return gravity;
  const { seams, clampForce, outerBoard, caul, tool, celsius } = asked;
  if (tool !== undefined && !Object.hasOwn(glueLoss, tool))
    return problem('tool', `No such tool. There are: ${Object.keys(glueLoss).join(', ')}.`);

  const { gramsPerM2, kgPerM3, source, pressureShare } = adhesive;
  const glue = glueAmount({ seams, gramsPerM2, kgPerM3, source, ...(tool && { loss: glueLoss[tool] }) });
  if (isProblem(glue)) return glue;
  const pressure = clampPressure(gravity, pressureShare);
  if (isProblem(pressure)) return pressure;
  const work = {
    kPa: pressure.value,
    clampForce,
    ...(outerBoard !== undefined && { outerBoard }),
    ...(caul !== undefined && { caul }),
  };
  const clamps = clampCount({ ...work, seams });
  if (isProblem(clamps)) return clamps;
  const perSeam: object[] = [];
  for (const [index, seam] of seams.entries()) {
    const one = clampCount({ ...work, seams: [seam] });
    if (isProblem(one)) return within(one, `seams.${index}`);
    perSeam.push(one.value);
  }
  const times = celsius === undefined ? undefined : adhesiveTimes(adhesive, celsius);
  if (isProblem(times)) return times;

  const { areaM2, grams, likelyGrams, likelyMillilitres } = glue.value;
  return {
    area: areaM2,
    grams: likelyGrams,
    ...clamps.value,
    gramsRange: grams,
    millilitres: likelyMillilitres,
    kilopascals: pressure.value,
    perSeam,
    ...(times && { seconds: times.value }),
  };
};
