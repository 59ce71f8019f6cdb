import type { SourceId } from '../core/answer/source-id.ts';
import type { MovementFigures } from '../core/movement/movement-figures.ts';
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

function idOf(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z]+/g, '-')
    .replace(/^-|-$/g, '');
}

/** Names of the trade beside the handbook's. */
const tradeNames: Readonly<Record<string, string>> = {
  'cherry, black': 'cherry',
  'maple, red': 'soft maple',
  'maple, sugar': 'hard maple',
  'oak, red (commercial)': 'red oak',
  'walnut, black': 'walnut',
  'yellow-poplar': 'poplar',
};

const none = undefined;

/**
 * One line of the table.
 *
 * @param gravity at 12 % moisture, recalled from the handbook's Table 5-3
 * @param change coefficients of Table 13-5, and for white fir the example on p. 13-17
 * @param shrinks percent, Tables 4-3 and 4-4
 * @param shrinksFrom where `shrinks` is not read but recalled
 */
function row(
  name: string,
  pores: Pores,
  gravity: number | undefined,
  change: Pair | undefined,
  shrinks: Triple | undefined,
  shrinksFrom: SourceId = 'wood-handbook',
): Species {
  const tradeName = tradeNames[name];
  return {
    id: idOf(name),
    name,
    alsoCalled: tradeName === undefined ? [] : [tradeName],
    pores,
    ...(gravity !== undefined && { specificGravity: { value: gravity, source: 'wood-handbook-memory' } }),
    ...(change && { coefficients: { radial: change[0], tangential: change[1], source: 'wood-handbook' } }),
    ...(shrinks && {
      shrinkage: { radial: shrinks[0], tangential: shrinks[1], volumetric: shrinks[2], source: shrinksFrom },
    }),
  };
}

// Where a figure is missing, the handbook's table has none for that name, or it could not be recalled: it is left out
// rather than borrowed from a similar wood. The imported woods' specific gravities are tabulated for the green volume only.
export const species: readonly Species[] = [
  // name, pores, specific gravity, change radial and tangential, shrinkage radial, tangential and volumetric
  row('alder, red', 'closed', 0.41, [0.00151, 0.00256], [4.4, 7.3, 12.6]),
  row('ash, black', 'open', 0.49, [0.00172, 0.00274], [5.0, 7.8, 15.2]),
  row('ash, green', 'open', 0.56, [0.00169, 0.00274], [4.6, 7.1, 12.5]),
  row('ash, white', 'open', 0.6, [0.00169, 0.00274], [4.9, 7.8, 13.3]),
  row('aspen, quaking', 'closed', 0.38, [0.00119, 0.00234], [3.5, 6.7, 11.5]),
  row('basswood, American', 'closed', 0.37, [0.0023, 0.0033], [6.6, 9.3, 15.8]),
  row('beech, American', 'closed', 0.64, [0.0019, 0.00431], [5.5, 11.9, 17.2]),
  row('birch, paper', 'closed', 0.55, [0.00219, 0.00304], [6.3, 8.6, 16.2]),
  row('birch, sweet', 'closed', 0.65, [0.00256, 0.00338], none),
  row('birch, yellow', 'closed', 0.62, [0.00256, 0.00338], [7.3, 9.5, 16.8]),
  row('butternut', 'open', 0.38, [0.00116, 0.00223], [3.4, 6.4, 10.6]),
  row('cherry, black', 'closed', 0.5, [0.00126, 0.00248], [3.7, 7.1, 11.5]),
  row('chestnut, American', 'open', 0.43, [0.00116, 0.00234], [3.4, 6.7, 11.6]),
  row('cottonwood, eastern', 'closed', 0.4, [0.00133, 0.00327], [3.9, 9.2, 13.9]),
  row('elm, American', 'open', 0.5, [0.00144, 0.00338], [4.2, 9.5, 14.6]),
  row('elm, rock', 'open', 0.63, [0.00165, 0.00285], none),
  row('hackberry', 'open', 0.53, [0.00165, 0.00315], [4.8, 8.9, 13.8]),
  row('hickory, pecan', 'open', 0.66, [0.00169, 0.00315], [4.9, 8.9, 13.6]),
  row('honeylocust', 'open', none, [0.00144, 0.0023], none),
  row('locust, black', 'open', 0.69, [0.00158, 0.00252], none),
  row('magnolia, southern', 'closed', 0.5, [0.00187, 0.0023], none),
  row('maple, bigleaf', 'closed', 0.48, [0.00126, 0.00248], none),
  row('maple, red', 'closed', 0.54, [0.00137, 0.00289], [4.0, 8.2, 12.6], 'wood-handbook-memory'),
  row('maple, silver', 'closed', 0.47, [0.00102, 0.00252], none),
  row('maple, sugar', 'closed', 0.63, [0.00165, 0.00353], [4.8, 9.9, 14.7], 'wood-handbook-memory'),
  row('oak, northern red', 'open', 0.63, none, [4.0, 8.6, 13.7], 'wood-handbook-memory'),
  row('oak, red (commercial)', 'open', none, [0.00158, 0.00369], none),
  row('oak, white', 'open', 0.68, none, [5.6, 10.5, 16.3]),
  row('oak, white (commercial)', 'open', none, [0.0018, 0.00365], none),
  row('persimmon', 'closed', none, [0.00278, 0.00403], none),
  row('sassafras', 'open', 0.46, [0.00137, 0.00216], [4.0, 6.2, 10.3]),
  row('sweetgum', 'closed', 0.52, [0.00183, 0.00365], [5.3, 10.2, 15.8]),
  row('sycamore, American', 'closed', 0.49, [0.00172, 0.00296], [5.0, 8.4, 14.1]),
  row('tupelo, black', 'closed', 0.5, [0.00176, 0.00308], [5.1, 8.7, 14.4]),
  row('walnut, black', 'open', 0.55, [0.0019, 0.00274], [5.5, 7.8, 12.8]),
  row('yellow-poplar', 'closed', 0.42, none, [4.6, 8.2, 12.7]),
  row('cedar, eastern red', 'softwood', 0.47, none, [3.1, 4.7, 7.8]),
  row('cedar, Port-Orford', 'softwood', 0.43, none, [4.6, 6.9, 10.1]),
  row('cedar, western red', 'softwood', 0.32, none, [2.4, 5.0, 6.8]),
  row('Douglas-fir, coast', 'softwood', 0.48, none, [4.8, 7.6, 12.4]),
  row('fir, balsam', 'softwood', 0.35, none, [2.9, 6.9, 11.2]),
  row('fir, noble', 'softwood', 0.39, none, [4.3, 8.3, 12.4]),
  row('fir, white', 'softwood', 0.39, [0.00112, 0.00245], [3.3, 7.0, 9.8]),
  row('pine, eastern white', 'softwood', 0.35, none, [2.1, 6.1, 8.2], 'wood-handbook-memory'),
  row('pine, ponderosa', 'softwood', 0.4, none, [3.9, 6.2, 9.7], 'wood-handbook-memory'),
  row('redwood, old-growth', 'softwood', 0.4, none, [2.6, 4.4, 6.8], 'wood-handbook-memory'),
  row('spruce, Sitka', 'softwood', 0.4, none, [4.3, 7.5, 11.5], 'wood-handbook-memory'),
  row('mahogany, African (Khaya)', 'open', none, none, [2.5, 4.5, 8.8]),
  row('mahogany, true (Swietenia macrophylla)', 'open', none, none, [3.0, 4.1, 7.8]),
  row('teak', 'open', none, none, [2.5, 5.8, 7.0], 'wood-handbook-memory'),
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
