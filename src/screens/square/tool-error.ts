import type { Reference } from '../../store/records/shop.ts';
import { changeShop } from '../../store/shop.ts';

export const setTools = (edit: (tools: readonly Reference[]) => readonly Reference[]) =>
  changeShop((now) => ({ ...now, references: edit(now.references ?? []) }));

export const withoutTool = (references: readonly Reference[], gone: string): readonly Reference[] =>
  references.filter(({ tool }) => tool !== gone);

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
