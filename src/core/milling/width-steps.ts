import { phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { MillingInput } from './milling-input.ts';
import type { Size } from './milling-step.ts';
import { byWay, type StepDraft } from './step-draft.ts';
import type { TargetedPiece } from './thickness-targets.ts';
import type { SawnEdgeWay, SawWay, Ways } from './ways.ts';
import type { StripWork } from './workpiece.ts';

/** A strip on its way from the blank to the panel or the finished part. */
export interface StripPiece extends StripWork {
  /** The workpiece it was ripped from. */
  readonly workpiece: string;
  readonly size: Size;
  /** Thickness before any gluing, in mm. */
  readonly final: number;
}

const atWidth = (piece: StripPiece, width: number): StripPiece => ({ ...piece, size: { ...piece.size, width } });

/**
 * Rip to parallel width, then joint the sawn edge; without a tool to joint it the saw cuts to the final width.
 * Gives the steps, and every strip at its finished width.
 */
export function widthSteps(
  pieces: readonly TargetedPiece[],
  ways: Ways,
  input: MillingInput,
): { steps: StepDraft[]; strips: StripPiece[] } {
  const sawn = pieces.flatMap(({ id: workpiece, strips, size, final }) =>
    strips.map((strip): StripPiece => ({ ...strip, workpiece, size, final })),
  );
  const finished = sawn.map((piece) => atWidth(piece, piece.finished));
  const ripTo = ({ size, finished: width }: StripPiece) =>
    hundredths(width + (ways.sawnEdge({ ...size, width }) ? input.practice.sawnEdgeMm.value : 0));
  const ripped = sawn.map((piece) => atWidth(piece, Math.min(piece.size.width, ripTo(piece))));
  return { steps: [...ripParallel(sawn, ripTo, ways), ...sawnEdges(ripped, ways)], strips: finished };
}

/** Sums of decimal figures, without the dust of binary fractions. */
const hundredths = (value: number): number => Math.round(value * 100) / 100;

const ripTodo: Readonly<Record<SawWay, string>> = {
  'table saw': 'Marked face down, marked edge along the fence.',
  'guided saw': 'Marked face down, the rail parallel to the marked edge.',
  'hand saw': 'Gauge it from the marked edge, saw beside the line.',
};

function ripParallel(pieces: readonly StripPiece[], ripTo: (piece: StripPiece) => number, ways: Ways): StepDraft[] {
  return byWay(
    pieces,
    (piece) => ways.rip(piece.size, ripTo(piece)),
    (group, way, first) => {
      const value = ripTo(first);
      const severalFromOne = new Set(group.map(({ workpiece }) => workpiece)).size < group.length;
      return {
        stage: 'rip parallel',
        title: phrase`Rip to ${mm(value)}`,
        todo: `${ripTodo[way]}${severalFromOne ? ' Joint the new edge before the next strip.' : ''}`,
        why:
          value > first.finished
            ? 'The surplus is for jointing the sawn edge.'
            : 'Fine blade, slow feed: the edge stays as sawn.',
        target: { dimension: 'width', value },
        pieces: group.map((piece) => (piece.workpiece === piece.id ? piece : { ...piece, from: [piece.workpiece] })),
      };
    },
    ripTo,
  );
}

/** The sawn edge, and what else for seams. */
const edgeTodo: Readonly<Record<SawnEdgeWay, readonly [edge: string, seam: string]>> = {
  jointer: ['One light pass on the sawn edge.', 'For seams, alternate: marked face to the fence, the next away.'],
  'hand plane': ['Plane the sawn edge to the line.', 'For seams, plane two neighbours at once, folded like a book.'],
  'router carrier': [
    'Rout along a clamped straight edge, a little at a time.',
    'For seams, two neighbours at one setting of it.',
  ],
};

const sawnEdges = (pieces: readonly StripPiece[], ways: Ways): StepDraft[] =>
  byWay(
    pieces,
    ({ size }) => ways.sawnEdge(size),
    (group, way) => {
      const [edge, seam] = edgeTodo[way];
      const seams = group.some(({ part }) => part.panel);
      return {
        stage: 'sawn edge',
        title: 'Joint the sawn edge',
        todo: `${edge}${seams ? ` ${seam}` : ''}`,
        why: seams ? 'What is off square cancels out.' : 'Saw marks gone, width to size.',
        target: { dimension: 'width' },
        pieces: group.map((piece) => ({ ...piece, target: piece.finished })),
      };
    },
  );
