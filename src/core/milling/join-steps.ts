import { phrase } from '../answer/phrase.ts';
import { count } from '../answer/quantity.ts';
import { gluing } from './glue-steps.ts';
import type { MillingInput } from './milling-input.ts';
import type { Size, StepPiece } from './milling-step.ts';
import { asGlued, type Panel, parts, stepPiece } from './panel.ts';
import { grouped, type StepDraft, wayKey } from './step-draft.ts';
import type { Way, Ways } from './ways.ts';

/** Sub-panels glued to one panel, and the seams that no planer reaches brought flush. */
export function joinSteps(panels: readonly Panel[], ways: Ways, { practice, shop }: MillingInput): StepDraft[] {
  const joined = panels.filter((panel) => panel.groups.length > 1);
  const flat = (size: Size, need: number): Size => ({ ...size, thickness: Math.min(size.thickness, need) });
  const edges = joined.flatMap((panel) =>
    parts(panel).map((piece) => ({ ...piece, size: flat(piece.size, panel.part.thickness) })),
  );
  const edgeWay = (piece: StepPiece): Way => ways.sawnEdge(piece.size) ?? { machine: 'bench' };
  const seams = grouped(edges, (piece) => wayKey(edgeWay(piece))).map(
    (group): StepDraft => ({
      stage: 'panel seam',
      way: edgeWay(group[0] as StepPiece),
      title: phrase('Freshen the edges between sub-panels'),
      todo: phrase('One light pass, faces alternating against the fence; try the seam dry against the light.'),
      why: phrase('Planing and drying may have moved them; the last seam gets a fresh, straight edge.'),
      pieces: group.map(stepPiece),
    }),
  );
  const whole = joined.map((panel) => ({
    id: panel.id,
    label: panel.label,
    size: flat(asGlued(panel), panel.part.thickness),
    from: parts(panel).map((piece) => piece.id),
  }));
  const why = 'Already flat and at thickness: line the faces up at every seam.';
  const flush = panels.filter((panel) => {
    const unplaned = parts(panel).every((piece) => piece.size.thickness - panel.part.thickness <= 0.05);
    return panel.groups.length > 1 || (unplaned && panel.groups.flat().length > 1);
  });
  const last = flush.map((panel) => ({
    id: panel.id,
    label: panel.label,
    size: flat(asGlued(panel), panel.part.thickness),
  }));
  const flushStep: StepDraft = {
    stage: 'flush seams',
    way: { machine: shop.handPlanes ? 'hand plane' : 'bench' },
    title: phrase('Bring the seams flush'),
    todo: phrase('Scraper or finely set plane along the {seams} open seams, no deeper than the step itself.', {
      seams: count(
        flush.reduce((sum, { groups }) => sum + (groups.length > 1 ? groups.length - 1 : groups.flat().length - 1), 0),
      ),
    }),
    why: phrase('Too wide for the planer now; only the seams stand proud.'),
    target: { dimension: 'thickness', tolerance: practice.thicknessToleranceMm.value * 2 },
    pieces: last.map((piece) => ({ ...piece, target: piece.size.thickness })),
  };
  return [
    ...seams,
    ...gluing('glue panels', 'Glue the sub-panels to one', why, whole, practice.glueRestSeconds.value),
    ...(last.length > 0 ? [flushStep] : []),
  ];
}
