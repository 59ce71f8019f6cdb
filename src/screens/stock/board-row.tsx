import { Component } from 'preact';
import { routeTo } from '../../app/routes.ts';
import type { Board } from '../../store/records/board.ts';
import { Length } from '../../ui/length.tsx';
import { speciesName } from '../../ui/species-name.ts';

/** One board in a list; a tap opens it. Drawn anew only for another board: a long list scrolls past without work. */
export class BoardRow extends Component<{ board: Board }> {
  override shouldComponentUpdate(next: { board: Board }): boolean {
    return next.board !== this.props.board;
  }

  override render() {
    const { board } = this.props;
    const { thickness } = board;
    return (
      <a class="board-row" href={routeTo('stock', board.id)}>
        <b class="mark-of">{board.chalk}</b>
        <span>
          <span>
            {'quarters' in thickness ? `${thickness.quarters}/4` : <Length mm={thickness.mm} bare />} ×{' '}
            <Length mm={board.width} bare />
            {board.farWidth !== undefined && (
              <>
                –<Length mm={board.farWidth} bare />
              </>
            )}{' '}
            × <Length mm={board.length} />
          </span>
          <span class="soft small">{speciesName(board.species)}</span>
        </span>
      </a>
    );
  }
}
