import { useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { offerUndo } from '../../app/notices.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import { nextChalkMark } from '../../core/lumber/chalk-mark.ts';
import { boardLimits } from '../../core/lumber/check-board.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { units } from '../../ui/units.ts';

const empty = { width: '', length: '' };

/** What is left of a board comes back as a board that knows its parent. */
export function OffcutEntry({ board }: { board: Board }) {
  const draft = useDraft(`offcut-form-1-${board.id}`, empty);
  const [tried, setTried] = useState(false);
  const form = draft.value;
  if (!form) return null;
  const read = (field: 'width' | 'length'): Outcome<number> => {
    const most = field === 'width' ? Math.max(board.width, board.farWidth ?? 0) : board.length;
    return checked(parseLength(form[field], units.value.unit), (mm) =>
      badNumber(field, `The ${field}`, mm, 'mm', { ...boardLimits[field], most }),
    );
  };
  const width = read('width');
  const length = read('length');
  const add = async () => {
    setTried(true);
    if (isProblem(width) || isProblem(length)) return;
    const { species, thickness, readings } = board;
    try {
      const marks = (await boards.all()).map(({ chalk }) => chalk);
      const { id, chalk } = await boards.add({
        chalk: nextChalkMark([...marks, `${board.chalk}-0`]),
        species,
        thickness,
        width,
        length,
        state: 'rack',
        parentId: board.id,
        ...(readings && { readings }),
      });
      draft.clear(empty);
      setTried(false);
      offerUndo(`Offcut ${chalk} is in the rack.`, async () => {
        await boards.remove(id);
      });
    } catch {
      // Not stored: the shell keeps the change and shows it, and the form stays as it was typed.
    }
  };
  const field = (name: 'width' | 'length', got: Outcome<number>) => ({
    value: form[name],
    problem: tried && isProblem(got) ? got : undefined,
    onInput: (text: string) => draft.set({ ...form, [name]: text }),
  });
  return (
    <details class="working">
      <summary>An offcut came of it</summary>
      <div class="fields">
        <LengthField label="Offcut width" {...field('width', width)} />
        <LengthField
          label="Offcut length"
          {...field('length', length)}
          done={{ label: 'Add offcut', run: () => void add() }}
        />
      </div>
      <button type="button" class="button" onClick={() => void add()}>
        Add offcut
      </button>
    </details>
  );
}
