import type { Outcome } from '../answer/problem.ts';
import { checkMillingInput } from './check-milling-input.ts';
import { cutWorkpieces } from './cut-workpieces.ts';
import { finalSteps } from './final-steps.ts';
import { firstMilling, lastMilling } from './flatten-steps.ts';
import { layBlanks } from './lay-blanks.ts';
import type { MillingInput } from './milling-input.ts';
import { type MillingStep, stages } from './milling-step.ts';
import { thinned } from './panel.ts';
import { panelSteps } from './panel-steps.ts';
import { crosscutSteps, restRippedSteps, ripSteps } from './rough-steps.ts';
import { crookSetback, type Setback, setbackOf } from './sort-out.ts';
import { type StepDraft, stepFrom } from './step-draft.ts';
import { thicknessTargets } from './thickness-targets.ts';
import { waysOf } from './ways.ts';
import { widthSteps } from './width-steps.ts';

/**
 * The order of work from rough boards to finished parts, for these blanks and this shop.
 *
 * @param input blanks of a breakdown plan, boards with their warp, parts, machines owned with their limits, habits; mm
 * @returns steps in the order they are done, each at one machine and one setting for all its pieces. What can't be made
 *   is in the first step, stage `decide`, and in no later one. The same input gives the same steps and ids
 * @valid solid wood, edge-glued along the grain
 * @errors measurements that can't be, blanks off their board or overlapping, parts or boards that are not there
 * @example millingSequence(oneShelf).map(({ stage }) => stage)
 *   // => [
 *     'mark out',
 *     'crosscut rough',
 *     'face',
 *     'mark face',
 *     'edge',
 *     'mark edge',
 *     'thickness',
 *     'rip parallel',
 *     'sawn edge',
 *     'crosscut',
 *   ]
 * @source common practice
 */
export function millingSequence(input: MillingInput): Outcome<MillingStep[]> {
  const wrong = checkMillingInput(input);
  if (wrong) return wrong;

  const ways = waysOf(input.shop, input.limits);
  const blanks = layBlanks(input);
  const workpieces = cutWorkpieces(blanks, input);
  const setbacks = workpieces.flatMap((piece) => setbackOf(piece, ways, input) ?? []);
  const lost = new Set(setbacks.map(({ id }) => id));
  const sound = workpieces.filter((piece) => !lost.has(piece.id));
  const used = blanks.filter((blank) => sound.some((piece) => piece.blank === blank));

  const first = firstMilling(thicknessTargets(sound, ways, input), ways, input);
  const last = lastMilling(first.pieces, ways, input);
  const widths = widthSteps(last.pieces, ways, input);
  const panels = panelSteps(
    widths.strips.filter(({ part }) => part.panel),
    ways,
    input,
  );
  const solids = widths.strips.filter(({ part }) => !part.panel).map((piece) => thinned(piece, piece.final));

  const drafts: StepDraft[] = [
    ...decideSteps([...setbacks, ...used.flatMap((blank) => crookSetback(blank, input) ?? []), ...panels.setbacks]),
    ...crosscutSteps(used, ways, input),
    ...ripSteps(sound, ways, input),
    ...restRippedSteps(sound, input),
    ...first.steps,
    ...last.steps,
    ...widths.steps,
    ...panels.steps,
    ...finalSteps(panels.panels, solids, ways, input),
  ];
  return drafts
    .sort((one, other) => stages.indexOf(one.stage) - stages.indexOf(other.stage))
    .map((draft) => stepFrom(draft, input));
}

/** What must be decided before the first cut: a step per piece that can't be made as planned. */
function decideSteps(setbacks: readonly Setback[]): StepDraft[] {
  const none = { thickness: 0, width: 0, length: 0 };
  return setbacks.map(({ id, label, kind, say }) => ({
    stage: 'decide',
    way: 'bench',
    key: id,
    title: `${label}: ${kind}`,
    todo: say,
    why: 'Before the first cut: choose other wood, or change the part.',
    pieces: [{ id, label, size: none }],
  }));
}
