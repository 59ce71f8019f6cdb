import { useTexts } from '../../app/form.ts';
import { routeTo } from '../../app/routes.ts';
import { partName } from '../../core/lumber/check-part.ts';
import { takeInHand } from '../../store/piece-in-hand.ts';
import { pieces } from '../../store/pieces.ts';
import { Button } from '../../ui/button.tsx';
import { TextField } from '../../ui/fields.tsx';
import { Screen } from '../../ui/screen.tsx';

/** Begins a piece: it needs no more than a name. */
export function NewPiece() {
  const typed = useTexts('piece-name-2', { name: partName });
  if (!typed) return null;
  const begin = () =>
    typed.store(async ({ name }) => {
      const { id } = await pieces.add({ name, parts: [], joints: [], stages: [] });
      void takeInHand(id);
      // In place of this form: the way back then leads to where the maker came from.
      location.replace(routeTo('piece', id));
    });
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
      <TextField label="Name of the piece" hint="for example “blanket chest”" {...typed.field('name')} />
    </Screen>
  );
}
