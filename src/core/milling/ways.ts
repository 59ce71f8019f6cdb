import type { MachineLimit, MachineLimits } from './machine-limits.ts';
import type { MillingShop } from './milling-input.ts';
import type { Machine, Size } from './milling-step.ts';

/** How a cut is made: at which machine, and whether the piece rides on a carrier. */
export interface Way {
  readonly machine: Machine;
  readonly carrier?: true;
}

const plain = (machine: Machine): Way => ({ machine });
const carried = (machine: Machine): Way => ({ machine, carrier: true });

/** Whether a machine takes a piece of this size by itself. */
export function fits(limit: MachineLimit, size: Size): boolean {
  return (
    size.length >= limit.leastLength.mm &&
    size.width >= limit.leastWidth.mm &&
    size.thickness >= limit.leastThickness.mm
  );
}

/** Choices of one shop: for every kind of cut the first way that is safe for a piece of this size, null for none. */
export interface Ways {
  readonly crosscutRough: (board: Size) => Way;
  readonly ripRough: (blank: Size, width: number) => Way;
  readonly face: (piece: Size) => Way | null;
  readonly edge: (piece: Size) => Way | null;
  readonly thickness: (piece: Size, target: number) => Way | null;
  readonly ripParallel: (piece: Size, width: number) => Way;
  readonly sawnEdge: (piece: Size) => Way | null;
  readonly ripPanel: (panel: Size, width: number) => Way;
  readonly crosscut: (piece: Size) => Way;
}

/**
 * The ways that a shop has for each kind of cut, best first; a piece below a machine's limit takes the next one.
 *
 * - `shop`: the machines owned, widths in mm; `limits`: least sizes in mm
 *
 * Result: a chooser per kind of cut. A hand saw and a bench are taken as given.
 * Valid for wood machined by one person. Errors: none; null where no way is safe.
 *
 * Example: without a jointer, with a planer and a sled, a blank of 200 x 900 is flattened on the planer's sled.
 *
 * Source: common practice.
 */
export function waysOf(shop: MillingShop, limits: MachineLimits): Ways {
  const onGuidedSaw = (size: Size) =>
    shop.guidedSaw && fits(limits.guidedSaw, size) && size.thickness <= limits.guidedSaw.depthPerPass.mm;
  const onTableSaw = (size: Size) =>
    shop.tableSaw && fits(limits.tableSaw, size) && size.thickness <= limits.tableSaw.depthPerPass.mm;
  const onJointer = (size: Size) => shop.jointerWidth !== null && fits(limits.jointer, size);
  const inPlaner = (size: Size) => shop.planerWidth !== null && size.width <= shop.planerWidth;
  const onRouter = (size: Size) => shop.router && fits(limits.router, size);
  const byHand = shop.handPlanes ? plain('hand plane') : null;
  const railed = (size: Size) => (onRouter(size) ? carried('router') : byHand);

  const rip = (piece: Size, width: number) => {
    if (onTableSaw({ ...piece, width })) return plain('table saw');
    return plain(onGuidedSaw(piece) ? 'guided saw' : 'hand saw');
  };

  return {
    crosscutRough: (board) => plain(onGuidedSaw(board) ? 'guided saw' : 'hand saw'),
    // A rough edge never runs along a fence: the guided saw's rail or a straight-edged carrier leads it.
    ripRough: (blank, width) => {
      if (onGuidedSaw(blank)) return plain('guided saw');
      return onTableSaw({ ...blank, width }) ? carried('table saw') : plain('hand saw');
    },
    face: (piece) => {
      if (onJointer(piece) && piece.width <= (shop.jointerWidth ?? 0)) return plain('jointer');
      if (shop.planerSled && inPlaner(piece) && piece.length >= limits.carrierLength.mm) return carried('planer');
      return railed(piece);
    },
    edge: (piece) => {
      if (onJointer(piece)) return plain('jointer');
      if (onGuidedSaw(piece)) return plain('guided saw');
      if (onTableSaw(piece)) return carried('table saw');
      return railed(piece);
    },
    thickness: (piece, target) => {
      if (inPlaner(piece)) {
        if (fits(limits.planer, { ...piece, thickness: target })) return plain('planer');
        if (piece.length >= limits.carrierLength.mm && shop.planerWidth !== null) return carried('planer');
      }
      return railed({ ...piece, thickness: target });
    },
    ripParallel: rip,
    // Wider or longer than a table saw carries steadily: the saw goes to the panel.
    ripPanel: (panel, width) => {
      const steady = panel.width <= limits.sledWidth.mm && panel.length <= 2 * limits.sledLength.mm;
      return !steady && onGuidedSaw(panel) ? plain('guided saw') : rip(panel, width);
    },
    sawnEdge: (piece) =>
      onJointer(piece) ? plain('jointer') : (byHand ?? (onRouter(piece) ? carried('router') : null)),
    crosscut: (piece) => {
      const { sledLeast, sledLength, sledWidth } = limits;
      const onSled = piece.length >= sledLeast.mm && piece.length <= sledLength.mm && piece.width <= sledWidth.mm;
      if (shop.tableSaw && onSled && piece.thickness <= limits.tableSaw.depthPerPass.mm) return plain('table saw');
      return plain(onGuidedSaw(piece) ? 'guided saw' : 'hand saw');
    },
  };
}
