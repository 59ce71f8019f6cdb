import type { Phrase } from '../answer/phrase.ts';
import type { Range } from '../answer/range.ts';
import type { SourceId } from '../answer/source-id.ts';

/** The five waits of a glue-up, in the order in which they come. All in seconds. */
export interface AdhesiveTimes {
  /** From the first glue spread until the joint must be brought together. */
  readonly open: Range;
  /** From brought together until the clamps must be tight. */
  readonly closed: Range;
  /** From tight until the clamps may come off. */
  readonly clamp: Range;
  /** From unclamped until the joint may be scraped, planed or sanded. */
  readonly rest: Range;
  /** From tight until full strength. */
  readonly cure: Range;
}

export type AdhesivePhase = keyof AdhesiveTimes;

/** What a label calls each of them, in their order. */
export const phaseNames: Readonly<Record<AdhesivePhase, string>> = {
  open: 'Open time',
  closed: 'Closed time',
  clamp: 'Clamp time',
  rest: 'Rest before planing',
  cure: 'Time to full strength',
};

export const adhesivePhases = Object.keys(phaseNames) as readonly AdhesivePhase[];

/**
 * Whether the maker works against the clock in it. Otherwise he waits.
 *
 * @param phase of a glue-up
 * @returns yes or no
 * @valid any phase
 * @example ['open', 'clamp'].map(isHurry) // => [true, false]
 * @source common practice
 */
export const isHurry = (phase: AdhesivePhase): boolean => phase === 'open' || phase === 'closed';

/**
 * Times put together phase by phase.
 *
 * @param timeOf gives the time of a phase, seconds
 * @returns times of all phases, seconds
 * @valid any times
 * @example timesBy(() => range(60)).cure // => { least: 60, most: 60 }
 * @source as of the times
 */
export const timesBy = (timeOf: (phase: AdhesivePhase) => Range): AdhesiveTimes =>
  Object.fromEntries(adhesivePhases.map((phase) => [phase, timeOf(phase)])) as unknown as AdhesiveTimes;

/** A kind of adhesive, never a brand. Times hold at 20 degrees Celsius. */
export interface Adhesive {
  readonly id: string;
  readonly name: string;
  readonly seconds: AdhesiveTimes;
  /** Below this, degrees Celsius, it does not set as it should. */
  readonly leastCelsius: number;
  /** Why not below that. */
  readonly tooCold: string;
  /** By what a time is multiplied for each 10 degrees Celsius warmer: `working` for open and closed, `setting` for the rest. */
  readonly per10Celsius: { readonly working: number; readonly setting: number };
  /** Grams per m2 of joint, both faces together. */
  readonly gramsPerM2: Range;
  readonly kgPerM3: number;
  readonly gapFilling: 'none' | 'slight' | 'good';
  /** Share of the pressure that the wood's density asks for: 1 for glues that must be squeezed thin. */
  readonly pressureShare: number;
  readonly squeezeOut: Phrase;
  readonly cautions: readonly Phrase[];
  readonly source: SourceId;
}
