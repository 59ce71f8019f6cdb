import { phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import { glueSteps } from './glue-steps.ts';
import { joinSteps } from './join-steps.ts';
import type { MillingInput, MillingPart } from './milling-input.ts';
import type { Size } from './milling-step.ts';
import { asGlued, type Panel, parts } from './panel.ts';
import type { Setback } from './sort-out.ts';
import { byWay, grouped, type StepDraft } from './step-draft.ts';
import { subPanels } from './sub-panels.ts';
import type { Ways } from './ways.ts';
import type { StripPiece } from './width-steps.ts';
import { unitKey, unitName } from './workpiece.ts';

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
  const ofPanels = strips.filter(({ strip }) => strip.part.panel);
  const all = grouped(ofPanels, ({ strip }) => unitKey(strip)).map((pieces): Panel => {
    const { strip } = pieces[0] as StripPiece;
    const { part, units } = strip;
    // Strips at the part's thickness already are not planed again: all seams are glued at once.
    const planed = pieces.some(({ final }) => final > part.thickness);
    const widths = pieces.map(({ size }) => size.width);
    const groups = subPanels(widths, planed ? input.shop.planerWidth : null);
    return {
      id: unitKey(strip),
      label: unitName(part, units),
      part,
      units,
      groups: groups.map((group) => group.map((index) => pieces[index] as StripPiece)),
    };
  });
  const narrow = all.filter((panel) => asGlued(panel).width < panel.part.width - 0.01);
  const panels = all.filter((panel) => !narrow.includes(panel));
  return {
    steps: [
      ...orderSteps(panels),
      ...glueSteps(panels, input),
      ...levelSteps(panels, ways, input),
      ...joinSteps(panels, ways, input),
    ],
    panels: panels.map((panel) => ({
      ...panel,
      from: stripIds(panel),
      size: { ...asGlued(panel), thickness: panel.part.thickness },
    })),
    setbacks: narrow.map((panel) => ({
      id: panel.id,
      label: panel.label,
      kind: 'panel too narrow',
      say: phrase('Its strips add up to {width} of {need}: mill one more.', {
        width: mm(asGlued(panel).width),
        need: mm(panel.part.width),
      }),
    })),
  };
}

const stripIds = ({ groups }: Panel): string[] => groups.flat().map(({ id }) => id);

const orderSteps = (panels: readonly Panel[]): StepDraft[] =>
  byWay(
    panels.filter(({ groups }) => groups.flat().length > 1),
    () => 'bench',
    (glued) => ({
      stage: 'panel order',
      title: 'Order and mark the strips',
      todo: 'Best faces up, grain one way, colour matched; try the seams dry. Draw a triangle across each panel.',
      why: 'The triangle puts every strip back in its place.',
      pieces: glued.map((panel) => ({ ...panel, size: asGlued(panel), from: stripIds(panel) })),
    }),
  );

function levelSteps(panels: readonly Panel[], ways: Ways, { practice }: MillingInput): StepDraft[] {
  // A sub-panel of one strip is planed with the others, so that all come out at one thickness.
  const over = panels.flatMap((panel) =>
    parts(panel)
      .map((piece) => ({ ...piece, need: panel.part.thickness }))
      .filter(({ size, need }) => size.thickness - need > 0.05),
  );
  return byWay(
    over,
    ({ size, need }) => ways.thickness(size, need),
    (pieces, _, { need: value }) => ({
      stage: 'level panel',
      title: 'Plane the glued panels to {value}',
      todo: 'A little off each face in turn, all panels at each setting.',
      why: 'Seams level, one thickness.',
      target: { dimension: 'thickness', value, tolerance: practice.thicknessToleranceMm.value },
      pieces,
      mind: 'Hard beads of glue nick knives and are thrown: scrape them off first.',
    }),
    ({ need }) => need,
  );
}
