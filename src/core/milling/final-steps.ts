import { phrase } from '../answer/phrase.ts';
import { count, mm } from '../answer/quantity.ts';
import { caution } from './cautions.ts';
import type { MillingInput } from './milling-input.ts';
import type { StepPiece } from './milling-step.ts';
import type { FinishedPiece } from './panel-steps.ts';
import { grouped, type StepDraft, wayKey } from './step-draft.ts';
import type { Ways } from './ways.ts';
import type { StripPiece } from './width-steps.ts';
import { unitName } from './workpiece.ts';

/** Solid parts with their edges done; one left long holds several units until its last crosscuts. */
export function solidPieces(strips: readonly StripPiece[]): FinishedPiece[] {
  return strips
    .filter((piece) => !piece.strip.part.panel)
    .map(({ id, label, strip: { part, units }, size, final }) => ({
      id,
      label,
      part,
      units,
      from: [],
      size: { ...size, thickness: final },
    }));
}

/** Final widths of panels, then everything crosscut square to length, then panels that fold are mitred. */
export function finalSteps(
  panels: readonly FinishedPiece[],
  solids: readonly FinishedPiece[],
  ways: Ways,
  input: MillingInput,
): StepDraft[] {
  const trimmed = panels.map((panel) => ({ ...panel, size: { ...panel.size, width: panel.part.width } }));
  return [
    ...finalWidths(panels, ways, input),
    ...crosscuts([...trimmed, ...solids], ways, input),
    ...folds(trimmed, ways, input),
  ];
}

const widthTodo: Readonly<Record<string, string>> = {
  'table saw': 'Straightest edge along the fence; take the same off both edges so that the seams stay centred.',
  'guided saw': 'Cut one edge straight along the rail, then the other parallel to it, measured at both ends.',
  'hand saw': 'Gauge the line, saw beside it and plane down to it.',
};

function finalWidths(panels: readonly FinishedPiece[], ways: Ways, { practice }: MillingInput): StepDraft[] {
  const wayOf = (panel: FinishedPiece) => ways.ripPanel(panel.size, panel.part.width);
  return grouped(panels, (panel) => `${wayKey(wayOf(panel))} ${panel.part.width.toFixed(1)}`).map(
    (group): StepDraft => {
      const { part } = group[0] as FinishedPiece;
      const way = wayOf(group[0] as FinishedPiece);
      return {
        stage: 'final width',
        way,
        key: part.width,
        title: phrase('Cut the panels to {width} wide', { width: mm(part.width) }),
        todo: phrase(widthTodo[way.machine] ?? ''),
        why: phrase('All panels of one width at one setting.'),
        target: { dimension: 'width', value: part.width, tolerance: practice.widthToleranceMm.value },
        pieces: group.map(({ id, label, size, from }) => ({ id, label, size, from })),
        setting: phrase('Fence or rail at {width}.', { width: mm(part.width) }),
      };
    },
  );
}

const crosscutTodo: Readonly<Record<string, string>> = {
  'table saw':
    'On the crosscut sled: one end square first, then to length against a stop on the sled, never the rip fence.',
  'guided saw': 'Square the rail to the straight edge with a large square; one end first, then the length from it.',
  'hand saw': 'Knife a line all around, saw beside it, trim to the line against a stop.',
};

function crosscuts(pieces: readonly FinishedPiece[], ways: Ways, { practice, shop }: MillingInput): StepDraft[] {
  const order = [...pieces].sort((one, other) => other.part.length - one.part.length);
  // What is left of a long piece before its last cut is the shortest that must be held, the whole the longest.
  const wayOf = (piece: FinishedPiece) => {
    const last = piece.size.length - (piece.units.length - 1) * (piece.part.length + shop.crosscutKerf);
    const atLast = ways.crosscut({ ...piece.size, length: last });
    return atLast.machine === 'hand saw' ? atLast : ways.crosscut(piece.size);
  };
  const key = (piece: FinishedPiece) => `${wayKey(wayOf(piece))} ${piece.part.length.toFixed(1)}`;
  return grouped(order, key).map((group): StepDraft => {
    const { part } = group[0] as FinishedPiece;
    const way = wayOf(group[0] as FinishedPiece);
    const several = group.some((piece) => piece.units.length > 1);
    return {
      stage: 'crosscut',
      way,
      key: part.length,
      title: phrase('Crosscut square to {length}', { length: mm(part.length) }),
      todo: phrase(
        `${crosscutTodo[way.machine] ?? ''}${several ? ' The long piece is held, the short one is cut off it.' : ''}`,
      ),
      why: phrase(
        several
          ? 'Short parts stay in one length until now, because they were not safe over the machines.'
          : 'Snipe and checks go with the ends; a stop makes all of one length equal.',
      ),
      target: { dimension: 'length', value: part.length, tolerance: practice.lengthToleranceMm.value },
      pieces: group.flatMap((piece) => unitPieces(piece, shop.crosscutKerf)),
      setting: phrase('Stop or mark at {length}.', { length: mm(part.length) }),
    };
  });
}

/** A piece per unit: the first is cut off the whole length, each next one off what is left of it. */
function unitPieces({ id, label, part, units, size }: FinishedPiece, kerf: number): StepPiece[] {
  if (units.length === 1)
    return [{ id: part.panel ? id : `${part.id}#${units[0]}`, label, size, ...(part.panel ? {} : { from: [id] }) }];
  return units.map((unit, index) => ({
    id: `${part.id}#${unit}`,
    label: unitName(part, [unit]),
    size: { ...size, length: size.length - index * (part.length + kerf) },
    from: [id],
  }));
}

function folds(panels: readonly FinishedPiece[], ways: Ways, { practice }: MillingInput): StepDraft[] {
  return panels.flatMap((panel): StepDraft[] => {
    const sections = panel.part.folds ?? [];
    if (sections.length < 2) return [];
    const size = { ...panel.size, length: panel.part.length };
    const way = ways.crosscut(size);
    return [
      {
        stage: 'fold',
        way,
        key: panel.id,
        title: phrase(`Mitre the sections of ${panel.label}`),
        todo: phrase(
          'Number the {sections} sections across the outer face before any cut. Blade at 45 degrees, tried on scrap; cut in order from one end, each section from long point to long point.',
          { sections: count(sections.length) },
        ),
        why: phrase(
          'In order and with nothing more than the kerf between them, the figure runs on around the corners.',
        ),
        target: { dimension: 'length', tolerance: practice.lengthToleranceMm.value },
        pieces: sections.map((section, index) => ({
          id: `${panel.id}/fold${index + 1}`,
          label: `${panel.label} · ${section.name}`,
          size,
          target: section.length,
          from: [panel.id],
        })),
        cautions: [caution('A tilted blade traps the piece between fence and blade: keep the offcut side free.')],
      },
    ];
  });
}
