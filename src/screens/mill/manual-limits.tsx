import { isProblem } from '../../core/answer/problem.ts';
import { type LimitedMachine, limitedMachines } from '../../core/milling/machine-limits.ts';
import { ownLimits } from '../../core/milling/own-limits.ts';
import type { ManualLimit, Shop } from '../../store/records/shop.ts';
import { changeShop } from '../../store/shop.ts';
import { machineLimits } from '../../tables/machine-limits.ts';
import { Card } from '../../ui/card.tsx';
import { Fold } from '../../ui/fold.tsx';
import { Length } from '../../ui/length.tsx';
import { OptionalLength } from '../../ui/settled.tsx';
import { SourceMark } from '../../ui/source-mark.tsx';
import { manualFigures } from './milling-input.ts';

const machineNames: Readonly<Record<LimitedMachine, string>> = {
  jointer: 'Jointer',
  planer: 'Planer',
  tableSaw: 'Table saw',
  guidedSaw: 'Guided saw',
  router: 'Router',
};

const nameOf = (machine: LimitedMachine, figure: keyof ManualLimit): string => {
  if (figure !== 'depth') return `Least ${figure}`;
  return machine === 'tableSaw' || machine === 'guidedSaw' ? 'Deepest cut' : 'Most in one pass';
};

/** The smallest piece and deepest pass of each machine owned: the usual figure, unless the manual's is typed in. */
export function ManualLimits({ shop }: { shop: Shop }) {
  const owned = limitedMachines.filter((machine) => shop.machines[machine].owned);
  const keep = (machine: LimitedMachine, figure: keyof ManualLimit, value: number | undefined) => {
    void changeShop((now) => {
      const { [figure]: _, ...others } = now.manualLimits?.[machine] ?? {};
      const own = value === undefined ? others : { ...others, [figure]: value };
      return { ...now, manualLimits: { ...now.manualLimits, [machine]: own } };
      // A write that fails is kept and shown by the shell.
    }).catch(() => {});
  };
  if (owned.length === 0) return null;
  return (
    <Fold label="Limits of your machines">
      <p class="soft">Empty: the usual figure. What the manual says wins.</p>
      {owned.map((machine) => (
        <Card title={machineNames[machine]} key={machine}>
          <div class="fields">
            {manualFigures.map(({ own, usual }) => {
              const { mm, source } = machineLimits[machine][usual];
              return (
                <div key={own}>
                  <OptionalLength
                    label={nameOf(machine, own)}
                    value={shop.manualLimits?.[machine]?.[own]}
                    check={(value) => {
                      const wrong = ownLimits(machineLimits, { [machine]: { [usual]: value } });
                      return isProblem(wrong) ? wrong : undefined;
                    }}
                    onAccept={(value) => keep(machine, own, value)}
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
