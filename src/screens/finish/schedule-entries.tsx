import { grits } from '../../tables/abrasives.ts';
import { Card } from '../../ui/card.tsx';
import { Pick, TextField, Tick } from '../../ui/fields.tsx';
import { Fold } from '../../ui/fold.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import type { FormProps } from './form-props.ts';
import { gritText, kindOf } from './read-finish-form.ts';

/** How the wood comes to its first coat, and in which order it is coated. */
export function ScheduleEntries({ form, at, field, change }: FormProps) {
  const { bareGrit } = kindOf(form);
  const onWay = grits.filter(({ grit }) => grit <= bareGrit);
  return (
    <Card title="Sanding and order">
      <Pick
        label="First grit"
        value={gritText(form)}
        options={onWay.map(({ grit, use }) => ({ value: String(grit), label: `${grit}, ${use}` }))}
        problem={at('from')}
        onInput={(firstGrit) => change({ firstGrit })}
      />
      <Trouble of={at('owned')} />
      <Fold label="Grits on your shelf">
        <div class="grits">
          {onWay.map(({ grit }) => (
            <Tick
              label={String(grit)}
              checked={!form.gritsMissing.includes(grit)}
              onInput={(owned) =>
                change({
                  gritsMissing: owned ? form.gritsMissing.filter((one) => one !== grit) : [...form.gritsMissing, grit],
                })
              }
            />
          ))}
        </div>
      </Fold>
      <TextField label="Coat one after another" hint="for example: Case, Door, Shelves" {...field('sections')} />
      <Tick
        label="Finish inside corners before assembly"
        checked={form.beforeAssembly}
        onInput={(beforeAssembly) => change({ beforeAssembly })}
      />
    </Card>
  );
}
