import type { SourceId } from '../core/answer/source-id.ts';
import type { MovementFigures, Shrinkage } from '../core/movement/movement-figures.ts';
import { sameWords } from './same-words.ts';

/**
 * How a wood takes a finish (common practice): `open` pores show as lines unless filled, `closed` ones don't,
 * a `softwood` has none.
 */
export type Pores = 'open' | 'closed' | 'softwood';

export interface Species extends MovementFigures {
  readonly id: string;
  /** As the handbook's tables name it. */
  readonly name: string;
  /** Other names of the trade for it. */
  readonly alsoCalled: readonly string[];
  readonly pores: Pores;
  /** Ovendry mass over the volume at 12 % moisture, relative to water. */
  readonly specificGravity?: { readonly value: number; readonly source: SourceId };
}

type Pair = readonly [radial: number, tangential: number];
type Triple = readonly [radial: number, tangential: number, volumetric: number];

interface Figures {
  /** Specific gravity at 12 %, recalled from the handbook's Table 5-3. */
  readonly gravity?: number;
  /** Table 13-5, and for white fir the example on p. 13-17. */
  readonly change?: Pair;
  /** Tables 4-3 and 4-4. */
  readonly shrinks?: Triple;
  /** The same tables, recalled and not read. */
  readonly shrinksFromMemory?: Triple;
  readonly alsoCalled?: readonly string[];
}

function shrinkage(triple: Triple, source: SourceId): Shrinkage {
  const [radial, tangential, volumetric] = triple;
  return { radial, tangential, volumetric, source };
}

function idOf(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z]+/g, '-')
    .replace(/^-|-$/g, '');
}

function row(name: string, pores: Pores, figures: Figures): Species {
  const { gravity, change, shrinks, shrinksFromMemory, alsoCalled = [] } = figures;
  return {
    id: idOf(name),
    name,
    alsoCalled,
    pores,
    ...(gravity !== undefined && { specificGravity: { value: gravity, source: 'wood-handbook-memory' } }),
    ...(change && { coefficients: { radial: change[0], tangential: change[1], source: 'wood-handbook' } }),
    ...(shrinks && { shrinkage: shrinkage(shrinks, 'wood-handbook') }),
    ...(shrinksFromMemory && { shrinkage: shrinkage(shrinksFromMemory, 'wood-handbook-memory') }),
  };
}

