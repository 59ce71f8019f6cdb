import { phrase } from '../answer/phrase.ts';
import { count, mm } from '../answer/quantity.ts';
import type { MillingInput } from './milling-input.ts';
import type { StepPiece } from './milling-step.ts';
import type { FinishedPiece } from './panel.ts';
import { byWay, type StepDraft } from './step-draft.ts';
import type { CrosscutWay, SawWay, Ways } from './ways.ts';
import { unitName } from './workpiece.ts';

/** Final widths of panels, then everything crosscut square to length, then panels that fold are mitred. */
export function finalSteps(
  panels: readonly FinishedPiece[],
  solids: readonly FinishedPiece[],
  ways: Ways,
  input: MillingInput,
): StepDraft[] {
  const trimmed = panels.map((panel) => ({ ...panel, size: { ...panel.size, width: panel.part.width } }));
  return [...finalWidths(panels, ways), ...crosscuts([...trimmed, ...solids], ways, input), ...folds(trimmed, ways)];
}

const widthTodo: Readonly<Record<SawWay, string>> = {
  'table saw': 'Straightest edge to the fence; as much off both edges centres the seams.',
  'guided saw': 'One edge straight, then the other parallel, measured at both ends.',
  'hand saw': 'Gauge the width, saw beside the line, plane to it.',
};

function finalWidths(panels: readonly FinishedPiece[], ways: Ways): StepDraft[] {
  return byWay(
    panels,
    ({ size, part }) => ways.ripPanel(size, part.width),
    (group, way, { part }) => ({
      stage: 'final width',
      title: phrase`Cut the panels to ${mm(part.width)} wide`,
      todo: widthTodo[way],
      why: 'One setting makes all equal.',
      target: { dimension: 'width', value: part.width },
      pieces: group,
    }),
    ({ part }) => part.width,
  );
}

const crosscutTodo: Readonly<Record<CrosscutWay, string>> = {
  'table saw': 'On the sled: one end square, then against a stop on the sled, never the rip fence.',
  'guided saw': 'Rail square to the straight edge; one end, the length from it.',
  'mitre saw': 'Straight edge to the fence: one end square, then the length from a stop.',
  'hand saw': 'Knife a line all around, saw beside it, trim to it.',
};

function crosscuts(pieces: readonly FinishedPiece[], ways: Ways, { shop }: MillingInput): StepDraft[] {
  // What is left of a long piece before its last cut is the shortest that must be held, the whole the longest.
  const wayOf = ({ size, units, part }: FinishedPiece) => {
    const last = size.length - (units.length - 1) * (part.length + shop.crosscutKerf);
    const atLast = ways.crosscut({ ...size, length: last });
    return atLast === 'hand saw' ? atLast : ways.crosscut(size);
  };
  return byWay(
    pieces,
    wayOf,
    (group, way, { part }) => {
      const several = group.some(({ units }) => units.length > 1);
      return {
        stage: 'crosscut',
        title: phrase`Crosscut square to ${mm(part.length)}`,
        todo: `${crosscutTodo[way]}${several ? ' Hold the long piece.' : ''}`,
        why: several ? 'In one length until now, for safety.' : 'Snipe and checks go with the ends.',
        target: { dimension: 'length', value: part.length },
        pieces: group.flatMap((piece) => unitPieces(piece, shop.crosscutKerf)),
      };
    },
    ({ part }) => part.length,
  );
}

/** A piece per unit: the first is cut off the whole length, each next one off what is left of it. */
function unitPieces(piece: FinishedPiece, kerf: number): StepPiece[] {
  const { id, label, part, units, size } = piece;
  if (part.panel) return [piece];
  return units.map((unit, index) => ({
    id: `${part.id}#${unit}`,
    label: units.length === 1 ? label : unitName(part, [unit]),
    size: { ...size, length: size.length - index * (part.length + kerf) },
    from: [id],
  }));
}

function folds(panels: readonly FinishedPiece[], ways: Ways): StepDraft[] {
  return panels.flatMap(({ id, label, part: { folds: sections = [], length }, size: whole }): StepDraft[] => {
    if (sections.length < 2) return [];
    const size = { ...whole, length };
    return [
      {
        stage: 'fold',
        way: ways.crosscut(size),
        key: id,
        title: `Mitre the sections of ${label}`,
        todo: phrase`Number the ${count(sections.length)} sections on the outer face first. Blade tilted as laid out with the panel, tried on scrap; cut in order from one end, long point to long point.`,
        why: 'In order, the figure runs on round the corners.',
        target: { dimension: 'length' },
        pieces: sections.map((section, index) => ({
          id: `${id}/fold${index + 1}`,
          label: `${label} · ${section.name}`,
          size,
          target: section.length,
          from: [id],
        })),
        mind: 'A tilted blade traps the piece between fence and blade: keep the offcut side free.',
      },
    ];
  });
}
