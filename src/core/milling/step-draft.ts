import { phrase, type Words } from '../answer/phrase.ts';
import { caution, cautionsFor } from './cautions.ts';
import type { MillingInput } from './milling-input.ts';
import type { Machine, MillingStep, Stage, StepPiece, Target } from './milling-step.ts';
import type { Way } from './ways.ts';

/** What a stage says about a step; id and cautions follow from it. */
export interface StepDraft {
  readonly stage: Stage;
  readonly way: Way;
  readonly title: Words;
  readonly todo: Words;
  readonly why: Words;
  /** Held to the usual tolerance of its dimension unless it has its own. */
  readonly target?: Omit<Target, 'tolerance'> & Partial<Pick<Target, 'tolerance'>>;
  readonly pieces: readonly StepPiece[];
  readonly waits?: number;
  /** What to mind at this very work, before the machine's usual cautions. */
  readonly mind?: string;
  /** What tells apart the steps of one stage at one machine, where the target doesn't. */
  readonly key?: string;
}

const slug = (text: string): string => text.replace(/[^a-zA-Z0-9.#@-]+/g, '-');

/** A step from its draft: the id from what it is, so that the same work keeps its ticks in a new plan. */
export function stepFrom(draft: StepDraft, { limits, practice }: MillingInput): MillingStep {
  const { stage, way, title, todo, why, target, pieces, waits, mind, key } = draft;
  const [machine, carrier] = way.split(/ (?=carrier)/) as [Machine, string?];
  const value = target?.value;
  const name = key ?? (value === undefined ? undefined : String(Math.round(value * 100) / 100));
  return {
    id: [stage, machine, carrier, name].flatMap((word) => (word === undefined ? [] : slug(word))).join(':'),
    stage,
    machine,
    title: phrase`${title}`,
    todo: phrase`${todo}`,
    why: phrase`${why}`,
    ...(target && { target: { tolerance: practice[`${target.dimension}ToleranceMm`].value, ...target } }),
    // A piece as a step keeps it, without what else is known of it.
    pieces: pieces.map(({ id, label, size, target: own, from }) => ({
      id,
      label,
      size,
      ...(own !== undefined && { target: own }),
      ...(from && { from }),
    })),
    ...(waits !== undefined && { waits }),
    cautions: [...(mind ? [caution(mind)] : []), ...cautionsFor(machine, pieces, limits)],
    ...(carrier && { carrier: true as const }),
  };
}

/** The items in groups of the same key, groups in the order in which they first come up. */
export function grouped<T>(items: readonly T[], keyOf: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return [...groups.values()];
}

/** A draft for each way and setting, the largest setting first, for the pieces that have a way. */
export function byWay<P, W extends Way>(
  pieces: readonly P[],
  wayOf: (piece: P) => W | null,
  draft: (group: readonly P[], way: W, first: P) => Omit<StepDraft, 'way'>,
  settingOf: (piece: P) => number = () => 0,
): StepDraft[] {
  const able = pieces.flatMap((piece) => ({ piece, way: wayOf(piece), setting: settingOf(piece) }));
  const order = able.sort((one, other) => other.setting - one.setting);
  return grouped(order, ({ way, setting }) => `${way} ${setting.toFixed(1)}`).flatMap((group) => {
    const { piece, way } = group[0] as (typeof group)[number];
    if (way === null) return [];
    return {
      way,
      ...draft(
        group.map((one) => one.piece),
        way,
        piece,
      ),
    };
  });
}
