import { phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { MillingInput } from './milling-input.ts';
import type { Machine, Stage } from './milling-step.ts';
import { restSteps } from './rough-steps.ts';
import { grouped, type StepDraft, wayKey } from './step-draft.ts';
import type { TargetedPiece } from './thickness-targets.ts';
import type { Way, Ways } from './ways.ts';

const plainPiece = ({ id, label, size }: TargetedPiece) => ({ id, label, size });

/** The pieces at a new thickness; widths and lengths stay. */
const thinned = (pieces: readonly TargetedPiece[], to: (piece: TargetedPiece) => number): TargetedPiece[] =>
  pieces.map((piece) => ({ ...piece, size: { ...piece.size, thickness: Math.min(piece.size.thickness, to(piece)) } }));

/**
 * First milling of wood that loses much: flat on one face, over thickness on the other, then a rest.
 * Gives the steps, and all pieces as they come out of it.
 */
export function firstMilling(
  pieces: readonly TargetedPiece[],
  ways: Ways,
  input: MillingInput,
): { steps: StepDraft[]; pieces: TargetedPiece[] } {
  const twice = pieces.filter((piece) => piece.first !== null);
  const flattened = thinned(twice, (piece) => onceFlat(piece, input));
  const planed = thinned(flattened, (piece) => piece.first ?? piece.final);
  const { practice } = input;
  const thick = twice.some((piece) => piece.need >= practice.thickMm.value);
  const wait = thick ? practice.restThickSeconds.value : practice.restSeconds.value;
  const after = new Map(planed.map((piece) => [piece.id, piece]));
  return {
    steps: [
      ...faceSteps('first flattening', twice, ways),
      ...thicknessSteps('first thickness', flattened, ways, input, (piece) => piece.first ?? piece.final),
      ...restSteps('rest', planed, wait, 'Rest before the last milling'),
    ],
    pieces: pieces.map((piece) => after.get(piece.id) ?? piece),
  };
}

/** Face, face mark, edge square to it, edge mark, the other face to thickness. */
export function lastMilling(
  pieces: readonly TargetedPiece[],
  ways: Ways,
  input: MillingInput,
): { steps: StepDraft[]; pieces: TargetedPiece[] } {
  const rough = pieces.filter((piece) => !piece.flat);
  const faced = pieces.map((piece) =>
    piece.flat
      ? piece
      : (thinned([piece], () => (piece.first === null ? onceFlat(piece, input) : flatAgain(piece, input)))[0] ?? piece),
  );
  const half = input.shop.edgeAllowance / 2;
  const edged = faced.map((piece) => ({ ...piece, size: { ...piece.size, width: piece.size.width - half } }));
  const thick = edged.filter(
    ({ flat, size, final }) => !flat || size.thickness - final > input.practice.flatEnoughMm.value,
  );
  return {
    steps: [
      ...checkSurfacedSteps(
        pieces.filter((piece) => piece.flat),
        input,
      ),
      ...faceSteps('face', rough, ways),
      ...markSteps('mark face', faced),
      ...edgeSteps(faced, ways),
      ...markSteps('mark edge', edged),
      ...thicknessSteps('thickness', thick, ways, input, (piece) => piece.final),
    ],
    pieces: thinned(edged, (piece) => (thick.includes(piece) ? piece.final : piece.size.thickness)),
  };
}

/** Solid wood left at the thinnest spot once the first face is flat: the warp is gone on that side, one cleaning too. */
const onceFlat = ({ reachable, blank }: TargetedPiece, { shop }: MillingInput): number =>
  reachable + (blank.board.surfaced ? 0 : shop.faceAllowance);

/** The second flattening takes half of what was left for it. */
const flatAgain = ({ final }: TargetedPiece, { practice }: MillingInput): number =>
  final + practice.secondMillingMm.value / 2;

const faceTodo: Readonly<Record<string, string>> = {
  jointer: 'Hollow face down, light passes, until the knives have touched from end to end.',
  'planer carrier':
    "Shim the blank on the sled so that it can't rock, wedges glued or pinned; plane the upper face flat.",
  'router carrier':
    'Shim and wedge the blank between two rails and rout its upper face flat, crosswise, in light passes.',
  'hand plane': 'Plane the high corners and the crown first, then across the grain, then along it.',
};

function faceSteps(stage: 'first flattening' | 'face', pieces: readonly TargetedPiece[], ways: Ways): StepDraft[] {
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

function edgeSteps(pieces: readonly TargetedPiece[], ways: Ways): StepDraft[] {
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

function markSteps(stage: 'mark face' | 'mark edge', pieces: readonly TargetedPiece[]): StepDraft[] {
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

const thicknessTodo: Readonly<Record<string, string>> = {
  planer: 'Marked face down, thickest piece first, every piece at each setting before the next turn of the crank.',
  'planer carrier': 'Fixed to a flat carrier, for short ones between longer rails of the same thickness; light passes.',
  'router carrier': 'Marked face down between two rails; rout the upper face down in light passes.',
  'hand plane': 'Gauge a line all around from the marked face and plane down to it.',
};

function thicknessSteps(
  stage: 'first thickness' | 'thickness',
  pieces: readonly TargetedPiece[],
  ways: Ways,
  { practice }: MillingInput,
  to: (piece: TargetedPiece) => number,
): StepDraft[] {
  const order = [...pieces].sort((one, other) => to(other) - to(one));
  return grouped(order, (piece) => to(piece).toFixed(2)).flatMap((setting) => {
    const value = to(setting[0] as TargetedPiece);
    return byWay(
      setting,
      (piece) => ways.thickness(piece.size, value),
      (way, group) => ({
        stage,
        way,
        key: value,
        title: phrase('Thickness to {value}', { value: mm(value) }),
        todo: phrase(`${thicknessTodo[wayKey(way)] ?? ''}${snipe(way)}`),
        why: phrase(whyThickness(stage, group)),
        target: { dimension: 'thickness', value, tolerance: practice.thicknessToleranceMm.value },
        pieces: group.map(plainPiece),
        setting: phrase('Last pass at {value}, all of them at this one setting.', { value: mm(value) }),
      }),
    );
  });
}

const snipe = (way: Way): string => (way.machine === 'planer' ? ' Snipe falls in the waste at the ends.' : '');

function whyThickness(stage: Stage, group: readonly TargetedPiece[]): string {
  if (stage === 'first thickness')
    return 'Over thickness on purpose: what is left is for the last milling after the rest.';
  const over = group.some((piece) => piece.final > piece.need);
  return over
    ? 'A little over thickness: the panel is planed after gluing. One setting makes all strips equal.'
    : "One setting makes all of them equal, to the part's own thickness.";
}

function checkSurfacedSteps(pieces: readonly TargetedPiece[], { practice }: MillingInput): StepDraft[] {
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

/** Drafts per way, for the pieces that have one. */
function byWay(
  pieces: readonly TargetedPiece[],
  wayOf: (piece: TargetedPiece) => Way | null,
  draft: (way: Way, group: readonly TargetedPiece[]) => StepDraft,
): StepDraft[] {
  const able = pieces.flatMap((piece) => {
    const way = wayOf(piece);
    return way ? [{ piece, way }] : [];
  });
  return grouped(able, ({ way }) => wayKey(way)).map((group) =>
    draft(
      (group[0] as (typeof group)[number]).way,
      group.map(({ piece }) => piece),
    ),
  );
}
