import { checkBoard } from '../../core/lumber/check-board.ts';
import { roughThickness } from '../../core/lumber/quarters.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { Pick, Tick } from '../../ui/fields.tsx';
import { SettledLength } from '../../ui/settled.tsx';
import { SpeciesPick } from '../../ui/species-pick.tsx';
import { quarterNames } from './board-form.ts';
import { KeptText } from './kept-text.tsx';

/** A board's sizes and wood, kept as they are typed. */
export function BoardSizes({ board }: { board: Board }) {
  // A write that fails is kept and shown by the shell.
  const set = (change: Partial<Board>) =>
    void boards.change(board.id, (now) => ({ ...now, ...change })).catch(() => {});
  const check = (field: 'width' | 'farWidth' | 'length' | 'thickness', change: (value: number) => Partial<Board>) => ({
    check: (value: number) => checkBoard({ ...board, ...change(value) }).find((found) => found.field === field),
    onAccept: (value: number) => set(change(value)),
  });
  const { thickness } = board;
  const named = 'quarters' in thickness ? String(thickness.quarters) : 'measured';
  const names = [...new Set([...quarterNames, ...(named === 'measured' ? [] : [named])])];
  return (
    <section class="card" aria-label="Sizes">
      <h2>Sizes</h2>
      <div class="fields">
        <SettledLength label="Width" value={board.width} {...check('width', (width) => ({ width }))} />
        <SettledLength label="Length" value={board.length} {...check('length', (length) => ({ length }))} />
        {board.farWidth !== undefined && (
          <SettledLength
            label="At the far end"
            value={board.farWidth}
            {...check('farWidth', (farWidth) => ({ farWidth }))}
          />
        )}
        <Pick
          label="Thickness"
          value={named}
          options={[
            ...names.map((value) => ({ value, label: `${value}/4` })),
            { value: 'measured', label: 'Measured' },
          ]}
          onInput={(value) =>
            set({
              thickness: value === 'measured' ? { mm: roughThickness(thickness) } : { quarters: Number(value) },
            })
          }
        />
        {'mm' in thickness && (
          <SettledLength
            label="As measured"
            value={thickness.mm}
            {...check('thickness', (mm) => ({ thickness: { mm } }))}
          />
        )}
      </div>
      <Tick
        label="Tapers"
        checked={board.farWidth !== undefined}
        onInput={(tapers) =>
          void boards
            .change(board.id, ({ farWidth: _, ...now }) => (tapers ? { ...now, farWidth: now.width } : now))
            .catch(() => {})
        }
      />
      <KeptText
        key={board.id}
        label="Note"
        value={board.note ?? ''}
        onAccept={(note) =>
          void boards.change(board.id, ({ note: _, ...now }) => (note === '' ? now : { ...now, note })).catch(() => {})
        }
      />
      <SpeciesPick label="Wood" value={board.species} first={[board.species]} onInput={(species) => set({ species })} />
    </section>
  );
}
