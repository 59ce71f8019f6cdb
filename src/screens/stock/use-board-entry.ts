import { useMemo, useRef, useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { nextChalkMark } from '../../core/lumber/chalk-mark.ts';
import { boards as store } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { units } from '../../ui/units.ts';
import { type BoardForm, formAfter, formOf, plainMark, readBoardForm } from './board-form.ts';

/** The entries of one board, and what logs it: for the foot of the screen and for the last key of the pad. */
export function useBoardEntry(logged: readonly Board[], common: readonly string[], deliveryId?: string) {
  const draft = useDraft<BoardForm>(`board-form-1-${deliveryId ?? ''}`, formAfter(undefined, common[0] ?? ''));
  const [said, setSaid] = useState('');
  const busy = useRef(false);
  const entries = useRef<HTMLElement>(null);
  const form = draft.value;
  const fixing = form?.fixing ?? '';
  const { marks, isTaken, proposedMark } = useMemo(
    () => marksOf(logged, deliveryId, fixing),
    [logged, deliveryId, fixing],
  );
  const unit = units.value.unit;
  const read = form && readBoardForm(form, proposedMark, isTaken, unit);

  const focus = (selector: string) =>
    requestAnimationFrame(() => entries.current?.querySelector<HTMLElement>(selector)?.focus());

  const log = async () => {
    if (busy.current || !form || !read) return;
    const { board, alike } = read;
    if (!board) {
      draft.set({ ...form, tried: true });
      focus('[aria-invalid="true"]');
      return;
    }
    busy.current = true;
    try {
      if (form.fixing !== '') {
        await store.change(form.fixing, ({ farWidth: _, ...now }) => ({ ...now, ...board }));
        setSaid(`${board.chalk} is put right.`);
      } else {
        const all: Board['chalk'][] = [board.chalk];
        while (all.length < alike) all.push(nextChalkMark([...marks, ...all]));
        const rest = { state: 'rack' as const, ...(deliveryId !== undefined && { deliveryId }) };
        await store.addMany(all.map((chalk) => ({ ...board, chalk, ...rest })));
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

  return { form, read, proposedMark, said, entries, set: draft.set, log, fix, leave, common, unit };
}

/** The marks of all other boards in the order to go on from, the delivery's own last, and the one to propose. */
function marksOf(logged: readonly Board[], deliveryId: string | undefined, fixing: string) {
  const others = logged.filter(({ id }) => id !== fixing);
  const ofDelivery = others.filter((board) => deliveryId !== undefined && board.deliveryId === deliveryId);
  const marks = [...others, ...ofDelivery].map(({ chalk }) => chalk);
  let taken: ReadonlySet<string> | undefined;
  return {
    marks,
    proposedMark: nextChalkMark(marks),
    /** Gathered only once a mark is typed: the proposed one is free. */
    isTaken(mark: string): boolean {
      taken ??= new Set(marks.map(plainMark));
      return taken.has(plainMark(mark));
    },
  };
}

export type BoardEntryState = ReturnType<typeof useBoardEntry>;
