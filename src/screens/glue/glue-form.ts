import type { Adhesive, AdhesivePhase } from '../../core/gluing/adhesive.ts';
import type { GlueTool } from '../../core/gluing/glue-amount.ts';
import { formatLength } from '../../core/length/format-length.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { adhesiveById, adhesives } from '../../tables/adhesives.ts';
import { fromCelsius } from '../../ui/temperature.ts';
import { units } from '../../ui/units.ts';
import { labelTexts, lastLabel } from './label-times.ts';
import type { Glue } from './plan-stage.ts';
import type { PieceStage } from './stages-of-piece.ts';

/** Seams of one size, as typed. */
export interface SeamTexts {
  readonly count: string;
  readonly length: string;
  readonly width: string;
}

/** How the parts meet: it decides how they are clamped. */
export type Meets = 'edge' | 'mitre-frame' | 'mitre-case' | 'other';

export type LabelEntry = AdhesivePhase | 'leastCelsius' | 'atCelsius';
export type LabelTexts = Readonly<Partial<Record<LabelEntry, string>>>;

/** A glue-up as it is typed, kept through a killed tab. */
export interface GlueForm {
  /** Id of a stage of the piece; empty for one that is typed. */
  readonly stage: string;
  readonly name: string;
  readonly seams: readonly SeamTexts[];
  readonly meets: Meets;
  readonly across: string;
  readonly outerBoard: string;
  readonly caul: string;
  readonly species: string;
  readonly adhesive: string;
  /** In the maker's own degrees. */
  readonly celsius: string;
  readonly tool: GlueTool;
  readonly hands: string;
  readonly label: LabelTexts;
}

/** The kind of that id, or the first where it isn't known here. */
export const adhesiveOf = (id = ''): Adhesive => adhesiveById(id) ?? (adhesives[0] as Adhesive);

export const emptySeam: SeamTexts = { count: '1', length: '', width: '' };

const shownDegrees = (celsius: number) => String(Math.round(fromCelsius(celsius) * 10) / 10);

export function emptyForm(species: string, { adhesive, celsius, label }: Glue): GlueForm {
  return {
    stage: '',
    name: '',
    seams: [emptySeam],
    meets: 'edge',
    across: '',
    outerBoard: '',
    caul: '',
    species,
    adhesive: adhesive.id,
    celsius: shownDegrees(celsius),
    tool: 'brush',
    hands: '1',
    label: labelTexts(label),
  };
}

/** The form with a stage of the piece in it; the adhesive and the air stay as they were. */
export function withStage(form: GlueForm, stage: PieceStage): GlueForm {
  const text = (mm: number | undefined) => (mm ? formatLength(mm, units.value) : '');
  const alike = new Map<string, SeamTexts>();
  for (const seam of stage.seams) {
    const [length, width] = [text(seam.length), text(seam.width)];
    const key = `${length} ${width}`;
    alike.set(key, { length, width, count: `${Number(alike.get(key)?.count ?? 0) + 1}` });
  }
  return {
    ...form,
    stage: stage.id,
    name: stage.name,
    seams: [...alike.values()],
    meets: stage.meets,
    across: text(stage.width),
    outerBoard: text(stage.outerBoard),
    species: stage.species,
  };
}

/** Another adhesive, and what its label said last time. */
export const withAdhesive = (adhesive: string, glueups: readonly Glueup[]): Partial<GlueForm> => ({
  adhesive,
  label: labelTexts(lastLabel(glueups, adhesive)),
});

/** What goes with the stage that is glued; the rest is of the glue and the work, whatever is glued. */
const ofStage = new Set(['stage', 'name', 'seams', 'meets', 'across', 'outerBoard', 'species']);

/** What was typed, for a stage of this id. */
export const forStage = (typed: Partial<GlueForm>, stage: string): Partial<GlueForm> => ({
  ...Object.fromEntries(Object.entries(typed).filter(([name]) => !ofStage.has(name))),
  stage,
});
