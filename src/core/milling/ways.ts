import { slack } from '../breakdown/sizes.ts';
import type { MachineLimit, MachineLimits } from './machine-limits.ts';
import type { MillingShop } from './milling-input.ts';
import type { Machine, Size } from './milling-step.ts';

/** How a cut is made: at which machine, and whether the piece rides on a carrier. */
export type Way = Machine | `${'planer' | 'table saw' | 'router'} carrier`;

export type FaceWay = 'jointer' | 'planer carrier' | 'router carrier' | 'hand plane';
export type EdgeWay = 'jointer' | 'guided saw' | 'table saw carrier' | 'router carrier' | 'hand plane';
export type ThicknessWay = 'planer' | 'planer carrier' | 'router carrier' | 'hand plane';
export type SawnEdgeWay = 'jointer' | 'hand plane' | 'router carrier';
export type RoughRipWay = 'guided saw' | 'table saw carrier' | 'hand saw';
export type SawWay = 'table saw' | 'guided saw' | 'hand saw';
export type CrosscutWay = SawWay | 'mitre saw';

/** Choices of one shop: for every kind of cut the first way that is safe for a piece of this size, null for none. */
export interface Ways {
  readonly crosscutRough: (board: Size) => CrosscutWay;
  readonly ripRough: (blank: Size, width: number) => RoughRipWay;
  readonly face: (piece: Size) => FaceWay | null;
  readonly edge: (piece: Size) => EdgeWay | null;
  readonly thickness: (piece: Size, target: number) => ThicknessWay | null;
  readonly rip: (piece: Size, width: number) => SawWay;
  readonly sawnEdge: (piece: Size) => SawnEdgeWay | null;
  readonly ripPanel: (panel: Size, width: number) => SawWay;
  readonly crosscut: (piece: Size) => CrosscutWay;
}

/** Whether a size reaches a limit: sums lose a last binary digit. */
const reaches = (mm: number, limit: number): boolean => mm >= limit - slack;

/** Whether a machine takes a piece of this size by itself. */
const fits = ({ leastLength, leastWidth, leastThickness }: MachineLimit, size: Size): boolean =>
  reaches(size.length, leastLength.mm) &&
  reaches(size.width, leastWidth.mm) &&
  reaches(size.thickness, leastThickness.mm);

/**
 * The ways that a shop has for each kind of cut, best first; a piece below a machine's limit takes the next one.
 *
 * @param shop the machines owned, widths in mm
 * @param limits least sizes in mm
 * @returns a chooser per kind of cut. A hand saw and a bench are taken as given
 * @valid wood machined by one person
 * @example waysOf({ ...wideLid.shop, jointerWidth: null }, machineLimits).face({ thickness: 27, width: 200, length: 900 })
 *   // => 'planer carrier'
 * @source common practice
 */
export function waysOf(shop: MillingShop, limits: MachineLimits): Ways {
  const { tableSaw, guidedSaw, carrierLength, sledLeast, sledLength, sledWidth } = limits;
  const sawsThrough = ({ depthPerPass }: MachineLimit, { thickness }: Size) => thickness <= depthPerPass.mm;
  const onGuidedSaw = (size: Size) => shop.guidedSaw && fits(guidedSaw, size) && sawsThrough(guidedSaw, size);
  const onTableSaw = (size: Size) => shop.tableSaw && fits(tableSaw, size) && sawsThrough(tableSaw, size);
  const onJointer = (size: Size) => shop.jointerWidth !== null && fits(limits.jointer, size);
  const inPlaner = (size: Size) => shop.planerWidth !== null && reaches(shop.planerWidth, size.width);
  const onCarrier = (size: Size) => inPlaner(size) && size.length >= carrierLength.mm;
  const onRouter = (size: Size) => (shop.router && fits(limits.router, size) ? 'router carrier' : null);
  const byHand = shop.handPlanes ? 'hand plane' : null;
  const railed = (size: Size) => onRouter(size) ?? byHand;
  // As deep as a small guided saw cuts it anyway, and as long as a sled's least: both hands stay clear of the blade.
  const onMitreSaw = (size: Size) =>
    reaches(shop.mitreWidth ?? 0, size.width) && reaches(size.length, sledLeast.mm) && sawsThrough(guidedSaw, size);
  const sawn = (size: Size) => (onGuidedSaw(size) ? 'guided saw' : 'hand saw');
  const rip = (piece: Size, width: number) => (onTableSaw({ ...piece, width }) ? 'table saw' : sawn(piece));

  return {
    crosscutRough: (board) => (!onGuidedSaw(board) && onMitreSaw(board) ? 'mitre saw' : sawn(board)),
    // A rough edge never runs along a fence: the guided saw's rail or a straight-edged carrier leads it.
    ripRough: (blank, width) => {
      if (onGuidedSaw(blank)) return 'guided saw';
      return onTableSaw({ ...blank, width }) ? 'table saw carrier' : 'hand saw';
    },
    face: (piece) => {
      if (onJointer(piece) && piece.width <= (shop.jointerWidth ?? 0)) return 'jointer';
      return shop.planerSled && onCarrier(piece) ? 'planer carrier' : railed(piece);
    },
    edge: (piece) => {
      if (onJointer(piece)) return 'jointer';
      if (onGuidedSaw(piece)) return 'guided saw';
      return onTableSaw(piece) ? 'table saw carrier' : railed(piece);
    },
    thickness: (piece, thickness) => {
      const planed = { ...piece, thickness };
      if (inPlaner(planed) && fits(limits.planer, planed)) return 'planer';
      return onCarrier(planed) ? 'planer carrier' : railed(planed);
    },
    rip,
    // Wider or longer than a table saw carries steadily: the saw goes to the panel.
    ripPanel: (panel, width) => {
      const steady = panel.width <= sledWidth.mm && panel.length <= 2 * sledLength.mm;
      return !steady && onGuidedSaw(panel) ? 'guided saw' : rip(panel, width);
    },
    sawnEdge: (piece) => (onJointer(piece) ? 'jointer' : (byHand ?? onRouter(piece))),
    crosscut: (piece) => {
      const onSled = piece.length >= sledLeast.mm && piece.length <= sledLength.mm && piece.width <= sledWidth.mm;
      if (shop.tableSaw && onSled && sawsThrough(tableSaw, piece)) return 'table saw';
      return onMitreSaw(piece) ? 'mitre saw' : sawn(piece);
    },
  };
}
