import { badNumber } from '../../core/answer/bad-number.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import type { Adhesive } from '../../core/gluing/adhesive.ts';
import type { AdhesiveLabel } from '../../core/gluing/adhesive-times.ts';
import type { GlueTool } from '../../core/gluing/glue-amount.ts';
import { badSeams, type Seam } from '../../core/gluing/seam.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import { formReader } from '../../ui/form-reader.ts';
import { parseDegrees } from '../../ui/temperature.ts';
import { units } from '../../ui/units.ts';
import { adhesiveOf, type GlueForm, type Meets } from './glue-form.ts';
import { readLabel } from './label-times.ts';
import type { GluePlan } from './plan-glue-up.ts';

export interface ReadGlue {
  readonly seams: readonly Seam[];
  readonly meets: Meets;
  readonly species: string;
  readonly across: number | undefined;
  readonly outerBoard: number | undefined;
  readonly caul: number;
  readonly tool: GlueTool;
  readonly adhesive: Adhesive;
  readonly celsius: number;
  readonly hands: number;
  readonly label: AdhesiveLabel;
  /** By entry, named as the core names it: `seams.0.length`, `across`, `celsius`, `label.seconds.open`. */
  readonly problems: ReadonlyMap<string, Problem>;
  /** What is wrong with seams that are half typed. */
  readonly missing: ReadonlyMap<string, Problem>;
}

/** Reads what was typed. Nothing is lost: what can't be read stands at its entry. */
export function readGlueForm(form: GlueForm): ReadGlue {
  const reader = formReader();
  const unfinished = formReader();
  const length = (text: string) => parseLength(text, units.value.unit);

  const seams = form.seams.flatMap((row, at) => {
    // A row left empty is none; without any the clock alone is wanted.
    const empty = [row.length, row.width].filter((text) => text.trim() === '').length;
    if (empty === 2) return [];
    const entry = `seams.${at}`;
    const seam = {
      length: reader.number(`${entry}.length`, row.length, length),
      width: reader.number(`${entry}.width`, row.width, length),
    };
    const good = (empty ? unfinished : reader).found(badSeams([seam]) ?? seam, (field) => field.replace('0', `${at}`));
    const typed = reader.number(`${entry}.count`, row.count);
    const count = reader.read(
      `${entry}.count`,
      badNumber('', 'The number of seams', typed, 'count', { least: 1, most: 500, whole: true }) ?? typed,
    );
    return good && count ? Array.from({ length: count }, () => good) : [];
  });

  // Only a panel is asked for these: what was typed for one before doesn't count for other joints.
  const ofPanel = (entry: 'across' | 'outerBoard' | 'caul') =>
    form.meets === 'edge' ? reader.typed(entry, form[entry], length) : undefined;

  return {
    seams,
    meets: form.meets,
    species: form.species,
    across: ofPanel('across'),
    outerBoard: ofPanel('outerBoard'),
    caul: ofPanel('caul') ?? 0,
    tool: form.tool,
    adhesive: adhesiveOf(form.adhesive),
    celsius: reader.number('celsius', form.celsius, parseDegrees),
    hands: Number(form.hands),
    label: readLabel(form.label, reader),
    problems: reader.problems,
    missing: unfinished.problems,
  };
}

/** What the core finds wrong with an entry; a range is one entry. */
export const coreProblem = (
  { times, clamps }: Pick<GluePlan, 'times' | 'clamps'>,
  entry: string,
): Problem | undefined =>
  [times, clamps].filter(isProblem).find(({ field }) => field.replace(/\.(least|most)$/, '') === entry);
