import { isProblem } from '../../../src/core/answer/problem.ts';
import { emptyForm, type GlueForm } from '../../../src/screens/glue/glue-form.ts';
import { planGlueUp } from '../../../src/screens/glue/plan-glue-up.ts';
import { usualGlue } from '../../../src/screens/glue/plan-stage.ts';
import { readGlueForm } from '../../../src/screens/glue/read-glue-form.ts';
import { startedGlueUp } from '../../../src/screens/glue/started-glue-up.ts';
import type { Glueup } from '../../../src/store/records/glueup.ts';
import type { Part, Piece } from '../../../src/store/records/piece.ts';
import { defaultShop, type Shop } from '../../../src/store/records/shop.ts';

/** 2 March 2026, 9:00 UTC. */
export const morning = Date.UTC(2026, 2, 2, 9);
export const minutes = (number: number) => number * 60_000;
export const hours = (number: number) => number * 3_600_000;

/** Eight heavy bar clamps, and an 8 in jointer and a 13 in planer. */
export const shop: Shop = { ...defaultShop(0), clamps: [{ kind: 'bar-heavy', opening: 1200, count: 8 }] };

/** One seam of 1200 by 20 mm in black cherry, with interior PVA at 20 degrees Celsius; lengths are typed in millimetres. */
export const typed = (change: Partial<GlueForm> = {}): GlueForm => ({
  ...emptyForm('cherry-black', usualGlue([])),
  name: 'Shelf',
  seams: [{ count: '1', length: '1200', width: '20' }],
  ...change,
});

export function planned(form: GlueForm, its: Pick<Shop, 'clamps' | 'pace'> = shop) {
  const read = readGlueForm(form);
  return { read, plan: planGlueUp(read, its) };
}

export function started(form: GlueForm = typed(), now = morning, piece?: Piece): Glueup {
  const { read, plan } = planned(form);
  const glueup = startedGlueUp(form, read, plan, piece, now);
  if (isProblem(glueup)) throw new Error(glueup.message.text);
  return glueup;
}

const part = (id: string, length: number, width: number, panel: boolean, quantity = 1): Part => ({
  id,
  name: id,
  species: 'cherry-black',
  length,
  width,
  thickness: 19,
  quantity,
  panel,
});

/** A chest of two panels at the corners and a lid with a cleat that must float. */
export const chest: Piece = {
  id: 'chest',
  created: 0,
  updated: 0,
  revision: 1,
  name: 'Chest',
  parts: [
    part('side', 900, 400, true, 2),
    part('end', 400, 400, true, 2),
    part('lid', 1000, 480, true),
    part('cleat', 400, 45, false, 2),
  ],
  joints: [
    { id: 'corner', kind: 'mitre', parts: ['side', 'end'], length: 400 },
    { id: 'cleats', kind: 'cleat', parts: ['lid', 'cleat'] },
  ],
  stages: [],
};
