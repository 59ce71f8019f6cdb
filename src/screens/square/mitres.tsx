import { useDraft } from '../../app/draft.ts';
import { routeTo } from '../../app/routes.ts';
import { Choice } from '../../ui/fields.tsx';
import { Screen } from '../../ui/screen.tsx';
import { BoxParts } from './box-parts.tsx';
import { FrameAngles } from './frame-angles.tsx';
import { emptyMitres, type MitreForm } from './mitre-form.ts';
import { OppositeParts } from './opposite-parts.tsx';

/** Mitred corners: how long the parts are, and whether the last corner closes. */
export function Mitres() {
  const { value: form, set } = useDraft<MitreForm>('mitre-form-1', emptyMitres);
  if (!form) return null;
  const change = (part: Partial<MitreForm>) => set({ ...form, ...part });
  const type = (entry: string, text: string) => change({ texts: { ...form.texts, [entry]: text } });
  return (
    <Screen
      question={form.view === 'parts' ? 'How long are the mitred parts?' : 'Will the last mitre close?'}
      kicker="Square · mitred corners"
      action={
        <a class="button big" href={routeTo('square')}>
          Is it square?
        </a>
      }
    >
      <Choice
        label="Mitred corners"
        value={form.view}
        options={[
          { value: 'parts', label: 'Parts to cut' },
          { value: 'angles', label: 'Angles and gaps' },
        ]}
        onInput={(view) => change({ view })}
      />
      {form.view === 'parts' ? (
        <BoxParts form={form} onType={type} onGiven={(given) => change({ given })} />
      ) : (
        <>
          <OppositeParts form={form} onType={type} />
          <FrameAngles form={form} onType={type} onAngles={(angles) => change({ angles })} />
        </>
      )}
    </Screen>
  );
}
