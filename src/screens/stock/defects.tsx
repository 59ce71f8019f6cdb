import { useState } from 'preact/hooks';
import { offerUndo } from '../../app/notices.ts';
import { shop } from '../../app/shop.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { boards } from '../../store/boards.ts';
import type { Board, Defect } from '../../store/records/board.ts';
import { clearStretchesOf } from '../../store/records/board-shape.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { Choice, Tick } from '../../ui/fields.tsx';
import { Fold } from '../../ui/fold.tsx';
import { Length } from '../../ui/length.tsx';
import { Reason } from '../../ui/reason.tsx';
import { SizeEntries } from '../../ui/size-entries.tsx';
import { DefectDrawing } from './defect-drawing.tsx';
import { markedRectangle } from './marked-rectangle.ts';
import { leastUsableLength } from './usable-board-feet.ts';

const kinds = ['knot', 'split', 'wane', 'sapwood'] as const;

/** What to keep clear of, marked on the board, and the clear stretches that remain. */
export function Defects({ board }: { board: Board }) {
  const [kind, setKind] = useState<(typeof kinds)[number]>('knot');
  const marks = board.defects ?? [];
  const leastWidth = shop.value.strips.min;
  const clear = clearStretchesOf(board, { leastLength: leastUsableLength(), leastWidth, favour: 'area' });
  const stretches = isProblem(clear) ? [] : clear;
  const setMarks = (edit: (now: readonly Defect[]) => readonly Defect[]) =>
    boards.edit(board.id, (now) => ({ ...now, defects: edit(now.defects ?? []) }));
  const add = (rectangle: Omit<Defect, 'kind'>) => setMarks((now) => [...now, { ...rectangle, kind }]);
  return (
    <Card title="What is clear?">
      <Choice<(typeof kinds)[number]>
        label="Mark as"
        value={kind}
        options={kinds.map((value) => ({ value, label: value }))}
        onInput={setKind}
      />
      <DefectDrawing board={board} clear={stretches} onMark={add} />
      {isProblem(clear) ? (
        <Reason of={clear} />
      ) : (
        <div aria-live="polite">
          {stretches.length === 0 ? (
            <p>Nothing clear.</p>
          ) : (
            <ul>
              {stretches.map((one) => (
                <li>
                  Clear: <Length mm={one.length} /> by <Length mm={one.width} />
                  {one.start > 0 && (
                    <>
                      , from <Length mm={one.start} />
                    </>
                  )}
                </li>
              ))}
            </ul>
          )}
          <p class="soft small">
            From <Length mm={leastUsableLength()} /> long and <Length mm={leastWidth} /> wide, the narrowest strip of
            your shop. A plan keeps clear of the marks.
          </p>
        </div>
      )}
      {marks.map((mark, at) => (
        <DefectEditor
          key={at}
          board={board}
          mark={mark}
          onChange={(part) => setMarks((now) => now.map((one, n) => (n === at ? { ...one, ...part } : one)))}
          onRemove={() => {
            setMarks((now) => now.filter((_, n) => n !== at));
            offerUndo('Mark deleted.', () => setMarks((now) => now.toSpliced(at, 0, mark)));
          }}
        />
      ))}
      <Button
        onClick={() => {
          const middle = { x: board.length / 2, y: board.width / 2 };
          add(markedRectangle(board, middle, middle));
        }}
      >
        Mark by numbers
      </Button>
      <Tick
        label="One face is good enough to show"
        checked={board.goodFace ?? false}
        onInput={(on) => boards.edit(board.id, (now) => withOptional(now, 'goodFace', on || undefined))}
      />
    </Card>
  );
}

interface EditorProps {
  board: Board;
  mark: Defect;
  onChange(part: Partial<Defect>): void;
  onRemove(): void;
}

function DefectEditor({ board, mark, onChange, onRemove }: EditorProps) {
  const across = Math.max(board.width, board.farWidth ?? 0);
  return (
    <Fold
      label={
        <>
          {mark.kind} at <Length mm={mark.start} />
        </>
      }
    >
      <SizeEntries
        of={mark}
        labels={{
          start: 'From the near end',
          length: 'Along the board',
          offset: 'From the left edge',
          width: 'Across the board',
        }}
        check={({ start, length, offset, width }) =>
          badNumber('', 'Its far end', start + length, 'mm', { most: board.length }) ??
          badNumber('', 'Its right edge', offset + width, 'mm', { most: across })
        }
        onChange={onChange}
      />
      <Button onClick={onRemove}>Delete the {mark.kind}</Button>
    </Fold>
  );
}
