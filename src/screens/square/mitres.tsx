import { useDraft } from '../../app/draft.ts';
import { routeTo } from '../../app/routes.ts';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { Screen } from '../../ui/screen.tsx';
import { BoxParts } from './box-parts.tsx';
import { FrameAngles } from './frame-angles.tsx';
import { OppositeParts } from './opposite-parts.tsx';

const views = optionsOf({ parts: 'Parts to cut', angles: 'Angles and gaps' });

/** Mitred corners: how long the parts are, and whether the last corner closes. */
export function Mitres() {
  const { value: view, set } = useDraft<'parts' | 'angles'>('mitres-2', 'parts');
  if (!view) return null;
  return (
    <Screen
      question={view === 'parts' ? 'How long are the mitred parts?' : 'Will the last mitre close?'}
      kicker="Square · mitred corners"
      action={
        <a class="button big" href={routeTo('square')}>
          Is it square?
        </a>
      }
    >
      <Choice label="Mitred corners" value={view} options={views} onInput={set} />
      {view === 'parts' ? (
        <BoxParts />
      ) : (
        <>
          <OppositeParts />
          <FrameAngles />
        </>
      )}
    </Screen>
  );
}
