import { parseRange } from '../../core/answer/parse-range.ts';
import { type Range, scaled } from '../../core/answer/range.ts';
import { type AdhesivePhase, adhesivePhases } from '../../core/gluing/adhesive.ts';
import type { AdhesiveLabel } from '../../core/gluing/adhesive-times.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { newest } from '../../store/records/newest.ts';
import type { FormReader } from '../../ui/form-reader.ts';
import { fromCelsius, parseDegrees } from '../../ui/temperature.ts';
import type { LabelTexts } from './glue-form.ts';

const minutes = { seconds: 60, sign: 'min' };
const hours = { seconds: 3600, sign: 'h' };

/** Labels give short times in minutes and long ones in hours. */
export const labelUnits = { open: minutes, closed: minutes, clamp: minutes, rest: hours, cure: hours } as const;

/** What is typed in from the label; an empty entry leaves the table's figure. */
export function readLabel(texts: LabelTexts, { typed }: FormReader): AdhesiveLabel {
  const seconds = adhesivePhases.flatMap((phase) => {
    const said = typed(`label.seconds.${phase}`, texts[phase] ?? '', parseRange);
    return said ? [[phase, scaled(said, labelUnits[phase].seconds)]] : [];
  });
  const degrees = (['leastCelsius', 'atCelsius'] as const).flatMap((entry) => {
    const said = typed(`label.${entry}`, texts[entry] ?? '', parseDegrees);
    return said === undefined ? [] : [[entry, said]];
  });
  return { ...(seconds.length > 0 && { seconds: Object.fromEntries(seconds) }), ...Object.fromEntries(degrees) };
}

const rounded = (value: number) => String(Math.round(value * 100) / 100);

/** A time as labels give it: one number, or two with a dash. */
export function labelText(phase: AdhesivePhase, time: Range): string {
  const { least, most } = scaled(time, 1 / labelUnits[phase].seconds);
  return least === most ? rounded(least) : `${rounded(least)}–${rounded(most)}`;
}

/** The entries that give this label again. */
export const labelTexts = ({ seconds = {}, leastCelsius, atCelsius }: AdhesiveLabel): LabelTexts => ({
  ...Object.fromEntries(
    Object.entries(seconds).map(([phase, time]) => [phase, labelText(phase as AdhesivePhase, time)]),
  ),
  ...(leastCelsius !== undefined && { leastCelsius: rounded(fromCelsius(leastCelsius)) }),
  ...(atCelsius !== undefined && { atCelsius: rounded(fromCelsius(atCelsius)) }),
});

/** What the label of this adhesive said at its last glue-up. */
export const lastLabel = (glueups: readonly Glueup[], adhesive: string): AdhesiveLabel =>
  newest(glueups.filter((one) => one.adhesive === adhesive))?.label ?? {};
