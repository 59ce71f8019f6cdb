import type { Board as Sizes } from '../../core/lumber/board.ts';
import { Length } from '../../ui/length.tsx';

/** A board's sizes in one line: thickness × width × length, both widths of a taper. */
export function BoardSize({ board: { thickness, width, farWidth, length } }: { board: Sizes }) {
  return (
    <span>
      {'quarters' in thickness ? `${thickness.quarters}/4` : <Length mm={thickness.mm} bare />} ×{' '}
      <Length mm={width} bare />
      {farWidth !== undefined && (
        <>
          –<Length mm={farWidth} bare />
        </>
      )}{' '}
      × <Length mm={length} />
    </span>
  );
}
