import { badNumber } from '../../core/answer/bad-number.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { isProblem, type Outcome, type Problem, problem } from '../../core/answer/problem.ts';
import type { Adhesive } from '../../core/gluing/adhesive.ts';
import { type AdhesiveLabel, tableCelsius } from '../../core/gluing/adhesive-times.ts';
import type { Seam } from '../../core/gluing/seam.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import { adhesives, findAdhesive } from '../../tables/adhesives.ts';
import { toCelsius } from '../../ui/temperature.ts';
import { units } from '../../ui/units.ts';
import type { GlueForm } from './glue-form.ts';
import { readLabel } from './label-times.ts';

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
  const length = (field: string, name: string, text: string, most: number) => {
    if (text.trim() === '') return undefined;
    const mm = take(field, parseLength(text, units.value.unit));
    return mm === undefined ? undefined : take(field, badNumber(field, name, mm, 'mm', { above: 0, most }) ?? mm);
  };
  const whole = (field: string, name: string, text: string, most: number) => {
    const read = take(field, parseNumber(text));
    return read === undefined
      ? undefined
      : take(field, badNumber(field, name, read, 'count', { least: 1, most, whole: true }) ?? read);
  };

  const seams = form.seams.flatMap((row, at) => {
    const long = length(`seams.${at}.length`, 'The length of a seam', row.length, 12000);
    const wide = length(`seams.${at}.width`, 'The thickness at a seam', row.width, 1000);
    const count = whole(`seams.${at}.count`, 'The number of seams', row.count, mostAlike);
    // A row left empty is none; without any the clock alone is wanted.
    if (row.length.trim() === '' && row.width.trim() === '') return [];
    if (row.length.trim() === '')
      missing.set(`seams.${at}.length`, problem('', 'How long is the seam? Measure along it.'));
    if (row.width.trim() === '')
      missing.set(`seams.${at}.width`, problem('', 'How thick is the wood at the seam? Type it in.'));
    return long !== undefined && wide !== undefined && count !== undefined
      ? Array.from({ length: count }, () => ({ length: long, width: wide }))
      : [];
  });

  const degrees = take('temperature', parseNumber(form.temperature));
  const label = readLabel(form.label);
  for (const [entry, trouble] of label.problems) problems.set(`label.${entry}`, trouble);
  return {
    seams,
    across: length('across', 'The width across', form.across, 5000),
    outerBoard: length('outerBoard', 'The width of the outer board', form.outerBoard, 2000),
    caul: length('caul', 'The caul', form.caul, 500) ?? 0,
    adhesive: findAdhesive(form.adhesive) ?? (adhesives[0] as Adhesive),
    celsius: degrees === undefined ? tableCelsius : toCelsius(degrees),
    hands: whole('hands', 'The number of people', form.hands, 4) ?? 1,
    label: label.label,
    problems,
    missing,
  };
}
