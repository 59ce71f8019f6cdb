import { pick, type Random } from './random.ts';
import type { Waiting } from './waiting.ts';
import type { Weights } from './weights.ts';

/** How one attempt at rebuilding a draft weighs things; varied from attempt to attempt so that they don't all end alike. */
export interface Mood {
  readonly random: Random;
  /** What still waits for a place. */
  readonly waiting: Waiting;
  /** What leftover width is believed to be worth, as a share of the wood it is. */
  readonly credit: number;
  /** How far costs are blurred. */
  readonly blur: number;
  /** Whether open blanks may be lengthened for a longer part; the length of a run is then shared out more carefully. */
  readonly lengthen: boolean;
  readonly weights: Weights;
}

const credits = [0, 0.4, 0.8, 0.95, 1.05];
const blurs = [0, 0, 0.01, 0.03, 0.1];

/** A mood drawn at random: mixed moods find plans that one alone would miss. */
export function moodOf(random: Random, waiting: Waiting, weights: Weights): Mood {
  return {
    random,
    waiting,
    credit: credits[pick(random, credits.length)] ?? 0,
    blur: blurs[pick(random, blurs.length)] ?? 0,
    lengthen: random() < 0.5,
    weights,
  };
}

/** A cost that is now and then a little dearer, by the mood's blur. */
export const blurred = (mood: Mood, cost: number): number =>
  mood.blur === 0 ? cost : cost * (1 + mood.blur * mood.random());
