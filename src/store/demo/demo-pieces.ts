import type { Part, Piece } from '../records/piece.ts';
import type { Fields } from '../records/record.ts';

type Size = readonly [length: number, width: number, thickness: number];

const cherry = 'cherry-black';
const maple = 'maple-red';

function part(id: string, name: string, species: string, size: Size, quantity: number, panel: boolean): Part {
  const [length, width, thickness] = size;
  return { id, name, species, length, width, thickness, quantity, panel };
}

/** A hanging tool cabinet and a blanket chest, invented for the demo. */
export const demoPieces: readonly { readonly id: string; readonly fields: Fields<Piece> }[] = [
  {
    id: 'demo-piece-chest',
    fields: {
      name: 'Blanket chest',
      parts: [
        part('front', 'Front and back', cherry, [980, 400, 19], 2, true),
        part('end', 'End', cherry, [440, 400, 19], 2, true),
        part('lid', 'Lid', cherry, [1020, 480, 19], 1, true),
        part('cleat', 'Lid cleat', cherry, [420, 45, 19], 2, false),
        part('bottom', 'Bottom', maple, [950, 410, 12], 1, true),
      ],
      joints: [
        { id: 'corner', kind: 'mitre', parts: ['front', 'end'] },
        { id: 'lid-cleat', kind: 'cleat', parts: ['lid', 'cleat'] },
        { id: 'bottom-groove', kind: 'groove', parts: ['bottom', 'end'] },
      ],
      stages: [
        { id: 'panels', name: 'Panels', parts: ['front', 'end', 'lid', 'bottom'] },
        { id: 'case', name: 'Case', parts: ['front', 'end', 'bottom'] },
      ],
    },
  },
  {
    id: 'demo-piece-cabinet',
    fields: {
      name: 'Hanging tool cabinet',
      parts: [
        part('side', 'Side', cherry, [760, 190, 19], 2, false),
        part('top', 'Top and bottom', cherry, [560, 190, 19], 2, false),
        part('shelf', 'Shelf', maple, [520, 165, 16], 2, false),
        part('stile', 'Door stile', cherry, [720, 55, 19], 2, false),
        part('rail', 'Door rail', cherry, [430, 55, 19], 2, false),
        part('door', 'Door panel', maple, [620, 420, 12], 1, true),
        part('back', 'Back', maple, [730, 530, 12], 1, true),
        part('hanger', 'Hanging cleat', maple, [520, 70, 19], 2, false),
      ],
      joints: [
        { id: 'corner', kind: 'corner', parts: ['side', 'top'] },
        { id: 'frame', kind: 'rail', parts: ['rail', 'stile'] },
        { id: 'door-groove', kind: 'groove', parts: ['door', 'rail'] },
      ],
      stages: [
        { id: 'panels', name: 'Panels', parts: ['door', 'back'] },
        { id: 'door', name: 'Door', parts: ['stile', 'rail', 'door'] },
        { id: 'case', name: 'Case', parts: ['side', 'top', 'shelf', 'back'] },
      ],
    },
  },
];
