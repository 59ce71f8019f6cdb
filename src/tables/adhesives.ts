import { phrase } from '../core/answer/phrase.ts';
import { range, scaled } from '../core/answer/range.ts';
import type { Adhesive } from '../core/gluing/adhesive.ts';
import { sameWords } from './same-words.ts';

const minutes = (least: number, most: number) => scaled(range(least, most), 60);
const hours = (least: number, most: number) => scaled(range(least, most), 3600);

const sheetFirst = phrase("The label and the adhesive's data sheet come first.");
const resinGloves = phrase('Wear nitrile gloves and air the room: resin and hardener can make skin allergic for good.');
const dustMask = phrase('Mix powder under extraction or with a dust mask on.');

/**
 * Kinds of adhesive, each figure a habit of the trade at 20 degrees Celsius and 50 percent humidity: a place to start
 * until the maker types in what the label says.
 */
export const adhesives: readonly Adhesive[] = [
  {
    id: 'pva-interior',
    name: 'PVA, interior',
    alsoCalled: ['PVA', 'white glue', 'yellow glue', 'wood glue'],
    seconds: {
      open: minutes(5, 10),
      closed: minutes(5, 10),
      clamp: minutes(30, 60),
      rest: hours(12, 24),
      cure: hours(24, 24),
    },
    leastCelsius: 10,
    tooCold: 'the film dries to a white chalk instead of a glue line',
    per10Celsius: { working: 0.67, setting: 0.67 },
    gramsPerM2: range(150, 220),
    kgPerM3: 1100,
    gapFilling: 'none',
    pressureShare: 1,
    squeezeOut: phrase('Leave it until it is rubbery, then peel or scrape it. A wet rag drives it into the pores.'),
    cautions: [phrase('Keep it from freezing. Creeps under steady load: not for bent laminations.'), sheetFirst],
    source: 'common-practice',
  },
  {
    id: 'pva-water-resistant',
    name: 'PVA, water-resistant',
    alsoCalled: ['PVA, waterproof', 'PVA D3', 'PVA, exterior'],
    seconds: {
      open: minutes(4, 8),
      closed: minutes(4, 8),
      clamp: minutes(45, 60),
      rest: hours(12, 24),
      cure: hours(24, 48),
    },
    leastCelsius: 10,
    tooCold: 'the film dries to a white chalk instead of a glue line',
    per10Celsius: { working: 0.67, setting: 0.67 },
    gramsPerM2: range(150, 220),
    kgPerM3: 1100,
    gapFilling: 'none',
    pressureShare: 1,
    squeezeOut: phrase('Scrape it when rubbery. Left to harden it chips plane irons and tears the grain.'),
    cautions: [phrase('Not for joints that stay under water.'), sheetFirst],
    source: 'common-practice',
  },
  {
    id: 'polyurethane',
    name: 'Polyurethane, foaming',
    alsoCalled: ['Polyurethane', 'PU'],
    seconds: {
      open: minutes(15, 20),
      closed: minutes(10, 20),
      clamp: hours(2, 4),
      rest: hours(4, 12),
      cure: hours(24, 24),
    },
    leastCelsius: 10,
    tooCold: 'it sets too slowly to foam and wet the wood',
    per10Celsius: { working: 0.6, setting: 0.6 },
    gramsPerM2: range(100, 180),
    kgPerM3: 1120,
    gapFilling: 'slight',
    pressureShare: 1,
    squeezeOut: phrase('Let the foam harden, then slice it off with a chisel. Wiping smears it.'),
    cautions: [
      phrase('Contains isocyanate: gloves, fresh air, and none of it for anyone with asthma.'),
      phrase('Needs moisture: dampen one face of dry wood. Foam in a gap has no strength.'),
      sheetFirst,
    ],
    source: 'common-practice',
  },
  {
    id: 'hide-liquid',
    name: 'Hide glue, liquid',
    alsoCalled: ['Hide glue', 'Liquid hide'],
    seconds: {
      open: minutes(10, 15),
      closed: minutes(10, 15),
      clamp: hours(6, 12),
      rest: hours(12, 24),
      cure: hours(24, 48),
    },
    leastCelsius: 15,
    tooCold: 'it gels before the joint is closed',
    per10Celsius: { working: 0.8, setting: 0.67 },
    gramsPerM2: range(150, 250),
    kgPerM3: 1200,
    gapFilling: 'none',
    pressureShare: 1,
    squeezeOut: phrase(
      'Wipe it off with a warm damp rag, or pare it when leathery. What is left hardly shows under finish.',
    ),
    cautions: [phrase('Test old stock: a drop that does not dry hard by next day is spoiled.'), sheetFirst],
    source: 'common-practice',
  },
  {
    id: 'hide-hot',
    name: 'Hide glue, hot',
    alsoCalled: ['Hot hide'],
    seconds: {
      open: minutes(1, 2),
      closed: minutes(1, 2),
      clamp: hours(2, 12),
      rest: hours(12, 24),
      cure: hours(24, 48),
    },
    leastCelsius: 18,
    tooCold: 'it gels before the joint is closed',
    // It sets by cooling first: a warm room gives more time to close, and drying is quicker all the same.
    per10Celsius: { working: 1.5, setting: 0.67 },
    gramsPerM2: range(150, 250),
    kgPerM3: 1150,
    gapFilling: 'none',
    pressureShare: 1,
    squeezeOut: phrase('Pare it off when it has gelled, or wipe it with a warm damp rag.'),
    cautions: [
      phrase('Keep the pot at about {pot}: above that the glue weakens, and it scalds.', {
        pot: { value: 60, unit: 'celsius' },
      }),
      phrase('Warm the wood before spreading.'),
      sheetFirst,
    ],
    source: 'common-practice',
  },
  {
    id: 'epoxy-fast',
    name: 'Epoxy, fast',
    alsoCalled: [],
    seconds: {
      open: minutes(3, 5),
      closed: minutes(2, 3),
      clamp: minutes(30, 60),
      rest: hours(2, 6),
      cure: hours(12, 24),
    },
    leastCelsius: 10,
    tooCold: 'it stays soft and never reaches full strength',
    per10Celsius: { working: 0.5, setting: 0.5 },
    gramsPerM2: range(200, 350),
    kgPerM3: 1150,
    gapFilling: 'good',
    pressureShare: 0.1,
    squeezeOut: phrase('Pare it off while it is like hard cheese. Sand only when fully cured.'),
    cautions: [
      resinGloves,
      phrase('Light pressure: hard clamping starves the joint.'),
      phrase('Mixed in bulk it heats up: mix small amounts.'),
      sheetFirst,
    ],
    source: 'common-practice',
  },
  {
    id: 'epoxy-slow',
    name: 'Epoxy, slow',
    alsoCalled: ['Epoxy'],
    seconds: {
      open: minutes(30, 60),
      closed: minutes(20, 40),
      clamp: hours(8, 16),
      rest: hours(8, 24),
      cure: hours(72, 168),
    },
    leastCelsius: 12,
    tooCold: 'it stays soft and never reaches full strength',
    per10Celsius: { working: 0.5, setting: 0.5 },
    gramsPerM2: range(200, 350),
    kgPerM3: 1150,
    gapFilling: 'good',
    pressureShare: 0.1,
    squeezeOut: phrase('Pare it off while it is like hard cheese. Sand only when fully cured.'),
    cautions: [
      resinGloves,
      phrase('Light pressure: hard clamping starves the joint.'),
      phrase('Mixed in bulk it heats up: spread it thin soon after mixing.'),
      sheetFirst,
    ],
    source: 'common-practice',
  },
  {
    id: 'urea-resin',
    name: 'Urea resin',
    alsoCalled: ['Urea formaldehyde', 'UF'],
    seconds: {
      open: minutes(10, 20),
      closed: minutes(10, 20),
      clamp: hours(6, 14),
      rest: hours(12, 24),
      cure: hours(48, 168),
    },
    leastCelsius: 18,
    tooCold: 'the resin does not cure through',
    per10Celsius: { working: 0.5, setting: 0.5 },
    gramsPerM2: range(150, 250),
    kgPerM3: 1280,
    gapFilling: 'slight',
    pressureShare: 1,
    squeezeOut: phrase('Scrape it before it is glass hard: then it chips irons and its splinters cut.'),
    cautions: [phrase('Gives off formaldehyde while it cures: air the room.'), dustMask, sheetFirst],
    source: 'common-practice',
  },
  {
    id: 'casein',
    name: 'Casein',
    alsoCalled: ['Casein glue'],
    seconds: {
      open: minutes(10, 20),
      closed: minutes(10, 20),
      clamp: hours(4, 8),
      rest: hours(24, 48),
      cure: hours(48, 168),
    },
    leastCelsius: 5,
    tooCold: 'it hardly sets',
    per10Celsius: { working: 0.67, setting: 0.67 },
    gramsPerM2: range(200, 320),
    kgPerM3: 1150,
    gapFilling: 'slight',
    pressureShare: 1,
    squeezeOut: phrase('Scrape it before it is hard. Wipe none of it on to oak, cherry or walnut.'),
    cautions: [phrase('Alkaline: it stains oak, cherry and walnut, and stings the skin.'), dustMask, sheetFirst],
    source: 'common-practice',
  },
];

const byWords = new Map(
  adhesives.flatMap((row) => [row.id, row.name, ...row.alsoCalled].map((name) => [sameWords(name), row] as const)),
);

/** The kind of that id or name, in any order of words, or by another word of the trade. */
export const findAdhesive = (name: string): Adhesive | undefined => byWords.get(sameWords(name));
