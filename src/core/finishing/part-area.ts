import { firstBad, type NumberCheck } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { count, m2, mm } from '../answer/quantity.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

/** What a surface gets: the show finish, the finish for insides, or nothing. */
export type Treatment = 'shown' | 'inside' | 'bare';

/** The surfaces of a part: there are two of each. */
export type Surface = 'faces' | 'edges' | 'ends';

/** One part of a piece, `count` of them alike. */
export interface FinishPart {
  readonly name: string;
  /** mm */
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly count?: number;
  readonly species?: string;
  /** What the two of each get; shown where it isn't said. */
  readonly surfaces?: Readonly<Partial<Record<Surface, readonly [Treatment, Treatment]>>>;
  /** mm2 of each that are glued to other parts, and so left out. */
  readonly joined?: Readonly<Partial<Record<Surface, readonly [number, number]>>>;
}

/** A shape added by hand: a turned leg, a moulding. */
export interface FinishShape {
  readonly name: string;
  readonly areaM2: number;
  readonly treatment: Treatment;
  readonly count?: number;
  readonly species?: string;
}

export type TreatedArea = Readonly<Record<Treatment, number>>;

export interface PartsArea {
  /** m2 by treatment */
  readonly total: TreatedArea;
  /** m2 that get any finish */
  readonly finishedM2: number;
  readonly bySpecies: ReadonlyMap<string, TreatedArea>;
}

/** Where no species is given. */
export const anySpecies = '';

const none = { shown: 0, inside: 0, bare: 0 };

/**
 * One surface of each kind, joints and all.
 *
 * @param part its sizes, mm
 * @returns mm2 of one face, one edge, one end
 * @valid rectangular parts
 * @example surfacesMm2({ length: 1000, width: 200, thickness: 20 }) // => { faces: 200_000, edges: 20_000, ends: 4000 }
 * @source geometry
 */
export const surfacesMm2 = ({
  length,
  width,
  thickness,
}: Pick<FinishPart, 'length' | 'width' | 'thickness'>): Record<Surface, number> => ({
  faces: length * width,
  edges: length * thickness,
  ends: width * thickness,
});

const kinds = ['faces', 'edges', 'ends'] as const;

const counts = { least: 1, most: 1000, whole: true };

const partChecks = (part: FinishPart, index: number): NumberCheck[] => {
  const { name, count: number = 1 } = part;
  const at = `parts.${index}`;
  return [
    ...(['length', 'width', 'thickness'] as const).map(
      (side): NumberCheck => [`${at}.${side}`, `The ${side} of ${name}`, part[side], 'mm', { above: 0, most: 12000 }],
    ),
    ...kinds.flatMap((kind) =>
      (part.joined?.[kind] ?? []).map(
        (joined, which): NumberCheck => [
          `${at}.joined.${kind}.${which}`,
          `The joined area of ${name}`,
          joined,
          'mm2',
          { least: 0, most: surfacesMm2(part)[kind] * (1 + 1e-9) },
        ],
      ),
    ),
    [`${at}.count`, `How many of ${name}`, number, 'count', counts],
  ];
};

const shapeChecks = ({ name, areaM2, count: number = 1 }: FinishShape, index: number): NumberCheck[] => [
  [`shapes.${index}.areaM2`, `The area of ${name}`, areaM2, 'm2', { above: 0, most: 1000 }],
  [`shapes.${index}.count`, `How many of ${name}`, number, 'count', counts],
];

/**
 * The area of a piece that gets finish, by treatment and by species.
 *
 * @param parts sizes in mm; each of six surfaces shown, inside or bare, with the mm2 that are glued to other parts
 * @param shapes areas added by hand, m2
 * @returns m2 shown, inside and bare, in all and by species
 * @valid rectangular parts; a moulded edge is longer than it looks, add it as a shape
 * @errors no part at all; a part without a size, by name; more joined than there is; nothing left to finish
 * @example partsArea([{ name: 'board', length: 1000, width: 200, thickness: 20 }]).value // => { finishedM2: 0.448 }
 * @source geometry
 */
export function partsArea(
  parts: readonly FinishPart[],
  shapes: readonly FinishShape[] = [],
): Outcome<Worked<PartsArea>> {
  if (parts.length + shapes.length === 0) return problem('parts', 'Nothing to finish yet. Add a part.');
  const bad = firstBad([...parts.flatMap(partChecks), ...shapes.flatMap(shapeChecks)]);
  if (bad) return bad;
  const total = { ...none };
  const bySpecies = new Map<string, typeof total>();
  const steps: WorkingStep[] = [];
  const take = (
    { name, species = anySpecies, count: number = 1 }: Pick<FinishShape, 'name' | 'species' | 'count'>,
    areas: readonly [treatment: Treatment, m2OfOne: number][],
    by: Phrase,
  ) => {
    const ofSpecies = bySpecies.get(species) ?? { ...none };
    bySpecies.set(species, ofSpecies);
    let finished = 0;
    for (const [treatment, m2OfOne] of areas) {
      const area = m2OfOne * number;
      ofSpecies[treatment] += area;
      total[treatment] += area;
      if (treatment !== 'bare') finished += area;
    }
    steps.push(workingStep(name, by, m2(finished)));
  };
  for (const part of parts)
    take(
      part,
      kinds.flatMap((kind) =>
        ([0, 1] as const).map((which) => [
          part.surfaces?.[kind]?.[which] ?? 'shown',
          Math.max(0, surfacesMm2(part)[kind] - (part.joined?.[kind]?.[which] ?? 0)) / 1e6,
        ]),
      ),
      phrase`${count(part.count ?? 1)} of ${mm(part.length)} by ${mm(part.width)} by ${mm(part.thickness)}, less joined and bare.`,
    );
  for (const shape of shapes)
    take(
      shape,
      [[shape.treatment, shape.areaM2]],
      phrase`${count(shape.count ?? 1)} of ${m2(shape.areaM2)}, added by hand, less bare.`,
    );

  const finishedM2 = total.shown + total.inside;
  if (finishedM2 === 0) return problem('parts', 'Every surface is bare or joined. Mark one as shown.');
  return { value: { total, finishedM2, bySpecies }, working: { steps, sources: ['geometry'] } };
}
