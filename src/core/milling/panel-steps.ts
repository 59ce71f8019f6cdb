import { phrase } from '../answer/phrase.ts';
import { mm, seconds } from '../answer/quantity.ts';
import type { MillingInput } from './milling-input.ts';
import type { StepPiece } from './milling-step.ts';
import { type FinishedPiece, type Panel, panelOf, thinned } from './panel.ts';
import type { Setback } from './sort-out.ts';
import { byWay, grouped, type StepDraft } from './step-draft.ts';
import type { Ways } from './ways.ts';
import type { StripPiece } from './width-steps.ts';
import { unitKey } from './workpiece.ts';

/**
 * From jointed strips to flat panels: order and mark, glue in sub-panels that fit the planer, plane those after a
 * rest, joint and glue them to one, seams flush. A panel that lacks width is held back and reported.
 */
export function panelSteps(
  strips: readonly StripPiece[],
  ways: Ways,
  input: MillingInput,
): { steps: StepDraft[]; panels: FinishedPiece[]; setbacks: Setback[] } {
  const all = grouped(strips, unitKey).map((own) => panelOf(own, input.shop));
  const lacks = ({ size, part }: Panel) => size.width < part.width - 0.01;
  const panels = all.filter((panel) => !lacks(panel));
  const inParts = panels.filter(({ subs }) => subs.length > 1);
  const levelled = (panel: Panel) => thinned(panel, panel.part.thickness);
  return {
    steps: [
      ...orderSteps(panels),
      ...gluing(
        'glue',
        inParts.length > 0 ? 'Glue up the sub-panels' : 'Glue up the panels',
        inParts.length > 0
          ? 'They fit the planer: only the last seams are left to flush.'
          : 'Levelled at the planer, or by hand.',
        panels.flatMap(({ subs }) => subs).filter(({ seams }) => seams > 0),
        input,
      ),
      ...levelSteps(panels, ways),
      ...seamSteps(inParts, ways),
      ...gluing(
        'glue panels',
        'Glue the sub-panels to one',
        'Line the faces up: they are at thickness.',
        inParts.map((panel) => ({ ...levelled(panel), from: panel.subs.map(({ id }) => id) })),
        input,
      ),
      ...flushSteps(panels, input),
    ],
    panels: panels.map(levelled),
    setbacks: all.filter(lacks).map(({ id, label, size, part }) => ({
      id,
      label,
      kind: 'panel too narrow',
      say: phrase`Its strips add up to ${mm(size.width)} of ${mm(part.width)}: mill one more.`,
    })),
  };
}

const orderSteps = (panels: readonly Panel[]): StepDraft[] =>
  byWay(
    panels.filter(({ from }) => from.length > 1),
    () => 'bench',
    (pieces) => ({
      stage: 'panel order',
      title: 'Order and mark the strips',
      todo: 'Best faces up, grain one way, colours matched; try the seams dry. Draw a triangle across each panel.',
      why: 'The triangle puts every strip back in its place.',
      pieces,
    }),
  );

/** Glue, and let the seams dry; nothing when there is nothing to glue. */
function gluing(
  stage: 'glue' | 'glue panels',
  title: string,
  why: string,
  pieces: readonly StepPiece[],
  { practice }: MillingInput,
): StepDraft[] {
  if (pieces.length === 0) return [];
  return [
    {
      stage,
      way: 'clamps',
      title,
      todo: 'Dry run first. Triangle whole, seams level, clamps over and under in turn.',
      why,
      pieces,
    },
    {
      stage: `${stage} rest`,
      way: 'rack',
      title: 'Let the seams dry',
      todo: phrase`Out of the clamps when the glue says so, then ${seconds(practice.glueRestSeconds.value)} with air on both faces.`,
      why: 'Glue swells the seam: planed too soon, it sinks.',
      pieces,
      waits: practice.glueRestSeconds.value,
    },
  ];
}

/** The sub-panels of a panel that are still to be planed, each with the thickness that it needs. */
const toPlane = ({ subs, part: { thickness: need } }: Panel) =>
  subs.map((sub) => ({ ...sub, need })).filter(({ size }) => size.thickness - need > 0.05);

/** A sub-panel of one strip is planed with the others, so that all come out at one thickness. */
const levelSteps = (panels: readonly Panel[], ways: Ways): StepDraft[] =>
  byWay(
    panels.flatMap(toPlane),
    ({ size, need }) => ways.thickness(size, need),
    (pieces, _, { need: value }) => ({
      stage: 'level panel',
      title: phrase`Plane the glued panels to ${mm(value)}`,
      todo: 'A little off each face in turn, all at each setting.',
      why: 'Seams level, one thickness.',
      target: { dimension: 'thickness', value },
      pieces,
      mind: 'Hard beads of glue nick knives and are thrown: scrape them off first.',
    }),
    ({ need }) => need,
  );

const seamSteps = (inParts: readonly Panel[], ways: Ways): StepDraft[] =>
  byWay(
    inParts.flatMap(({ subs, part }) => subs.map((sub) => thinned(sub, part.thickness))),
    ({ size }) => ways.sawnEdge(size) ?? 'bench',
    (pieces) => ({
      stage: 'panel seam',
      title: 'Joint the edges between sub-panels',
      todo: 'One light pass, faces alternating at the fence; try the seam dry.',
      why: 'They may have moved.',
      pieces,
    }),
  );

/** The seams that no planer reaches brought flush. */
function flushSteps(panels: readonly Panel[], { practice, shop }: MillingInput): StepDraft[] {
  const open = panels.map((panel) => {
    const parts = panel.subs.length > 1 || toPlane(panel).length > 0 ? panel.subs : panel.from;
    return { panel, seams: parts.length - 1 };
  });
  return byWay(
    open.filter(({ seams }) => seams > 0),
    () => (shop.handPlanes ? 'hand plane' : 'bench'),
    (pieces) => ({
      stage: 'flush seams',
      title: 'Bring the seams flush',
      todo: 'Scraper or finely set plane along the open seams, no deeper than the step.',
      why: 'Too wide for the planer now; only seams stand proud.',
      target: { dimension: 'thickness', tolerance: practice.thicknessToleranceMm.value * 2 },
      pieces: pieces.map(({ panel }) => {
        const piece = thinned(panel, panel.part.thickness);
        return { ...piece, target: piece.size.thickness };
      }),
    }),
  );
}
