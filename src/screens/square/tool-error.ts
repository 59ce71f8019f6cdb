import { type Phrase, phrase } from '../../core/answer/phrase.ts';
import { degrees, mm } from '../../core/answer/quantity.ts';
import type { Reference } from '../../store/records/shop.ts';
import { changeShop } from '../../store/shop.ts';

export const setTools = (edit: (tools: readonly Reference[]) => readonly Reference[]) =>
  changeShop((now) => ({ ...now, references: edit(now.references ?? []) }));

export const withoutTool = (references: readonly Reference[], gone: string): readonly Reference[] =>
  references.filter(({ tool }) => tool !== gone);

/** A tool's own error in words. */
export function sayToolError({ kind, error, length }: Pick<Reference, 'kind' | 'error' | 'length'>): Phrase {
  if (error === 0) return phrase`true`;
  if (kind === undefined || kind === 'square') return phrase`${degrees(90 + error)} inside`;
  const word = kind === 'sticks' ? 'apart' : error < 0 ? 'hollow' : 'crowned';
  return phrase`${mm(Math.abs(error))} ${word}${length ? phrase` over ${mm(length)}` : ''}`;
}

/** The squares among the shop's tools whose error is known. */
export function knownSquares(references: readonly Reference[] | undefined): readonly Reference[] {
  return (references ?? []).filter(({ kind }) => kind === 'square');
}

/** How far a square leads a line astray, mm for each metre; 0 for a tool that isn't known. */
export function perMetreOf(tool: string, references: readonly Reference[] | undefined): number {
  const found = knownSquares(references).find((reference) => reference.tool === tool);
  return found ? Math.tan((found.error * Math.PI) / 180) * 1000 : 0;
}

/** The tools with one test more: the latest test of a tool stands. */
export const withReference = (references: readonly Reference[], latest: Reference): readonly Reference[] => [
  ...withoutTool(references, latest.tool),
  latest,
];
