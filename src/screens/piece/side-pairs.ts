import type { Part, Side, Sides } from '../../store/records/piece.ts';

export type SideKind = keyof NonNullable<Part['surfaces']>;

export const sideKinds: readonly { readonly kind: SideKind; readonly name: string }[] = [
  { kind: 'faces', name: 'Faces' },
  { kind: 'edges', name: 'Edges' },
  { kind: 'ends', name: 'Ends' },
];

const order: readonly Side[] = ['shown', 'inside', 'bare'];

/** Every way that two sides can be: which is which doesn't matter to the finish. */
export const sidePairs = order.flatMap((first, at) =>
  order.slice(at).map((second) => ({
    value: `${first}-${second}`,
    label: first === second ? `both ${first}` : `one ${first}, one ${second}`,
    sides: [first, second] as Sides,
  })),
);

export function pairOf(part: Pick<Part, 'surfaces'>, kind: SideKind): string {
  const sides = part.surfaces?.[kind] ?? ['shown', 'shown'];
  return [...sides].sort((a, b) => order.indexOf(a) - order.indexOf(b)).join('-');
}
