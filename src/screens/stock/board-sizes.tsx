import type { ComponentChildren } from 'preact';
import { boardLimits, checkBoard } from '../../core/lumber/check-board.ts';
import { roughThickness } from '../../core/lumber/quarters.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { Card } from '../../ui/card.tsx';
import { Pick, Tick } from '../../ui/fields.tsx';
import { SettledLength, SettledText } from '../../ui/settled.tsx';
import { SizeEntries } from '../../ui/size-entries.tsx';
import { SpeciesPick } from '../../ui/species-pick.tsx';
import { thicknessName, thicknessOptions } from './board-form.ts';
import { ChalkMarkEntry } from './chalk-mark-entry.tsx';

interface Props {
  board: Board;
  title?: string;
  /** What else can be changed here. */
  children?: ComponentChildren;
}

/** A board's mark, sizes and wood, kept as they are typed. */
export function BoardSizes({ board, title = 'Mark and sizes', children }: Props) {
  const set = (change: Partial<Board>) => boards.edit(board.id, (now) => ({ ...now, ...change }));
  const { farWidth, thickness } = board;
  const named = thicknessName(thickness);
  return (
    <Card title={title}>
      <ChalkMarkEntry board={board} />
      <SizeEntries
        of={board}
        labels={{ width: 'Width', farWidth: 'At the far end', length: 'Length' }}
        check={(next) => checkBoard(next)[0]}
        onChange={set}
      />
      <div class="fields">
        <Pick
          label="Thickness"
          value={named}
          options={thicknessOptions(named)}
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
            limits={boardLimits.thicknessMm}
            onAccept={(mm) => set({ thickness: { mm } })}
          />
        )}
      </div>
      <Tick
        label="Tapers"
        checked={farWidth !== undefined}
        onInput={(tapers) =>
          boards.edit(board.id, (now) => withOptional(now, 'farWidth', tapers ? now.width : undefined))
        }
      />
      <SettledText
        label="Note"
        value={board.note ?? ''}
        onAccept={(note) => boards.edit(board.id, (now) => withOptional(now, 'note', note || undefined))}
      />
      <SpeciesPick label="Wood" value={board.species} first={[board.species]} onInput={(species) => set({ species })} />
      {children}
    </Card>
  );
}
