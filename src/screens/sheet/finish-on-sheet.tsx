import { litres, m2 } from '../../core/answer/quantity.ts';
import type { Finish } from '../../store/records/finish.ts';
import { finishById } from '../../tables/finishes.ts';
import { Facts } from '../../ui/facts.tsx';
import { howMany } from '../../ui/how-many.ts';
import { sayRange } from '../../ui/say-range.ts';
import { CoatTakes } from '../finish/coat-takes.tsx';
import { shownSteps } from '../finish/finish-steps.ts';
import { SheetPart } from './sheet-part.tsx';
import { SheetSteps } from './sheet-steps.tsx';

/** The finish schedule: coats with what they take, their waits, and the rags. */
export function FinishOnSheet({ finish }: { finish: Finish | undefined }) {
  return (
    <SheetPart title="Finish" missing="Not begun yet.">
      {finish && (
        <>
          <Facts
            rows={[
              [`${finishById(finish.kind)?.name ?? finish.kind}, ${howMany(finish.coats, 'coat')} on`, m2(finish.area)],
              ...finish.containers.flatMap(({ count, litres: size }) =>
                count ? [[`${count} of`, litres(size)] as const] : [],
              ),
            ]}
          />
          <SheetSteps
            steps={shownSteps(finish)}
            ticks={finish.ticks}
            extra={({ kept: { coatLitres, waits } }) => (
              <>
                <CoatTakes litres={coatLitres} />
                {waits.map(({ name, leastSeconds, mostSeconds = leastSeconds }) => (
                  <p>
                    {name}: {sayRange({ least: leastSeconds, most: mostSeconds }, 'seconds')}
                  </p>
                ))}
              </>
            )}
          />
        </>
      )}
    </SheetPart>
  );
}
