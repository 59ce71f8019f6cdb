import type { Cut } from '../../store/records/piece.ts';
import { Choice, optionsOf } from '../../ui/fields.tsx';

interface Props<V> {
  value: V;
  onInput(value: V): void;
}

const made = optionsOf({ panel: 'Panel, glued up', solid: 'Solid' });
const sawn = optionsOf<Cut>({ flat: 'Flat', rift: 'Rift', quarter: 'Quarter' });

export const KindChoice = (props: Props<'panel' | 'solid'>) => <Choice label="Made as" options={made} {...props} />;

export const CutChoice = (props: Props<Cut>) => <Choice label="Sawn" options={sawn} {...props} />;
