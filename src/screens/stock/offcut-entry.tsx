import { useTexts } from '../../app/form.ts';
import { offerUndo } from '../../app/notices.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import { nextChalkMark } from '../../core/lumber/chalk-mark.ts';
import { boardLimits } from '../../core/lumber/check-board.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { Button } from '../../ui/button.tsx';
import { Fold } from '../../ui/fold.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { units } from '../../ui/units.ts';

/** What is left of a board comes back as a board that knows its parent. */
export function OffcutEntry({ board }: { board: Board }) {
  const read = (field: 'width' | 'length', most: number) => (text: string) =>
    checked(parseLength(text, units.value.unit), (mm) =>
      badNumber(field, `The ${field}`, mm, 'mm', { ...boardLimits[field], most }),
    );
  const typed = useTexts(`offcut-form-1-${board.id}`, {
    width: read('width', Math.max(board.width, board.farWidth ?? 0)),
    length: read('length', board.length),
  });
  if (!typed) return null;
  const { species, thickness, readings, goodFace } = board;
  const add = () =>
    void typed.store(async (sizes) => {
      const marks = (await boards.all()).map(({ chalk }) => chalk);
      const { id, chalk } = await boards.add({
        chalk: nextChalkMark([...marks, `${board.chalk}-0`]),
        species,
        thickness,
        ...sizes,
        state: 'rack',
        parentId: board.id,
        ...(readings && { readings }),
        ...(goodFace && { goodFace }),
      });
      offerUndo(`Offcut ${chalk} added.`, () => boards.remove(id));
    });
  return (
    <Fold label="Add an offcut">
      <div class="fields">
        <LengthField label="Offcut width" {...typed.field('width')} />
        <LengthField label="Offcut length" {...typed.field('length')} done={{ label: 'Add offcut', run: add }} />
      </div>
      <Button onClick={add}>Add offcut</Button>
    </Fold>
  );
}
