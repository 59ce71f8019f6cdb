import type { Reference } from '../../store/records/shop.ts';
import { changeShop } from '../../store/shop.ts';

/** Writes the tools; false when the phone did not take it, which the shell keeps and shows. */
export const setTools = (edit: (tools: readonly Reference[]) => readonly Reference[]): Promise<boolean> =>
  changeShop((now) => ({ ...now, references: edit(now.references ?? []) })).then(
    () => true,
    () => false,
  );

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
export function withReference(references: readonly Reference[], latest: Reference): readonly Reference[] {
  return [...references.filter(({ tool }) => tool !== latest.tool), latest];
}
