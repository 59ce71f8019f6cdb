import type { Phrase } from '../answer/phrase.ts';
import { cautionsFor } from './cautions.ts';
import type { MachineLimits } from './machine-limits.ts';
import type { Caution, MillingStep, Stage, StepPiece, Target } from './milling-step.ts';
import type { Way } from './ways.ts';

/** What a stage says about a step; id and cautions follow from it. */
export interface StepDraft {
  readonly stage: Stage;
  readonly way: Way;
  /** What tells apart the steps of one stage at one machine: a setting, a panel. */
  readonly key?: string | number;
  readonly title: Phrase;
  readonly todo: Phrase;
  readonly why: Phrase;
  readonly target?: Target;
  readonly pieces: readonly StepPiece[];
  readonly waits?: number;
  readonly setting?: Phrase;
  /** Cautions of this very work, before the machine's usual ones. */
  readonly cautions?: readonly Caution[];
}

const slug = (text: string): string => text.replace(/[^a-zA-Z0-9.#@-]+/g, '-');

/** A step from its draft: the id from what it is, so that the same work keeps its ticks in a new plan. */
export function stepFrom(draft: StepDraft, limits: MachineLimits): MillingStep {
  const { stage, way, key, cautions = [], ...said } = draft;
  const shown = typeof key === 'number' ? String(Math.round(key * 100) / 100) : key;
  const id = [stage, way.machine, way.carrier ? 'carrier' : '', shown ?? ''].filter((piece) => piece !== '');
  return {
    id: id.map(slug).join(':'),
    stage,
    machine: way.machine,
    ...said,
    cautions: [...cautions, ...cautionsFor(way.machine, said.pieces, limits)],
    ...(way.carrier ? { carrier: true as const } : {}),
  };
}

/** The items in groups of the same key, groups in the order in which they first come up. */
export function grouped<T>(items: readonly T[], keyOf: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group) group.push(item);
    else groups.set(keyOf(item), [item]);
  }
  return [...groups.values()];
}

export const wayKey = (way: Way): string => `${way.machine}${way.carrier ? ' carrier' : ''}`;
