import type { Entry, Situation, Way } from './square-form.ts';

export const entryLabels: Readonly<Record<Entry, string>> = {
  front: 'Front edge A–B',
  right: 'Right end B–C',
  back: 'Back edge C–D',
  left: 'Left end D–A',
  diagonalAC: 'Diagonal A–C',
  diagonalBD: 'Diagonal B–D',
  length: 'Length A–B',
  width: 'Width D–A',
  difference: 'Difference',
};

export const situations: readonly { readonly value: Situation; readonly label: string }[] = [
  { value: 'line', label: 'Panel, to cut' },
  { value: 'sawn', label: 'Panel, sawn' },
  { value: 'clamps', label: 'Case in clamps' },
  { value: 'layout', label: 'Laying out' },
];

export const ways: readonly { readonly value: Way; readonly label: string }[] = [
  { value: 'readings', label: 'All round' },
  { value: 'diagonals', label: 'Diagonals' },
  { value: 'stick', label: 'A stick' },
];
