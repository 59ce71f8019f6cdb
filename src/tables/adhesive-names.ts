import type { Adhesive } from '../core/gluing/adhesive.ts';
import { adhesives } from './adhesives.ts';
import { sameWords } from './same-words.ts';

/** Other words of the trade for an adhesive, by its id: for whoever asks in words. A screen asks by id. */
export const adhesiveNames: Readonly<Record<string, readonly string[]>> = {
  'pva-interior': ['PVA', 'white glue', 'yellow glue', 'wood glue'],
  'pva-water-resistant': ['PVA, waterproof', 'PVA D3', 'PVA, exterior'],
  polyurethane: ['Polyurethane', 'PU'],
  'hide-liquid': ['Hide glue', 'Liquid hide'],
  'hide-hot': ['Hot hide'],
  'epoxy-slow': ['Epoxy'],
  'urea-resin': ['Urea formaldehyde', 'UF'],
  casein: ['Casein glue'],
};

const byWords = new Map(
  adhesives.flatMap((row) =>
    [row.id, row.name, ...(adhesiveNames[row.id] ?? [])].map((name) => [sameWords(name), row] as const),
  ),
);

/** The kind of that id or name, in any order of words, or by another word of the trade. */
export const findAdhesive = (name: string): Adhesive | undefined => byWords.get(sameWords(name));
