import { shop } from '../../app/shop.ts';
import { boardProblem } from '../../core/milling/flat-thickness.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { roughShape } from '../../store/records/board-shape.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { Card } from '../../ui/card.tsx';
import { Pick } from '../../ui/fields.tsx';
import { Fold } from '../../ui/fold.tsx';
import { Length } from '../../ui/length.tsx';
import { OptionalLength } from '../../ui/settled.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { warpByTools, withWarp } from './warp-by-tools.ts';

const toolKinds = [
  ['straightedge', 'Straightedge', 'A string, or not tested'],
  ['sticks', 'Winding sticks', 'None, or not tested'],
] as const;

const kinds = [
  { kind: 'cup', name: 'Cup', how: 'Straightedge across the hollow face: the deepest gap.' },
  { kind: 'bow', name: 'Bow', how: 'String or straightedge along the hollow face: the deepest gap.' },
  { kind: 'crook', name: 'Crook', how: 'String along the hollow edge: the deepest gap.' },
  {
    kind: 'twist',
    name: 'Twist',
    how: 'Winding sticks across both ends, or the board on a flat bench: how far one corner lifts.',
  },
] as const;

/** How far a board is from flat and straight; what isn't measured is left empty and assumed. */
export function BoardWarp({ board }: { board: Board }) {
  const { seen = board.warp ?? {}, tools = {} } = board;
  const right = warpByTools(board);
  return (
    <Card title="Warp">
      <div class="fields">
        {kinds.map(({ kind, name }) => (
          <OptionalLength
            label={name}
            hint={kind === 'twist' && tools.sticks ? 'at the ends of the sticks' : undefined}
            value={seen[kind]}
            check={(depth) => boardProblem({ ...roughShape(board), [kind]: depth })}
            onAccept={(depth) =>
              boards.edit(board.id, (now) =>
                withWarp(now, withOptional(now.seen ?? now.warp ?? {}, kind, depth), now.tools ?? {}),
              )
            }
          />
        ))}
      </div>
      {toolKinds.map(([kind, label, untested]) => {
        // Tested with its length known; the one that was used also when it is gone since.
        const tested = (shop.value.references ?? []).flatMap(({ tool, error, length, kind: its }) =>
          its === kind && length !== undefined ? { tool, error, length } : [],
        );
        const used = tools[kind];
        const byName = new Map([...(used ? [used] : []), ...tested].map((one) => [one.tool, one]));
        return (
          byName.size > 0 && (
            <Pick
              key={kind}
              label={label}
              value={used?.tool ?? ''}
              options={[
                { value: '', label: untested },
                ...[...byName.keys()].map((name) => ({ value: name, label: name })),
              ]}
              onInput={(chosen) =>
                boards.edit(board.id, (now) =>
                  withWarp(now, now.seen ?? now.warp ?? {}, withOptional(now.tools ?? {}, kind, byName.get(chosen))),
                )
              }
            />
          )
        );
      })}
      {kinds.map(({ kind, name }) => {
        const found = right[kind];
        return (
          found && (
            <>
              <p>
                {name} without the tool’s error: <Length mm={found.value} />
              </p>
              <ShowWorking of={found.working} label={name} />
            </>
          )
        );
      })}
      <Fold label="How to measure it">
        <dl>
          {kinds.map(({ name, how }) => [
            <dt>
              <b>{name}</b>
            </dt>,
            <dd>{how}</dd>,
          ])}
        </dl>
      </Fold>
    </Card>
  );
}
