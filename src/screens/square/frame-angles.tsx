import { isProblem } from '../../core/answer/problem.ts';
import { degrees } from '../../core/answer/quantity.ts';
import { bevelWidth } from '../../core/square/bevel-width.ts';
import { mitreFrame } from '../../core/square/mitre-frame.ts';
import { type MitreGap, mitreGap } from '../../core/square/mitre-gap.ts';
import { Amount } from '../../ui/amount.tsx';
import { Choice, NumberField } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';
import { cornersOfFrame, cutErrors, cuts, lengthsIn, type MitreForm } from './mitre-form.ts';
import { readTexts } from './read-texts.ts';

interface Props {
  form: MitreForm;
  onType(entry: string, text: string): void;
  onAngles(angles: MitreForm['angles']): void;
}

/** What the angles of the cuts add up to, and how to share the correction. */
export function FrameAngles({ form, onType, onAngles }: Props) {
  const size = readTexts(['thickness'], form.texts, lengthsIn(units.value.unit));
  const { errors, problems } = cutErrors(form);
  const stock = size.values.thickness;
  const bevel = stock === undefined ? undefined : bevelWidth(stock);
  const joint = bevel && !isProblem(bevel) ? bevel.value.bevel : undefined;
  const frame = errors && joint !== undefined ? mitreFrame(errors, joint) : undefined;
  const thick = size.problems.get('thickness') ?? (isProblem(bevel) ? bevel : undefined);
  if (isProblem(frame)) {
    const at = Number(/^errors\.(\d)$/.exec(frame.field)?.[1] ?? 0);
    problems.set(form.angles === 'one' ? 'all' : (cuts[at] ?? cuts[0]), frame);
  }
  return (
    <section class="card" aria-label="Angles">
      <h2>Then: do the angles add up?</h2>
      <div aria-live="polite" class="square-answer">
        {frame && !isProblem(frame) && (
          <>
            <p>
              <span class="figure">
                <Opening of={frame.value.last} />
              </span>{' '}
              at the last corner, the other three pulled tight.
            </p>
            <p>
              <b>
                <Say phrase={frame.value.say} />
              </b>
            </p>
            {frame.value.last.opens && (
              <p>
                Or only the last corner’s two cuts by <Amount of={degrees(Math.abs(frame.value.lastCorner))} /> each.
              </p>
            )}
            <ShowWorking of={frame.working} />
          </>
        )}
        {form.angles === 'each' && errors && joint !== undefined && <Corners errors={errors} joint={joint} />}
      </div>
      <LengthField
        label="Thickness, or width of a flat frame"
        value={form.texts.thickness ?? ''}
        problem={thick}
        onInput={(text) => onType('thickness', text)}
      />
      <Choice
        label="Angles of the points"
        value={form.angles}
        options={[
          { value: 'one', label: 'One saw setting' },
          { value: 'each', label: 'Each measured' },
        ]}
        onInput={onAngles}
      />
      <div class="fields">
        {(form.angles === 'one' ? ['all'] : cuts).map((cut) => (
          <NumberField
            key={cut}
            label={cut === 'all' ? 'All eight cuts' : cut}
            hint="degrees"
            value={form.texts[cut] ?? ''}
            problem={problems.get(cut)}
            onInput={(text) => onType(cut, text)}
          />
        ))}
      </div>
      {form.angles === 'each' && <p class="soft small">A point left empty is taken as 45°.</p>}
    </section>
  );
}

function Opening({ of }: { of: MitreGap }) {
  if (of.opens === null) return <>Tight</>;
  return (
    <>
      <Length mm={of.gap} /> open {of.opens}
    </>
  );
}

/** Each corner by itself, held at 90 degrees. */
function Corners({ errors, joint }: { errors: readonly number[]; joint: number }) {
  return (
    <ul class="rows">
      {cornersOfFrame.map((corner, n) => {
        const gap = mitreGap((errors[2 * n] ?? 0) + (errors[2 * n + 1] ?? 0), joint);
        if (isProblem(gap)) return null;
        return (
          <li key={corner}>
            <span>
              Corner {corner} held square: <Opening of={gap.value} />
            </span>
            <ShowWorking of={gap.working} label="Working" />
          </li>
        );
      })}
    </ul>
  );
}
