import { parseNumber } from '../../core/answer/parse-number.ts';
import { parseRange } from '../../core/answer/parse-range.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import { type Range, scaled } from '../../core/answer/range.ts';
import type { AdhesivePhase, AdhesiveTimes } from '../../core/gluing/adhesive.ts';
import type { AdhesiveLabel } from '../../core/gluing/adhesive-times.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { fromCelsius, toCelsius } from '../../ui/temperature.ts';
import type { LabelEntry, LabelTexts } from './glue-form.ts';

/** Labels give short times in minutes and long ones in hours. */
export const labelUnits: Readonly<Record<AdhesivePhase, { readonly seconds: number; readonly sign: string }>> = {
  open: { seconds: 60, sign: 'min' },
  closed: { seconds: 60, sign: 'min' },
  clamp: { seconds: 60, sign: 'min' },
  rest: { seconds: 3600, sign: 'h' },
  cure: { seconds: 3600, sign: 'h' },
};

export const labelPhases: readonly AdhesivePhase[] = ['open', 'closed', 'clamp', 'rest', 'cure'];

export interface ReadLabel {
  readonly label: AdhesiveLabel;
  readonly problems: ReadonlyMap<LabelEntry, Problem>;
}

/** What is typed in from the label; an empty entry leaves the table's figure. */
export function readLabel(texts: LabelTexts): ReadLabel {
  const problems = new Map<LabelEntry, Problem>();
  const seconds: Partial<Record<AdhesivePhase, Range>> = {};
  for (const phase of labelPhases) {
    const text = texts[phase] ?? '';
    if (text.trim() === '') continue;
    const read = parseRange(text);
    if (isProblem(read)) problems.set(phase, read);
    else seconds[phase] = scaled(read, labelUnits[phase].seconds);
  }
  const degrees = (entry: 'leastCelsius' | 'atCelsius') => {
    const text = texts[entry] ?? '';
    if (text.trim() === '') return {};
    const read = parseNumber(text);
    if (!isProblem(read)) return { [entry]: toCelsius(read) };
    problems.set(entry, read);
    return {};
  };
  const typed: Partial<AdhesiveTimes> = seconds;
  return {
    label: {
      ...(Object.keys(seconds).length > 0 && { seconds: typed }),
      ...degrees('leastCelsius'),
      ...degrees('atCelsius'),
    },
    problems,
  };
}

const rounded = (value: number) => String(Math.round(value * 100) / 100);

/** The entries that give this label again. */
export function labelTexts({ seconds = {}, leastCelsius, atCelsius }: AdhesiveLabel): LabelTexts {
  const times = labelPhases.flatMap((phase) => {
    const given = seconds[phase];
    if (!given) return [];
    const { least, most } = scaled(given, 1 / labelUnits[phase].seconds);
    return [[phase, least === most ? rounded(least) : `${rounded(least)}-${rounded(most)}`]];
  });
  return {
    ...Object.fromEntries(times),
    ...(leastCelsius !== undefined && { leastCelsius: rounded(fromCelsius(leastCelsius)) }),
    ...(atCelsius !== undefined && { atCelsius: rounded(fromCelsius(atCelsius)) }),
  };
}

/** What the label of this adhesive said at its last glue-up. */
export function lastLabel(glueups: readonly Glueup[], adhesive: string): AdhesiveLabel | undefined {
  return glueups.filter((one) => one.adhesive === adhesive).sort((a, b) => b.created - a.created)[0]?.label;
}
