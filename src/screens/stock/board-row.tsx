import { Component } from 'preact';
import { routeTo } from '../../app/routes.ts';
import type { Board } from '../../store/records/board.ts';
import { speciesName } from '../../ui/species-name.ts';
import { BoardSize } from './board-size.tsx';

/** One board in a list; a tap opens it. Drawn anew only for another board: a long list scrolls past without work. */
export class BoardRow extends Component<{ board: Board }> {
  override shouldComponentUpdate(next: { board: Board }): boolean {
    return next.board !== this.props.board;
  }

  override render() {
    const { board } = this.props;
    return (
      <a class="board-row" href={routeTo('stock', board.id)}>
        <b class="mark-of">{board.chalk}</b>
        <span>
          <BoardSize board={board} />
          <span class="soft small">{speciesName(board.species)}</span>
        </span>
      </a>
    );
  }
}
