import type { AdhesivePhase } from '../../core/gluing/adhesive.ts';
import { type AdhesiveLabel, tableCelsius } from '../../core/gluing/adhesive-times.ts';
import type { GlueTool } from '../../core/gluing/glue-amount.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { adhesives } from '../../tables/adhesives.ts';
import { fromCelsius } from '../../ui/temperature.ts';
import { units } from '../../ui/units.ts';
import { labelTexts } from './label-times.ts';
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
  readonly temperature: string;
  readonly tool: GlueTool;
  readonly hands: string;
  readonly label: LabelTexts;
}

export const emptySeam: SeamTexts = { count: '1', length: '', width: '' };

const shownDegrees = (celsius: number) => String(Math.round(fromCelsius(celsius) * 10) / 10);

export function emptyForm(species: string, celsius = tableCelsius): GlueForm {
  return {
    stage: '',
    name: '',
    seams: [emptySeam],
    meets: 'edge',
    across: '',
    outerBoard: '',
    caul: '',
    species,
    adhesive: adhesives[0]?.id ?? '',
    temperature: shownDegrees(celsius),
    tool: 'brush',
    hands: '1',
    label: {},
  };
}

/** The form with a stage of the piece in it; the adhesive and the air stay as they were. */
export function withStage(form: GlueForm, stage: PieceStage): GlueForm {
  const length = (mm: number) => formatLength(mm, units.value);
  const alike = new Map<string, { count: number; length: string; width: string }>();
  for (const seam of stage.seams) {
    const texts = { length: length(seam.length), width: length(seam.width) };
    const key = `${texts.length} ${texts.width}`;
    alike.set(key, { ...texts, count: (alike.get(key)?.count ?? 0) + 1 });
  }
  return {
    ...form,
    stage: stage.id,
    name: stage.name,
    seams: alike.size > 0 ? [...alike.values()].map((row) => ({ ...row, count: String(row.count) })) : [emptySeam],
    meets: stage.meets,
    across: stage.width ? length(stage.width) : '',
    outerBoard: stage.outerBoard ? length(stage.outerBoard) : '',
    species: stage.species,
  };
}

/** The form with another adhesive, and what its label said last time. */
export function withAdhesive(form: GlueForm, adhesive: string, label: AdhesiveLabel | undefined): GlueForm {
  return { ...form, adhesive, label: label ? labelTexts(label) : {} };
}
