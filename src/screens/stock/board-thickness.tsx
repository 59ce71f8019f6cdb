import { shop } from '../../app/shop.ts';
import { formatQuantity } from '../../core/answer/format-quantity.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { resultOf } from '../../core/answer/result-of.ts';
import { nominalQuarters } from '../../core/lumber/quarters.ts';
import { surfacedThickness } from '../../core/lumber/surfaced-thickness.ts';
import { flatThickness } from '../../core/milling/flat-thickness.ts';
import type { Board } from '../../store/records/board.ts';
import { roughShape } from '../../store/records/board-shape.ts';
import { surfacedThicknesses } from '../../tables/surfaced-thickness.ts';
import { Card } from '../../ui/card.tsx';
import { Facts } from '../../ui/facts.tsx';
import { Reason } from '../../ui/reason.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';

/** Length of the shorter blank that is shown beside the whole board. */
const shortBlank = () => (units.value.unit === 'in' ? 914.4 : 1000);

/** What a board planes down to: by the standard table, and by its own warp. */
export function BoardThickness({ board }: { board: Board }) {
  const { allowances, machines } = shop.value;
  const shape = roughShape(board);
  const rips = machines.jointer.owned ? Math.ceil(shape.width / machines.jointer.width) : 1;
  const blankLength = Math.min(shortBlank(), shape.length);
  const flat = { blankLength, rips, faceAllowance: allowances.face };
  const blanks = `${formatQuantity(mm(blankLength), units.value)} long`;
  const ways = [
    ['By the standard table', surfacedThickness(nominalQuarters(board.thickness), surfacedThicknesses)],
    ['Flattened whole', flatThickness(shape, { ...flat, blankLength: shape.length, rips: 1 })],
    [`As blanks ${blanks}${rips > 1 ? `, ripped in ${rips} for the jointer` : ''}`, flatThickness(shape, flat)],
  ] as const;
  const sound = ways.flatMap(([way, found]) => (isProblem(found) ? [] : [[way, found] as const]));
  return (
    <Card title="Thickness to be had">
      <Facts rows={sound.map(([way, found]) => [way, resultOf(found)])} />
      {ways.slice(0, 2).map(([, found]) => isProblem(found) && <Reason of={found} />)}
      {(board.warp?.cup === undefined || board.warp.bow === undefined) && (
        <p class="soft small">Cup or bow is not measured: that of an air-dried, flat-sawn board is assumed.</p>
      )}
      <div class="workings">
        {sound.map(([way, found]) => (
          <ShowWorking of={found.working} label={way} />
        ))}
      </div>
    </Card>
  );
}
