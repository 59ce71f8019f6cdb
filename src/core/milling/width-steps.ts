import { phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { MillingInput } from './milling-input.ts';
import type { Size } from './milling-step.ts';
import { grouped, type StepDraft, wayKey } from './step-draft.ts';
import type { TargetedPiece } from './thickness-targets.ts';
import type { Ways } from './ways.ts';
import type { StripWork } from './workpiece.ts';

/** A strip on its way from the blank to the panel or the finished part. */
export interface StripPiece {
  readonly id: string;
  readonly label: string;
  readonly strip: StripWork;
  /** The workpiece it was ripped from. */
  readonly from: string;
  readonly size: Size;
  /** Thickness before any gluing, in mm. */
  readonly final: number;
}

/**
 * Rip to parallel width, then joint the sawn edge; without a tool to joint it the saw cuts to the final width.
 * Gives the steps, and every strip at its finished width.
 */
export function widthSteps(
  pieces: readonly TargetedPiece[],
  ways: Ways,
  input: MillingInput,
): { steps: StepDraft[]; strips: StripPiece[] } {
  const sawn: StripPiece[] = pieces.flatMap((piece) =>
    piece.strips.map((strip) => ({
      id: strip.id,
      label: strip.label,
      strip,
      from: piece.id,
      size: piece.size,
      final: piece.final,
    })),
  );
  const jointed = (piece: StripPiece) => ways.sawnEdge({ ...piece.size, width: piece.strip.finished });
  const ripTo = (piece: StripPiece) =>
    hundredths(piece.strip.finished + (jointed(piece) ? input.practice.sawnEdgeMm.value : 0));
  const ripped = sawn.map((piece) => ({
    ...piece,
    size: { ...piece.size, width: Math.min(piece.size.width, ripTo(piece)) },
  }));
  const finished = ripped.map((piece) => ({ ...piece, size: { ...piece.size, width: piece.strip.finished } }));
  return { steps: [...ripParallel(sawn, ripTo, ways, input), ...sawnEdges(ripped, ways, input)], strips: finished };
}

/** Sums of decimal figures, without the dust of binary fractions. */
const hundredths = (mm: number): number => Math.round(mm * 100) / 100;

const ripTodo: Readonly<Record<string, string>> = {
  'table saw': 'Marked face down, marked edge along the fence.',
  'guided saw': 'Marked face down, set the rail parallel to the marked edge at both ends.',
  'hand saw': 'Gauge the width from the marked edge, saw beside the line.',
};

function ripParallel(
  pieces: readonly StripPiece[],
  ripTo: (piece: StripPiece) => number,
  ways: Ways,
  { practice }: MillingInput,
): StepDraft[] {
  const wayOf = (piece: StripPiece) => ways.ripParallel(piece.size, ripTo(piece));
  const order = [...pieces].sort((one, other) => ripTo(other) - ripTo(one));
  return grouped(order, (piece) => `${wayKey(wayOf(piece))} ${ripTo(piece).toFixed(1)}`).map((group): StepDraft => {
    const first = group[0] as StripPiece;
    const way = wayOf(first);
    const value = ripTo(first);
    const severalFromOne = new Set(group.map((piece) => piece.from)).size < group.length;
    return {
      stage: 'rip parallel',
      way,
      key: value,
      title: phrase('Rip to {value}', { value: mm(value) }),
      todo: phrase(
        `${ripTodo[way.machine] ?? ''}${severalFromOne ? ' Joint the new edge before the next strip is ripped off.' : ''}`,
      ),
      why: phrase(
        value > first.strip.finished
          ? 'Both edges parallel; what is over is for jointing the sawn edge.'
          : 'Both edges parallel; a fine blade and a slow feed leave the edge as it stays.',
      ),
      target: { dimension: 'width', value, tolerance: practice.widthToleranceMm.value },
      pieces: group.map(({ id, label, size, from }) => ({ id, label, size, ...(from === id ? {} : { from: [from] }) })),
      setting: phrase('Fence or rail at {value}.', { value: mm(value) }),
    };
  });
}

const edgeTodo: Readonly<Record<string, string>> = {
  jointer: 'One light pass on the sawn edge.',
  'hand plane': 'Plane the sawn edge to the line.',
  'router carrier': 'Rout the sawn edge along a clamped straight edge, a little at a time.',
};

const seamTodo: Readonly<Record<string, string>> = {
  jointer: ' For seams, alternate: marked face to the fence, the next one marked face away.',
  'hand plane': ' For seams, fold the two neighbours together like a book and plane both edges at once.',
  'router carrier': ' For seams, rout the two neighbours with one setting of the straight edge.',
};

function sawnEdges(pieces: readonly StripPiece[], ways: Ways, { practice }: MillingInput): StepDraft[] {
  const able = pieces.flatMap((piece) => {
    const way = ways.sawnEdge(piece.size);
    return way ? [{ piece, way }] : [];
  });
  return grouped(able, ({ way }) => wayKey(way)).map((group): StepDraft => {
    const way = (group[0] as (typeof group)[number]).way;
    const seams = group.some(({ piece }) => piece.strip.part.panel);
    return {
      stage: 'sawn edge',
      way,
      title: phrase('Joint the sawn edge'),
      todo: phrase(`${edgeTodo[wayKey(way)] ?? ''}${seams ? (seamTodo[wayKey(way)] ?? '') : ''}`),
      why: phrase(
        seams
          ? 'What the fence is off square then cancels between neighbours, and the panel comes out flat.'
          : 'Saw marks gone, width to size.',
      ),
      target: { dimension: 'width', tolerance: practice.widthToleranceMm.value },
      pieces: group.map(({ piece: { id, label, size, strip } }) => ({ id, label, size, target: strip.finished })),
    };
  });
}
