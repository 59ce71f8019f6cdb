import { badNumber } from '../../core/answer/bad-number.ts';
import { type LimitedMachine, limitedMachines } from '../../core/milling/machine-limits.ts';
import { type ManualFigure, manualFigures } from '../../core/milling/own-limits.ts';
import type { Shop } from '../../store/records/shop.ts';
import { editShop } from '../../store/shop.ts';
import { machineLimits } from '../../tables/machine-limits.ts';
import { Card } from '../../ui/card.tsx';
import { Fold } from '../../ui/fold.tsx';
import { Length } from '../../ui/length.tsx';
import { OptionalLength } from '../../ui/settled.tsx';
import { SourceMark } from '../../ui/source-mark.tsx';

const machineNames: Readonly<Record<LimitedMachine, string>> = {
  jointer: 'Jointer',
  planer: 'Planer',
  tableSaw: 'Table saw',
  guidedSaw: 'Guided saw',
  router: 'Router',
};

const nameOf = (machine: LimitedMachine, figure: ManualFigure): string => {
  if (figure !== 'depth') return `Least ${figure}`;
  return machine === 'tableSaw' || machine === 'guidedSaw' ? 'Deepest cut' : 'Most in one pass';
};

/** The smallest piece and deepest pass of each machine owned: the usual figure, unless the manual's is typed in. */
export function ManualLimits({ shop }: { shop: Shop }) {
  const owned = limitedMachines.filter((machine) => shop.machines[machine].owned);
  const keep = (machine: LimitedMachine, figure: ManualFigure, value: number | undefined) => {
    editShop((now) => {
      const { [figure]: _, ...others } = now.manualLimits?.[machine] ?? {};
      const own = value === undefined ? others : { ...others, [figure]: value };
      return { ...now, manualLimits: { ...now.manualLimits, [machine]: own } };
    });
  };
  if (owned.length === 0) return null;
  return (
    <Fold label="Limits of your machines">
      <p class="soft">Empty: the usual figure. What the manual says wins.</p>
      {owned.map((machine) => (
        <Card title={machineNames[machine]} key={machine}>
          <div class="fields">
            {manualFigures.map(({ figure, limits, most }) => {
              const { mm, source } = machineLimits[machine][limits];
              return (
                <div key={figure}>
                  <OptionalLength
                    label={nameOf(machine, figure)}
                    value={shop.manualLimits?.[machine]?.[figure]}
                    check={(value) => badNumber(figure, 'The manual’s figure', value, 'mm', { above: 0, most })}
                    onAccept={(value) => keep(machine, figure, value)}
                  />
                  <p class="soft small">
                    Usual: <Length mm={mm} /> <SourceMark of={source} />
                  </p>
                </div>
              );
            })}
          </div>
        </Card>
      ))}
    </Fold>
  );
}
