import { useMemo, useRef, useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { nextChalkMark } from '../../core/lumber/chalk-mark.ts';
import { boards as store } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { units } from '../../ui/units.ts';
import { type BoardForm, formAfter, formOf, plainMark, readBoardForm } from './board-form.ts';

/** The entries of one board, and what logs it: for the foot of the screen and for the last key of the pad. */
export function useBoardEntry(logged: readonly Board[], deliveryId = '') {
  /** The delivery's own last: marks and woods go on from them. */
  const inTurn = useMemo(
    () => [...logged, ...logged.filter((board) => deliveryId !== '' && board.deliveryId === deliveryId)],
    [logged, deliveryId],
  );
  const woods = useMemo(() => [...new Set(inTurn.map(({ species }) => species).reverse())], [inTurn]);
  const draft = useDraft<BoardForm>(`board-form-1-${deliveryId}`, formAfter(undefined, woods[0] ?? ''));
  const [said, setSaid] = useState('');
  const busy = useRef(false);
  const entries = useRef<HTMLElement>(null);
  const form = draft.value;
  const fixing = form?.fixing ?? '';
  const { marks, taken, proposedMark } = useMemo(() => {
    const marks = inTurn.filter(({ id }) => id !== fixing).map(({ chalk }) => chalk);
    return { marks, taken: new Set(marks.map(plainMark)), proposedMark: nextChalkMark(marks) };
  }, [inTurn, fixing]);
  const read = form && readBoardForm(form, proposedMark, (mark) => taken.has(plainMark(mark)), units.value.unit);

  const focus = (selector: string) =>
    requestAnimationFrame(() => entries.current?.querySelector<HTMLElement>(selector)?.focus());

  const log = async () => {
    if (busy.current || !form || !read) return;
    const { board, alike = 1 } = read;
    if (!board) {
      draft.set({ ...form, tried: true });
      focus('[aria-invalid="true"]');
      return;
    }
    busy.current = true;
    try {
      if (fixing !== '') {
        await store.change(fixing, (now) => ({ ...withOptional(now, 'farWidth', undefined), ...board }));
        setSaid(`${board.chalk} kept.`);
      } else {
        const all: string[] = [board.chalk];
        while (all.length < alike) all.push(nextChalkMark([...marks, ...all]));
        const from = deliveryId === '' ? {} : { deliveryId };
        await store.addMany(all.map((chalk) => ({ ...board, chalk, state: 'rack', ...from })));
        setSaid(`${all.length === 1 ? `${all[0]} is` : `${all[0]} to ${all.at(-1)} are`} logged.`);
      }
      draft.clear(formAfter(form, board.species));
      focus('.sizes input');
    } catch {
      // Not stored: the shell keeps the change and shows it, and the form stays as it was typed.
    } finally {
      busy.current = false;
    }
  };

  const fix = (board: Board) => {
    draft.set(formOf(board, (mm) => formatLength(mm, units.value)));
    focus('.sizes input');
  };
  const leave = () => draft.clear(formAfter(form, ''));

  return {
    form,
    read,
    proposedMark,
    woods,
    said,
    entries,
    set: draft.set,
    /** What `log` does, in words. */
    logs: fixing === '' ? 'Log board' : 'Keep board',
    log: () => void log(),
    fix,
    leave,
  };
}

export type BoardEntryState = ReturnType<typeof useBoardEntry>;
