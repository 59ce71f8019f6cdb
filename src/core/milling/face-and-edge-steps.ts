import { phrase } from '../answer/phrase.ts';
import type { MillingInput } from './milling-input.ts';
import type { Machine } from './milling-step.ts';
import { byWay, plainPiece } from './piece-drafts.ts';
import { grouped, type StepDraft, wayKey } from './step-draft.ts';
import type { TargetedPiece } from './thickness-targets.ts';
import type { Ways } from './ways.ts';

const faceTodo: Readonly<Record<string, string>> = {
  jointer: 'Hollow face down, light passes, until the knives have touched from end to end.',
  'planer carrier':
    "Shim the blank on the sled so that it can't rock, wedges glued or pinned; plane the upper face flat.",
  'router carrier':
    'Shim and wedge the blank between two rails and rout its upper face flat, crosswise, in light passes.',
  'hand plane': 'Plane the high corners and the crown first, then across the grain, then along it.',
};

/** One face flat, by the way each piece has here. */
export function faceSteps(
  stage: 'first flattening' | 'face',
  pieces: readonly TargetedPiece[],
  ways: Ways,
): StepDraft[] {
  return byWay(
    pieces,
    (piece) => ways.face(piece.size),
    (way, group) => ({
      stage,
      way,
      title: phrase(stage === 'face' ? 'Flatten one face' : 'Flatten one face, roughly'),
      todo: phrase(`${faceTodo[wayKey(way)] ?? ''} Read it with winding sticks.`),
      why: phrase(
        stage === 'face'
          ? 'Everything after it is measured from this face.'
          : 'Wood that loses much moves afterwards; the last milling makes it true.',
      ),
      pieces: group.map(plainPiece),
    }),
  );
}

const edgeTodo: Readonly<Record<string, string>> = {
  jointer: 'Marked face against the fence, the hollow edge down, until the edge is straight; check it with a square.',
  'guided saw': 'Marked face down, one straight cut along the rail, just enough to clean the edge.',
  'table saw carrier':
    'Clamp the blank on a straight-edged carrier, rough edge overhanging, and cut the edge straight.',
  'router carrier': 'Clamp a straight edge over the blank and rout its edge straight, a little at a time.',
  'hand plane': 'Plane the edge straight and square to the marked face; try square and straightedge.',
};

/** One edge straight and square to the marked face. */
export function edgeSteps(pieces: readonly TargetedPiece[], ways: Ways): StepDraft[] {
  return byWay(
    pieces,
    (piece) => ways.edge(piece.size),
    (way, group) => ({
      stage: 'edge',
      way,
      title: phrase('Joint one edge square'),
      todo: phrase(edgeTodo[wayKey(way)] ?? ''),
      why: phrase('The saw and every width start from this edge.'),
      pieces: group.map(plainPiece),
    }),
  );
}

const markTexts = {
  'mark face': [
    'Mark the face',
    'Pencil the face mark on the flat face, its tail running to the edge that is jointed next.',
  ],
  'mark edge': ['Mark the edge', 'Pencil the edge mark on the jointed edge, pointing at the face mark.'],
} as const;

/** The face mark and the edge mark, on every piece. */
export function markSteps(stage: 'mark face' | 'mark edge', pieces: readonly TargetedPiece[]): StepDraft[] {
  if (pieces.length === 0) return [];
  const [title, todo] = markTexts[stage];
  return [
    {
      stage,
      way: { machine: 'bench' },
      title: phrase(title),
      todo: phrase(todo),
      why: phrase('An hour later nobody remembers which side is true.'),
      pieces: pieces.map(plainPiece),
    },
  ];
}

/** Stock that came planed and flat is only looked over. */
export function checkSurfacedSteps(pieces: readonly TargetedPiece[], { practice }: MillingInput): StepDraft[] {
  if (pieces.length === 0) return [];
  return grouped(pieces, (piece) => piece.final.toFixed(2)).map((group) => {
    const value = (group[0] as TargetedPiece).final;
    return {
      stage: 'face',
      way: { machine: 'bench' as Machine },
      key: value,
      title: phrase('Check the surfaced faces'),
      todo: phrase(
        'Winding sticks and straightedge on each piece; choose the better face. What rocks is flattened like rough wood.',
      ),
      why: phrase('Planed stock may have moved since it was planed.'),
      target: {
        dimension: 'thickness',
        value,
        tolerance: Math.max(practice.flatEnoughMm.value, practice.thicknessToleranceMm.value),
      },
      pieces: group.map(plainPiece),
    } satisfies StepDraft;
  });
}
