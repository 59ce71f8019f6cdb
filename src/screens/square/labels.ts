import type { ReadingName } from '../../core/square/readings.ts';
import { optionsOf } from '../../ui/fields.tsx';
import type { Situation, Way } from './square-form.ts';

export const entryLabels: Readonly<Record<ReadingName, string>> = {
  front: 'Front edge A–B',
  right: 'Right end B–C',
  back: 'Back edge C–D',
  left: 'Left end D–A',
  diagonalAC: 'Diagonal A–C',
  diagonalBD: 'Diagonal B–D',
  difference: 'Difference',
};

export const situations = optionsOf<Situation>({
  line: 'Panel, to cut',
  sawn: 'Panel, sawn',
  clamps: 'Case in clamps',
  layout: 'Laying out',
});

export const ways = optionsOf<Way>({ readings: 'All round', diagonals: 'Diagonals', stick: 'A stick' });
