import { count } from '../answer/quantity.ts';
import { gluing } from './glue-steps.ts';
import type { MillingInput } from './milling-input.ts';
import { asGlued, type Panel, parts } from './panel.ts';
import { byWay, type StepDraft } from './step-draft.ts';
import type { Ways } from './ways.ts';

/** Sub-panels glued to one panel, and the seams that no planer reaches brought flush. */
export function joinSteps(panels: readonly Panel[], ways: Ways, input: MillingInput): StepDraft[] {
  const joined = panels.filter((panel) => panel.groups.length > 1);
  const edges = joined.flatMap((panel) =>
    parts(panel).map((piece) => ({
      ...piece,
      size: { ...piece.size, thickness: Math.min(piece.size.thickness, panel.part.thickness) },
    })),
  );
  return [
    ...byWay(
      edges,
      ({ size }) => ways.sawnEdge(size) ?? 'bench',
      (pieces) => ({
        stage: 'panel seam',
        title: 'Joint the edges between sub-panels',
        todo: 'One light pass, faces alternating at the fence; try the seam dry.',
        why: 'Planing and drying may have moved them.',
        pieces,
      }),
    ),
    ...gluing(
      'glue panels',
      'Glue the sub-panels to one',
      'Line the faces up: they are at thickness.',
      joined.map((panel) => ({ ...wholePanel(panel), from: parts(panel).map(({ id }) => id) })),
      input,
    ),
    ...flushSteps(panels, input),
  ];
}

function flushSteps(panels: readonly Panel[], { practice, shop }: MillingInput): StepDraft[] {
  const open = panels.flatMap((panel) => {
    const { groups, part } = panel;
    const planed = parts(panel).some(({ size }) => size.thickness - part.thickness > 0.05);
    const seams = (groups.length > 1 || planed ? groups : groups.flat()).length - 1;
    return seams > 0 ? [{ panel, seams }] : [];
  });
  if (open.length === 0) return [];
  return [
    {
      stage: 'flush seams',
      way: shop.handPlanes ? 'hand plane' : 'bench',
      title: 'Bring the seams flush',
      todo: 'Scraper or finely set plane along {seams} open seams, no deeper than the step.',
      why: 'Too wide for the planer now; only the seams stand proud.',
      quantities: { seams: count(open.reduce((sum, { seams }) => sum + seams, 0)) },
      target: { dimension: 'thickness', tolerance: practice.thicknessToleranceMm.value * 2 },
      pieces: open.map(({ panel }) => {
        const piece = wholePanel(panel);
        return { ...piece, target: piece.size.thickness };
      }),
    },
  ];
}

/** A panel in one piece, at its part's thickness if it has that much. */
function wholePanel(panel: Panel) {
  const size = asGlued(panel);
  return { ...panel, size: { ...size, thickness: Math.min(size.thickness, panel.part.thickness) } };
}
