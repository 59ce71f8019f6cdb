import { phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import { caution } from './cautions.ts';
import { glueSteps } from './glue-steps.ts';
import { joinSteps } from './join-steps.ts';
import type { MillingInput, MillingPart } from './milling-input.ts';
import type { Size } from './milling-step.ts';
import { asGlued, lengthOf, type Panel, parts, stepPiece, widthOf } from './panel.ts';
import type { Setback } from './sort-out.ts';
import { grouped, type StepDraft, wayKey } from './step-draft.ts';
import { subPanels } from './sub-panels.ts';
import type { Ways } from './ways.ts';
import type { StripPiece } from './width-steps.ts';
import { unitName } from './workpiece.ts';

/** A unit of a part with all its edges done, before its ends are cut. */
export interface FinishedPiece {
  readonly id: string;
  readonly label: string;
  readonly part: MillingPart;
  readonly units: readonly number[];
  readonly from: readonly string[];
  readonly size: Size;
}

/**
 * From jointed strips to flat panels: order and mark, glue in sub-panels that fit the planer, plane those after a
 * rest, joint and glue them to one, seams flush. A panel that lacks width is held back and reported.
 */
export function panelSteps(
  strips: readonly StripPiece[],
  ways: Ways,
  input: MillingInput,
): { steps: StepDraft[]; panels: FinishedPiece[]; setbacks: Setback[] } {
  const ofPanels = strips.filter((piece) => piece.strip.part.panel);
  const all = grouped(ofPanels, ({ strip }) => `${strip.part.id}#${strip.units[0]}`).map((pieces): Panel => {
    const { part, units } = (pieces[0] as StripPiece).strip;
    // Strips at the part's thickness already are not planed again: all seams are glued at once.
    const planed = pieces.some((piece) => piece.final > part.thickness);
    const widths = pieces.map((piece) => piece.size.width);
    const groups = subPanels(widths, planed ? input.shop.planerWidth : null);
    return {
      id: `${part.id}#${units[0]}`,
      label: unitName(part, units),
      part,
      unit: units[0] ?? 1,
      groups: groups.map((group) => group.map((index) => pieces[index] as StripPiece)),
    };
  });
  const narrow = all.filter((panel) => widthOf(panel.groups.flat()) < panel.part.width - 0.01);
  const panels = all.filter((panel) => !narrow.includes(panel));
  return {
    steps: [
      ...orderSteps(panels),
      ...glueSteps(panels, input),
      ...levelSteps(panels, ways, input),
      ...joinSteps(panels, ways, input),
    ],
    panels: panels.map(({ id, label, part, unit, groups }) => ({
      id,
      label,
      part,
      units: [unit],
      from: groups.flat().map((piece) => piece.id),
      size: { thickness: part.thickness, width: widthOf(groups.flat()), length: lengthOf(groups.flat()) },
    })),
    setbacks: narrow.map(({ id, label, part, groups }) => ({
      id,
      label,
      kind: 'panel too narrow',
      say: phrase('Its strips add up to {width} of {need}: mill one more strip before gluing.', {
        width: mm(widthOf(groups.flat())),
        need: mm(part.width),
      }),
    })),
  };
}

function orderSteps(panels: readonly Panel[]): StepDraft[] {
  const glued = panels.filter((panel) => panel.groups.flat().length > 1);
  if (glued.length === 0) return [];
  return [
    {
      stage: 'panel order',
      way: { machine: 'bench' },
      title: phrase('Order the strips and mark the panels'),
      todo: phrase(
        'Best faces up, grain running one way, colour matched; try the seams dry. Draw a triangle across each panel.',
      ),
      why: phrase('The triangle puts every strip back in its place, glue on the fingers or not.'),
      pieces: glued.map((panel) => ({
        id: panel.id,
        label: panel.label,
        size: asGlued(panel),
        from: panel.groups.flat().map((piece) => piece.id),
      })),
    },
  ];
}

function levelSteps(panels: readonly Panel[], ways: Ways, { practice }: MillingInput): StepDraft[] {
  const work = panels.flatMap((panel) => parts(panel).map((piece) => ({ piece, need: panel.part.thickness })));
  // A sub-panel of one strip is planed with the others, so that all come out at one thickness.
  const over = work.filter(({ piece, need }) => piece.size.thickness - need > 0.05);
  const planed = over.flatMap((item) => {
    const way = ways.thickness(item.piece.size, item.need);
    return way ? [{ ...item, way }] : [];
  });
  const order = planed.sort((one, other) => other.need - one.need);
  return grouped(order, ({ way, need }) => `${wayKey(way)} ${need.toFixed(2)}`).map((group): StepDraft => {
    const { way, need } = group[0] as (typeof group)[number];
    return {
      stage: 'level panel',
      way,
      key: need,
      title: phrase('Plane the glued panels to {value}', { value: mm(need) }),
      todo: phrase('Scrape off the glue first. A little off each face in turn, all of them at each setting.'),
      why: phrase('Seams level and every panel at its thickness.'),
      target: { dimension: 'thickness', value: need, tolerance: practice.thicknessToleranceMm.value },
      pieces: group.map(({ piece }) => stepPiece(piece)),
      setting: phrase('Last pass at {value}.', { value: mm(need) }),
      cautions: [caution('Hard beads of glue nick knives and are thrown: scrape them off.')],
    };
  });
}
