import { badNumber } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import { type Dimension, type MillingStep, type StepPiece, stages } from './milling-step.ts';

/** What the maker measured on a piece at a step, in mm. */
export interface Measured {
  readonly step: string;
  readonly piece: string;
  readonly dimension: Dimension;
  readonly value: number;
  /** The maker knows that it is under the target and goes on with it. */
  readonly accepted?: boolean;
  /** A thickness at which both faces have just come clean. */
  readonly clean?: boolean;
}

/** The steps after what was measured, and what changed in words. */
export interface Followed {
  readonly steps: readonly MillingStep[];
  readonly notes: readonly Phrase[];
}

/** Two readings of the same piece with the same calliper may differ by this much, in mm. */
const readingError = 0.3;

const panelsFrom = stages.indexOf('panel order');

/**
 * The steps with their later targets and sizes following what was measured. Under a target that was accepted, all
 * pieces of that setting follow in thickness, so that they stay equal; in width the piece alone follows, and the
 * panel that it goes into gets narrower by as much.
 *
 * @param steps as millingSequence made them, or as they followed earlier readings
 * @param reading mm
 * @returns new steps, the old ones untouched, and a note for every target that moved. The same reading gives the same
 * @valid a reading of the steps given; it says nothing about earlier steps
 * @errors an unknown step or piece, a figure that isn't above zero, larger than it was before, under the target and not
 *   accepted
 * @example withMeasured(millingSequence(oneShelf), {
 *   step: 'thickness:planer:20',
 *   piece: 'B1@0',
 *   dimension: 'thickness',
 *   value: 20.1,
 * }) // => { notes: [] }
 * @source common practice
 */
export function withMeasured(steps: readonly MillingStep[], reading: Measured): Outcome<Followed> {
  const { dimension, value, accepted } = reading;
  const at = steps.findIndex(({ id }) => id === reading.step);
  const step = steps[at];
  if (!step) return problem('step', 'There is no such step in this run.');
  const piece = step.pieces.find(({ id }) => id === reading.piece);
  if (!piece) return problem('piece', 'This piece is not part of the step.');
  const wrong = badNumber('value', `The ${dimension}`, value, 'mm', { above: 0 });
  if (wrong) return wrong;
  const before = piece.size[dimension];
  if (value > before + readingError)
    return problem('value', phrase`The ${dimension} was ${mm(before)} before this step. Measure again.`);

  const target = targetOf(step, piece, dimension) ?? value;
  const under = target - value;
  const passed = step.target !== undefined && under > step.target.tolerance;
  if (passed && !accepted)
    return problem('value', phrase`${mm(under)} under the target of ${mm(target)}. Measure again, or go on with it.`);

  const oneSetting = passed && dimension === 'thickness' && step.target?.value !== undefined;
  const seeds = new Set(oneSetting ? step.pieces.map(({ id }) => id) : [piece.id]);
  const here = passed ? withTargets(step, dimension, new Map([...seeds].map((id) => [id, value]))) : step;
  const later = steps.slice(at + 1).map((after) => laterStep(after, seeds, reading, passed ? under : 0));
  return {
    steps: [...steps.slice(0, at), here, ...later.map((one) => one.step)],
    notes: [
      ...(oneSetting && step.pieces.length > 1
        ? [phrase`All pieces of this setting go to ${mm(value)}: send the done ones through again.`]
        : []),
      ...later.flatMap((one) => one.notes),
    ],
  };
}

const targetOf = (step: MillingStep, piece: StepPiece, dimension: Dimension): number | undefined =>
  step.target?.dimension === dimension ? (piece.target ?? step.target.value) : undefined;

/** The step with these pieces' targets in `dimension` at other values; its own target, and its title, when all agree. */
function withTargets(step: MillingStep, dimension: Dimension, moved: ReadonlyMap<string, number>): MillingStep {
  const { target, title, pieces } = step;
  if (target?.dimension !== dimension || moved.size === 0) return step;
  const [value = 0] = moved.values();
  const old = target.value;
  if (old !== undefined && pieces.every(({ id }) => moved.get(id) === value)) {
    return { ...step, title: saidAnew(title, old, value), target: { ...target, value } };
  }
  return {
    ...step,
    pieces: pieces.map((piece) => {
      const own = moved.get(piece.id);
      return own === undefined ? piece : { ...piece, target: own };
    }),
  };
}

/** The phrase with the new target for its figure where the old one was said. */
const saidAnew = (title: Phrase, old: number, value: number): Phrase =>
  JSON.parse(JSON.stringify(title, (_, said) => (said === old ? value : said)));

/** A later step: its pieces that come from what was measured are smaller, and so are targets that can't be met now. */
function laterStep(
  step: MillingStep,
  seeds: Set<string>,
  { dimension, value }: Measured,
  moved: number,
): { step: MillingStep; notes: Phrase[] } {
  const notes: Phrase[] = [];
  const targets = new Map<string, number>();
  // A panel is wider than the strip that was measured, a blank longer than its part: they lose what the strip lost.
  const holdsMore = dimension === 'length' || (dimension === 'width' && stages.indexOf(step.stage) >= panelsFrom);
  const pieces = step.pieces.map((piece): StepPiece => {
    if (![piece.id, ...(piece.from ?? [])].some((id) => seeds.has(id))) return piece;
    seeds.add(piece.id);
    const before = piece.size[dimension];
    const now = holdsMore ? before - moved : Math.min(before, value);
    const target = targetOf(step, piece, dimension);
    if (target !== undefined) {
      // A sawn edge is jointed by as much as planned; a panel comes out as wide as its strips still make it.
      const reached = Math.min(step.stage === 'sawn edge' ? target - moved : target, now);
      if (reached <= target - 0.005) {
        targets.set(piece.id, reached);
        notes.push(phrase`${piece.label}: ${dimension} comes to ${mm(reached)} instead of ${mm(target)}.`);
      }
    }
    return { ...piece, size: { ...piece.size, [dimension]: now } };
  });
  return { step: withTargets({ ...step, pieces }, dimension, targets), notes };
}
