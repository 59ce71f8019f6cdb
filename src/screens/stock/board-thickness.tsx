import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { nominalQuarters } from '../../core/lumber/quarters.ts';
import { surfacedThickness } from '../../core/lumber/surfaced-thickness.ts';
import { flatThickness } from '../../core/milling/flat-thickness.ts';
import type { Board } from '../../store/records/board.ts';
import { roughShape } from '../../store/records/board-shape.ts';
import { surfacedThicknesses } from '../../tables/surfaced-thickness.ts';
import { Amount } from '../../ui/amount.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';

/** Length of the shorter blank that is shown beside the whole board. */
const shortBlank = () => (units.value.unit === 'in' ? 914.4 : 1000);

/** What a board planes down to: by the standard table, and by its own warp. */
export function BoardThickness({ board }: { board: Board }) {
  const { allowances, machines } = shop.value;
  const shape = roughShape(board);
  const standard = surfacedThickness(nominalQuarters(board.thickness), surfacedThicknesses);
  const whole = flatThickness(shape, { blankLength: shape.length, rips: 1, faceAllowance: allowances.face });
  const rips = machines.jointer.owned ? Math.ceil(shape.width / machines.jointer.width) : 1;
  const blankLength = Math.min(shortBlank(), shape.length);
  const short = flatThickness(shape, { blankLength, rips, faceAllowance: allowances.face });
  const measured = board.warp?.cup !== undefined && board.warp.bow !== undefined;
  return (
    <section class="card" aria-label="Thickness to be had">
      <h2>Thickness to be had</h2>
      <dl class="facts">
        {!isProblem(standard) && (
          <>
            <dt>Surfaced, by the standard table</dt>
            <dd>
              <Amount of={mm(standard.value)} />
            </dd>
          </>
        )}
        {!isProblem(whole) && (
          <>
            <dt>Flattened whole</dt>
            <dd>
              <Amount of={mm(whole.value)} />
            </dd>
          </>
        )}
        {!isProblem(short) && (
          <>
            <dt>
              As blanks <Amount of={mm(blankLength)} /> long{rips > 1 && `, ripped in ${rips} for the jointer`}
            </dt>
            <dd>
              <Amount of={mm(short.value)} />
            </dd>
          </>
        )}
      </dl>
      {isProblem(standard) && (
        <p class="soft small">
          <Say phrase={standard.message} />
        </p>
      )}
      {isProblem(whole) && (
        <p class="trouble">
          <Say phrase={whole.message} />
        </p>
      )}
      {!measured && (
        <p class="soft small">
          Cup or bow is not measured: middling kiln-dried hardwood is assumed. Measure to be sure.
        </p>
      )}
      <div class="workings">
        {!isProblem(standard) && <ShowWorking of={standard.working} label="The table" />}
        {!isProblem(whole) && <ShowWorking of={whole.working} label="Flattened whole" />}
        {!isProblem(short) && <ShowWorking of={short.working} label="As blanks" />}
      </div>
    </section>
  );
}
