import { byWay, type StepDraft } from './step-draft.ts';
import type { TargetedPiece } from './thickness-targets.ts';
import type { EdgeWay, FaceWay, Ways } from './ways.ts';

const faceTodo: Readonly<Record<FaceWay, string>> = {
  jointer: 'Hollow face down, light passes, until all of it is cut.',
  'planer carrier': 'Shimmed on the sled so that it can’t rock, wedges glued or pinned; plane the upper face.',
  'router carrier': 'Shimmed and wedged between two rails; rout the upper face crosswise in light passes.',
  'hand plane': 'High corners and crown first, then across the grain, then along it.',
};

/** One face flat, by the way each piece has here. */
export function faceSteps(
  stage: 'first flattening' | 'face',
  pieces: readonly TargetedPiece[],
  ways: Ways,
): StepDraft[] {
  const last = stage === 'face';
  return byWay(
    pieces,
    ({ size }) => ways.face(size),
    (group, way) => ({
      stage,
      title: last ? 'Flatten one face' : 'Flatten one face, roughly',
      todo: `${faceTodo[way]} Read it with winding sticks.`,
      why: last ? 'All else is measured from this face.' : 'It will move; the last milling trues it.',
      pieces: group,
    }),
  );
}

const edgeTodo: Readonly<Record<EdgeWay, string>> = {
  jointer: 'Marked face to the fence, hollow edge down, until straight; check it with a square.',
  'guided saw': 'Marked face down, one cut along the rail, just enough to clean it.',
  'table saw carrier': 'Clamped to a straight-edged carrier that runs along the fence, rough edge overhanging.',
  'router carrier': 'Rout along a clamped straight edge, a little at a time.',
  'hand plane': 'Square to the marked face and straight: try square, straightedge.',
};

/** One edge straight and square to the marked face. */
export function edgeSteps(pieces: readonly TargetedPiece[], ways: Ways): StepDraft[] {
  return byWay(
    pieces,
    ({ size }) => ways.edge(size),
    (group, way) => ({
      stage: 'edge',
      title: 'Joint one edge square',
      todo: edgeTodo[way],
      why: 'Every width starts from this edge.',
      pieces: group,
    }),
  );
}

const markTexts = {
  'mark face': ['Mark the face', 'On the flat face, its tail to the edge that is jointed next.'],
  'mark edge': ['Mark the edge', 'On the jointed edge, pointing at the face mark.'],
} as const;

/** The face mark and the edge mark, on every piece. */
export function markSteps(stage: keyof typeof markTexts, pieces: readonly TargetedPiece[]): StepDraft[] {
  const [title, todo] = markTexts[stage];
  return byWay(
    pieces,
    () => 'bench',
    (group) => ({ stage, title, todo, why: 'Later nobody remembers which side is true.', pieces: group }),
  );
}
