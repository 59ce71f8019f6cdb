import { badNumber } from '../../core/answer/bad-number.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { isProblem, type Outcome, type Problem } from '../../core/answer/problem.ts';
import type { Adhesive } from '../../core/gluing/adhesive.ts';
import { type AdhesiveLabel, tableCelsius } from '../../core/gluing/adhesive-times.ts';
import { badSeamSize, type Seam } from '../../core/gluing/seam.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import { toCelsius } from '../../ui/temperature.ts';
import { units } from '../../ui/units.ts';
import { adhesiveOf, type GlueForm } from './glue-form.ts';
import { readLabel } from './label-times.ts';
import type { GluePlan } from './plan-glue-up.ts';

export interface ReadGlue {
  readonly seams: readonly Seam[];
  readonly across: number | undefined;
  readonly outerBoard: number | undefined;
  readonly caul: number;
  readonly adhesive: Adhesive;
  readonly celsius: number;
  readonly hands: number;
  readonly label: AdhesiveLabel;
  /** At `seams.0.length`, `across`, `temperature`, `label.open` and so on. */
  readonly problems: ReadonlyMap<string, Problem>;
  /** Entries that are needed and still empty. */
  readonly missing: ReadonlyMap<string, Problem>;
}

/** More seams of one size than this in one glue-up are a slip. */
const mostAlike = 60;

/** Reads what was typed. Nothing is lost: what can't be read stands at its entry. */
export function readGlueForm(form: GlueForm): ReadGlue {
  const problems = new Map<string, Problem>();
  const missing = new Map<string, Problem>();
  const take = <T>(field: string, outcome: Outcome<T>): T | undefined => {
    if (!isProblem(outcome)) return outcome;
    problems.set(field, outcome);
    return undefined;
  };
  const length = (field: string, text: string) =>
    text.trim() === '' ? undefined : take(field, parseLength(text, units.value.unit));
  const checked = (field: string, value: number | undefined, check: (value: number) => Problem | undefined) =>
    value === undefined ? undefined : take(field, check(value) ?? value);

  const seams = form.seams.flatMap((row, at) => {
    // A row left empty is none; without any the clock alone is wanted.
    if (row.length.trim() === '' && row.width.trim() === '') return [];
    const side = (name: keyof Seam) => {
      const field = `seams.${at}.${name}`;
      if (row[name].trim() === '') missing.set(field, badSeamSize(name, Number.NaN) as Problem);
      return checked(field, length(field, row[name]), (mm) => badSeamSize(name, mm));
    };
    const seam = { length: side('length'), width: side('width') };
    const field = `seams.${at}.count`;
    const count = checked(field, take(field, parseNumber(row.count)), (value) =>
      badNumber(field, 'The number of seams', value, 'count', { least: 1, most: mostAlike, whole: true }),
    );
    return Object.values(seam).includes(undefined) || count === undefined
      ? []
      : Array.from({ length: count }, () => seam as Seam);
  });

  const degrees = take('temperature', parseNumber(form.temperature));
  const label = readLabel(form.label);
  for (const [entry, trouble] of label.problems) problems.set(`label.${entry}`, trouble);
  return {
    seams,
    across: length('across', form.across),
    outerBoard: length('outerBoard', form.outerBoard),
    caul: length('caul', form.caul) ?? 0,
    adhesive: adhesiveOf(form.adhesive),
    celsius: degrees === undefined ? tableCelsius : toCelsius(degrees),
    hands: Number(form.hands),
    label: label.label,
    problems,
    missing,
  };
}

/** What the core calls otherwise than the form does. */
const entries: Readonly<Record<string, string>> = { celsius: 'temperature', panelWidth: 'across' };
const judgedByCore = /^(temperature|across|outerBoard|caul|label)/;

/** What is wrong with the plan itself, at the entry that it comes from. */
export const planProblems = ({ times, clamps }: Pick<GluePlan, 'times' | 'clamps'>): Map<string, Problem> =>
  new Map(
    [clamps, times].filter(isProblem).flatMap((found) => {
      const entry =
        entries[found.field] ?? found.field.replace('label.seconds', 'label').replace(/\.(least|most)$/, '');
      return judgedByCore.test(entry) ? [[entry, found]] : [];
    }),
  );