// Where a figure is missing, the handbook's table has none for that name, or it could not be recalled: it is left out
// rather than borrowed from a similar wood. The imported woods' specific gravities are tabulated for the green volume only.
export const species: readonly Species[] = [
  row('alder, red', 'closed', { gravity: 0.41, change: [0.00151, 0.00256], shrinks: [4.4, 7.3, 12.6] }),
  row('ash, black', 'open', { gravity: 0.49, change: [0.00172, 0.00274], shrinks: [5.0, 7.8, 15.2] }),
  row('ash, green', 'open', { gravity: 0.56, change: [0.00169, 0.00274], shrinks: [4.6, 7.1, 12.5] }),
  row('ash, white', 'open', { gravity: 0.6, change: [0.00169, 0.00274], shrinks: [4.9, 7.8, 13.3] }),
  row('aspen, quaking', 'closed', { gravity: 0.38, change: [0.00119, 0.00234], shrinks: [3.5, 6.7, 11.5] }),
  row('basswood, American', 'closed', { gravity: 0.37, change: [0.0023, 0.0033], shrinks: [6.6, 9.3, 15.8] }),
  row('beech, American', 'closed', { gravity: 0.64, change: [0.0019, 0.00431], shrinks: [5.5, 11.9, 17.2] }),
  row('birch, paper', 'closed', { gravity: 0.55, change: [0.00219, 0.00304], shrinks: [6.3, 8.6, 16.2] }),
  row('birch, sweet', 'closed', { gravity: 0.65, change: [0.00256, 0.00338] }),
  row('birch, yellow', 'closed', { gravity: 0.62, change: [0.00256, 0.00338], shrinks: [7.3, 9.5, 16.8] }),
  row('butternut', 'open', { gravity: 0.38, change: [0.00116, 0.00223], shrinks: [3.4, 6.4, 10.6] }),
  row('cherry, black', 'closed', {
    gravity: 0.5,
    change: [0.00126, 0.00248],
    shrinks: [3.7, 7.1, 11.5],
    alsoCalled: ['cherry'],
  }),
  row('chestnut, American', 'open', { gravity: 0.43, change: [0.00116, 0.00234], shrinks: [3.4, 6.7, 11.6] }),
  row('cottonwood, eastern', 'closed', { gravity: 0.4, change: [0.00133, 0.00327], shrinks: [3.9, 9.2, 13.9] }),
  row('elm, American', 'open', { gravity: 0.5, change: [0.00144, 0.00338], shrinks: [4.2, 9.5, 14.6] }),
  row('elm, rock', 'open', { gravity: 0.63, change: [0.00165, 0.00285] }),
  row('hackberry', 'open', { gravity: 0.53, change: [0.00165, 0.00315], shrinks: [4.8, 8.9, 13.8] }),
  row('hickory, pecan', 'open', { gravity: 0.66, change: [0.00169, 0.00315], shrinks: [4.9, 8.9, 13.6] }),
  row('honeylocust', 'open', { change: [0.00144, 0.0023] }),
  row('locust, black', 'open', { gravity: 0.69, change: [0.00158, 0.00252] }),
  row('magnolia, southern', 'closed', { gravity: 0.5, change: [0.00187, 0.0023] }),
  row('maple, bigleaf', 'closed', { gravity: 0.48, change: [0.00126, 0.00248] }),
  row('maple, red', 'closed', {
    gravity: 0.54,
    change: [0.00137, 0.00289],
    shrinksFromMemory: [4.0, 8.2, 12.6],
    alsoCalled: ['soft maple'],
  }),
  row('maple, silver', 'closed', { gravity: 0.47, change: [0.00102, 0.00252] }),
  row('maple, sugar', 'closed', {
    gravity: 0.63,
    change: [0.00165, 0.00353],
    shrinksFromMemory: [4.8, 9.9, 14.7],
    alsoCalled: ['hard maple'],
  }),
  row('oak, northern red', 'open', { gravity: 0.63, shrinksFromMemory: [4.0, 8.6, 13.7] }),
  row('oak, red (commercial)', 'open', { change: [0.00158, 0.00369], alsoCalled: ['red oak'] }),
  row('oak, white', 'open', { gravity: 0.68, shrinks: [5.6, 10.5, 16.3] }),
  row('oak, white (commercial)', 'open', { change: [0.0018, 0.00365] }),
  row('persimmon', 'closed', { change: [0.00278, 0.00403] }),
  row('sassafras', 'open', { gravity: 0.46, change: [0.00137, 0.00216], shrinks: [4.0, 6.2, 10.3] }),
  row('sweetgum', 'closed', { gravity: 0.52, change: [0.00183, 0.00365], shrinks: [5.3, 10.2, 15.8] }),
  row('sycamore, American', 'closed', { gravity: 0.49, change: [0.00172, 0.00296], shrinks: [5.0, 8.4, 14.1] }),
  row('tupelo, black', 'closed', { gravity: 0.5, change: [0.00176, 0.00308], shrinks: [5.1, 8.7, 14.4] }),
  row('walnut, black', 'open', {
    gravity: 0.55,
    change: [0.0019, 0.00274],
    shrinks: [5.5, 7.8, 12.8],
    alsoCalled: ['walnut'],
  }),
  row('yellow-poplar', 'closed', { gravity: 0.42, shrinks: [4.6, 8.2, 12.7], alsoCalled: ['poplar'] }),
  row('cedar, eastern red', 'softwood', { gravity: 0.47, shrinks: [3.1, 4.7, 7.8] }),
  row('cedar, Port-Orford', 'softwood', { gravity: 0.43, shrinks: [4.6, 6.9, 10.1] }),
  row('cedar, western red', 'softwood', { gravity: 0.32, shrinks: [2.4, 5.0, 6.8] }),
  row('Douglas-fir, coast', 'softwood', { gravity: 0.48, shrinks: [4.8, 7.6, 12.4] }),
  row('fir, balsam', 'softwood', { gravity: 0.35, shrinks: [2.9, 6.9, 11.2] }),
  row('fir, noble', 'softwood', { gravity: 0.39, shrinks: [4.3, 8.3, 12.4] }),
  row('fir, white', 'softwood', { gravity: 0.39, change: [0.00112, 0.00245], shrinks: [3.3, 7.0, 9.8] }),
  row('pine, eastern white', 'softwood', { gravity: 0.35, shrinksFromMemory: [2.1, 6.1, 8.2] }),
  row('pine, ponderosa', 'softwood', { gravity: 0.4, shrinksFromMemory: [3.9, 6.2, 9.7] }),
  row('redwood, old-growth', 'softwood', { gravity: 0.4, shrinksFromMemory: [2.6, 4.4, 6.8] }),
  row('spruce, Sitka', 'softwood', { gravity: 0.4, shrinksFromMemory: [4.3, 7.5, 11.5] }),
  row('mahogany, African (Khaya)', 'open', { shrinks: [2.5, 4.5, 8.8] }),
  row('mahogany, true (Swietenia macrophylla)', 'open', { shrinks: [3.0, 4.1, 7.8] }),
  row('teak', 'open', { shrinksFromMemory: [2.5, 5.8, 7.0] }),
];

const byName = new Map(
  species.flatMap((one) => [one.name, ...one.alsoCalled].map((name) => [sameWords(name), one] as const)),
);
const byId = new Map(species.map((one) => [one.id, one]));

/** The species of that name, its words in any order, or by another name of the trade. */
export function findSpecies(name: string): Species | undefined {
  return byName.get(sameWords(name));
}

export function speciesById(id: string): Species | undefined {
  return byId.get(id);
}
