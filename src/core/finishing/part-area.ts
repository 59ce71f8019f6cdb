import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, type Problem, problem } from '../answer/problem.ts';
import { count, m2, mm, quantity } from '../answer/quantity.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';

/** What a surface gets: the show finish, the finish for insides, or nothing. */
export type Treatment = 'shown' | 'inside' | 'bare';

export const surfaces = ['face1', 'face2', 'edge1', 'edge2', 'end1', 'end2'] as const;
export type Surface = (typeof surfaces)[number];

export interface PartSurface {
  readonly treatment: Treatment;
  /** mm2 of it that is glued to another part, and so left out. */
  readonly joinedMm2?: number;
}

/** One part of a piece, `count` of them alike. Surfaces not named are shown. */
export interface FinishPart {
  readonly name: string;
  /** mm */
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly count?: number;
  readonly species?: string;
  readonly surfaces?: Partial<Record<Surface, PartSurface>>;
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

const none: TreatedArea = { shown: 0, inside: 0, bare: 0 };

const add = (area: TreatedArea, treatment: Treatment, m2More: number): TreatedArea => ({
  ...area,
  [treatment]: area[treatment] + m2More,
});

/**
 * One surface of a part, joints and all, mm2.
 *
 * @param part its sizes, mm
 * @param surface which of the six
 * @returns mm2
 * @valid rectangular parts
 * @example surfaceMm2({ length: 1000, width: 200, thickness: 20 }, 'edge1') // => 20_000
 * @source geometry
 */
export function surfaceMm2(
  { length, width, thickness }: Pick<FinishPart, 'length' | 'width' | 'thickness'>,
  surface: Surface,
): number {
  if (surface.startsWith('face')) return length * width;
  return surface.startsWith('edge') ? length * thickness : width * thickness;
}

function badPart(part: FinishPart, at: string): Problem | undefined {
  for (const side of ['length', 'width', 'thickness'] as const) {
    const bad = badNumber(`${at}.${side}`, `The ${side} of ${part.name}`, part[side], 'mm', { above: 0, most: 12000 });
    if (bad) return bad;
  }
  for (const surface of surfaces) {
    const joined = part.surfaces?.[surface]?.joinedMm2 ?? 0;
    const most = surfaceMm2(part, surface) * (1 + 1e-9);
    const field = `${at}.surfaces.${surface}.joinedMm2`;
    const bad = badNumber(field, `The joined area of ${part.name}`, joined, 'mm2', { least: 0, most });
    if (bad) return bad;
  }
  return undefined;
}

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
  const bySpecies = new Map<string, TreatedArea>();
  let total = none;
  const steps: WorkingStep[] = [];
  const take = (species: string, treatment: Treatment, m2More: number) => {
    total = add(total, treatment, m2More);
    bySpecies.set(species, add(bySpecies.get(species) ?? none, treatment, m2More));
  };
  const counts = { least: 1, most: 1000, whole: true };

  for (const [index, part] of parts.entries()) {
    const { name, count: number = 1, species = anySpecies } = part;
    const at = `parts.${index}`;
    const bad = badPart(part, at) ?? badNumber(`${at}.count`, `How many of ${name}`, number, 'count', counts);
    if (bad) return bad;
    let finished = 0;
    for (const surface of surfaces) {
      const { treatment = 'shown', joinedMm2 = 0 } = part.surfaces?.[surface] ?? {};
      const each = Math.max(0, surfaceMm2(part, surface) - joinedMm2) / 1e6;
      take(species, treatment, each * number);
      if (treatment !== 'bare') finished += each * number;
    }
    steps.push({
      finds: name,
      by: phrase('{count} of {length} by {width} by {thickness}, less joined and bare.', {
        count: count(number),
        length: mm(part.length),
        width: mm(part.width),
        thickness: mm(part.thickness),
      }),
      gives: m2(finished),
    });
  }
  for (const [index, { name, areaM2, treatment, count: number = 1, species = anySpecies }] of shapes.entries()) {
    const at = `shapes.${index}`;
    const bad =
      badNumber(`${at}.areaM2`, `The area of ${name}`, areaM2, 'm2', { above: 0, most: 1000 }) ??
      badNumber(`${at}.count`, `How many of ${name}`, number, 'count', counts);
    if (bad) return bad;
    take(species, treatment, areaM2 * number);
    steps.push({
      finds: name,
      by: phrase(treatment === 'bare' ? '{count} of {area}, left bare.' : '{count} of {area}, added by hand.', {
        count: count(number),
        area: quantity(areaM2, 'm2'),
      }),
      gives: m2(treatment === 'bare' ? 0 : areaM2 * number),
    });
  }

  const finishedM2 = total.shown + total.inside;
  if (finishedM2 === 0) return problem('parts', 'Every surface is bare or joined. Mark one as shown.');
  return { value: { total, finishedM2, bySpecies }, working: { steps, sources: ['geometry'] } };
}
