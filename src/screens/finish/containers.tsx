import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { NumberField, TextField } from '../../ui/fields.tsx';
import { units } from '../../ui/units.ts';
import { type ContainerText, emptyContainer } from './finish-form.ts';
import type { FormProps } from './form-props.ts';

/** The sizes on the dealer's shelf with their prices, and what stands on one's own. */
export function Containers({ form, at, field, change }: FormProps) {
  const volume = units.value.unit === 'in' ? 'qt, or 750 ml' : 'L, or 750 ml';
  const { containers } = form;
  const replace = (index: number, container: ContainerText) =>
    change({ containers: containers.with(index, container) });
  return (
    <Card title="What it is sold in">
      {containers.map((one, index) => (
        <div class="fields">
          <TextField
            label="Container"
            hint={volume}
            value={one.size}
            problem={at(`containers.${index}.litres`)}
            onInput={(size) => replace(index, { ...one, size })}
          />
          <NumberField
            label="Price"
            hint="of one"
            value={one.price}
            problem={at(`containers.${index}.price`)}
            onInput={(price) => replace(index, { ...one, price })}
          />
        </div>
      ))}
      <div class="buttons">
        <Button onClick={() => change({ containers: [...containers, emptyContainer] })}>Another size</Button>
        {containers.length > 1 && (
          <Button onClick={() => change({ containers: containers.slice(0, -1) })}>One size less</Button>
        )}
      </div>
      <TextField label="On the shelf already" hint={volume} {...field('onShelf')} />
    </Card>
  );
}
