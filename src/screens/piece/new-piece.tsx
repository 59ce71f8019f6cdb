import { useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { routeTo } from '../../app/routes.ts';
import { badPartName } from '../../core/lumber/check-part.ts';
import { takeInHand } from '../../store/piece-in-hand.ts';
import { pieces } from '../../store/pieces.ts';
import { Button } from '../../ui/button.tsx';
import { TextField } from '../../ui/fields.tsx';
import { Screen } from '../../ui/screen.tsx';

/** Begins a piece: it needs no more than a name. */
export function NewPiece() {
  const name = useDraft('piece-name-1', '');
  const [tried, setTried] = useState(false);
  if (name.value === undefined) return null;
  const typed = name.value;
  const begin = async () => {
    setTried(true);
    if (badPartName(typed)) return;
    try {
      const { id } = await pieces.add({ name: typed.trim(), parts: [], joints: [], stages: [] });
      name.clear();
      void takeInHand(id);
      // In place of this form: the way back then leads to where the maker came from.
      location.replace(routeTo('piece', id));
    } catch {
      // Not stored: the shell keeps the change and shows it, and the form stays as it was typed.
    }
  };
  return (
    <Screen
      question="What will you make?"
      kicker="New piece"
      action={
        <Button look="big now" onClick={begin}>
          List its parts
        </Button>
      }
    >
      <TextField
        label="Name of the piece"
        hint="for example “blanket chest”"
        value={typed}
        problem={tried ? badPartName(typed) : undefined}
        onInput={name.set}
      />
    </Screen>
  );
}
