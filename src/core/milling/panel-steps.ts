import { phrase } from '../answer/phrase.ts';
import { count, mm, seconds } from '../answer/quantity.ts';
import type { MillingInput, MillingPart } from './milling-input.ts';
import type { Size, StepPiece } from './milling-step.ts';
import type { Setback } from './sort-out.ts';
import { grouped, type StepDraft, wayKey } from './step-draft.ts';
import { subPanels } from './sub-panels.ts';
import type { Way, Ways } from './ways.ts';
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

interface Panel {
  readonly id: string;
  readonly label: string;
  readonly part: MillingPart;
  readonly unit: number;
  readonly groups: readonly StripPiece[][];
}

const widthOf = (pieces: readonly StripPiece[]): number => pieces.reduce((sum, piece) => sum + piece.size.width, 0);
const lengthOf = (pieces: readonly StripPiece[]): number => Math.min(...pieces.map((piece) => piece.size.length));

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

const asGlued = ({ groups }: Panel, pieces = groups.flat()): Size => ({
  thickness: Math.max(...pieces.map((piece) => piece.size.thickness)),
  width: widthOf(pieces),
  length: lengthOf(pieces),
});

/** The sub-panels of a panel as pieces to tick: the panel itself when there is one only. */
function parts(panel: Panel): (StepPiece & { readonly seams: number })[] {
  return panel.groups.map((group, index) => ({
    id: panel.groups.length === 1 ? panel.id : `${panel.id}${String.fromCharCode(97 + index)}`,
    label: panel.groups.length === 1 ? panel.label : `${panel.label} sub-panel ${index + 1} of ${panel.groups.length}`,
    size: asGlued(panel, group),
    from: group.map((piece) => piece.id),
    seams: group.length - 1,
  }));
}

const stepPiece = ({ id, label, size, from }: StepPiece): StepPiece => ({ id, label, size, ...(from ? { from } : {}) });

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

function glueSteps(panels: readonly Panel[], { practice }: MillingInput): StepDraft[] {
  const pieces = panels.flatMap(parts).filter((part) => part.seams > 0);
  const inParts = panels.some((panel) => panel.groups.length > 1);
  const title = inParts ? 'Glue up the sub-panels' : 'Glue up the panels';
  const why = inParts
    ? 'Each sub-panel still fits the planer, so that only the last seams are flushed by hand.'
    : 'The whole panel still fits the planer, or is levelled by hand.';
  return gluing('glue', title, why, pieces.map(stepPiece), practice.glueRestSeconds.value);
}

function gluing(
  stage: 'glue' | 'glue panels',
  title: string,
  why: string,
  pieces: readonly StepPiece[],
  waits: number,
): StepDraft[] {
  if (pieces.length === 0) return [];
  return [
    {
      stage,
      way: { machine: 'clamps' },
      title: phrase(title),
      todo: phrase('Dry run first. Triangle whole, seams level, clamps over and under in turn.'),
      why: phrase(why),
      pieces,
    },
    {
      stage: stage === 'glue' ? 'glue rest' : 'glue panels rest',
      way: { machine: 'rack' },
      title: phrase('Let the seams dry'),
      todo: phrase('Out of the clamps when the glue says so, then leave them with air on both faces for {wait}.', {
        wait: seconds(waits),
      }),
      why: phrase('Glue swells the seam; planed too soon, it sinks later and shows.'),
      pieces,
      waits,
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
      cautions: [
        { say: phrase('Hard beads of glue nick knives and are thrown: scrape them off.'), source: 'common-practice' },
      ],
    };
  });
}

function joinSteps(panels: readonly Panel[], ways: Ways, { practice, shop }: MillingInput): StepDraft[] {
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
