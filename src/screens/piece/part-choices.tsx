import type { Cut } from '../../store/records/piece.ts';
import { Choice } from '../../ui/fields.tsx';

interface Props<V> {
  value: V;
  onInput(value: V): void;
}

export function KindChoice(props: Props<'panel' | 'solid'>) {
  return (
    <Choice
      label="Made as"
      options={[
        { value: 'panel', label: 'Panel, glued up' },
        { value: 'solid', label: 'Solid' },
      ]}
      {...props}
    />
  );
}

export function CutChoice(props: Props<Cut>) {
  return (
    <Choice
      label="Sawn"
      options={[
        { value: 'flat', label: 'Flat' },
        { value: 'rift', label: 'Rift' },
        { value: 'quarter', label: 'Quarter' },
      ]}
      {...props}
    />
  );
}
