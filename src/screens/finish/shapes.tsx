import { Button } from '../../ui/button.tsx';
import { NumberField, optionsOf, Pick, TextField } from '../../ui/fields.tsx';
import { units } from '../../ui/units.ts';
import type { ShapeText } from './finish-form.ts';
import type { FormProps } from './form-props.ts';

/** Shapes that no list of sizes tells: turned legs, mouldings. Added by hand. */
export function Shapes({ form, at, change }: FormProps) {
  const { shapes } = form;
  const replace = (index: number, shape: ShapeText) => change({ shapes: shapes.with(index, shape) });
  return (
    <details class="card" open={shapes.length > 0}>
      <summary>Turned legs, mouldings, other shapes</summary>
      <p class="soft">Round work: girth times length. A moulding: lay paper along its profile.</p>
      {shapes.map((shape, index) => (
        <fieldset class="sides">
          <legend>{shape.name.trim() || `Shape ${index + 1}`}</legend>
          <div class="fields">
            <TextField label="Shape" value={shape.name} onInput={(name) => replace(index, { ...shape, name })} />
            <NumberField
              label="Area of one"
              hint={units.value.unit === 'in' ? 'ft²' : 'm²'}
              value={shape.area}
              problem={at(`shapes.${index}.areaM2`)}
              onInput={(area) => replace(index, { ...shape, area })}
            />
            <NumberField
              label="How many"
              value={shape.count}
              problem={at(`shapes.${index}.count`)}
              onInput={(count) => replace(index, { ...shape, count })}
            />
            <Pick
              label="It is"
              value={shape.treatment}
              options={optionsOf({ shown: 'shown', inside: 'inside', bare: 'bare' })}
              onInput={(treatment) => replace(index, { ...shape, treatment })}
            />
          </div>
          <Button onClick={() => change({ shapes: shapes.toSpliced(index, 1) })}>Delete</Button>
        </fieldset>
      ))}
      <Button onClick={() => change({ shapes: [...shapes, { name: '', area: '', count: '1', treatment: 'shown' }] })}>
        Add a shape
      </Button>
    </details>
  );
}
