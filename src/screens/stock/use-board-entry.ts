import { useMemo, useState } from 'preact/hooks';
import { useForm } from '../../app/form.ts';
import { nextChalkMark } from '../../core/lumber/chalk-mark.ts';
import { boards as store } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { units } from '../../ui/units.ts';
import { formAfter, plainMark, readBoardForm } from './board-form.ts';

/** The entries of one board, and what logs it: for the foot of the screen and for the last key of the pad. */
export function useBoardEntry(logged: readonly Board[], deliveryId = '') {
  const { marks, last, isTaken, woods, carried } = useMemo(() => {
    // The delivery's own come last: marks, wood and sizes go on from them.
    const own = deliveryId === '' ? [] : logged.filter((board) => board.deliveryId === deliveryId);
    const inTurn = own.length > 0 ? [...logged, ...own] : logged;
    const marks = inTurn.map(({ chalk }) => chalk);
    const carried = formAfter(inTurn, units.value);
    let taken: Set<string> | undefined;
    return {
      marks,
      last: inTurn.at(-1),
      isTaken(mark: string) {
        // The mark that is proposed is free: thousands are gone through once another is typed.
        if (mark === carried.chalk) return false;
        taken ??= new Set(marks.map(plainMark));
        return taken.has(plainMark(mark));
      },
      woods: [...new Set(inTurn.map(({ species }) => species).reverse())],
      carried,
    };
  }, [logged, deliveryId, units.value]);
  const [said, setSaid] = useState('');
  const typed = useForm(`board-form-2-${deliveryId}`, carried, (form) =>
    readBoardForm(form, isTaken, units.value, last),
  );
  const log = () =>
    void typed?.store(async ({ alike, ...board }) => {
      const all: string[] = [board.chalk];
      while (all.length < alike) all.push(nextChalkMark([...marks, ...all]));
      const from = deliveryId === '' ? {} : { deliveryId };
      await store.addMany(all.map((chalk) => ({ ...board, chalk, state: 'rack', ...from })));
      setSaid(`${all.length === 1 ? `${all[0]} is` : `${all[0]} to ${all.at(-1)} are`} logged.`);
      typed.focus('.sizes input');
    });
  return { typed, woods, said, log };
}

export type BoardEntryState = ReturnType<typeof useBoardEntry>;
