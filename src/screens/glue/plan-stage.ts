import type { Adhesive } from '../../core/gluing/adhesive.ts';
import { type AdhesiveLabel, tableCelsius } from '../../core/gluing/adhesive-times.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { newest } from '../../store/records/newest.ts';
import type { Shop } from '../../store/records/shop.ts';
import { adhesiveOf } from './glue-form.ts';
import { lastLabel } from './label-times.ts';
import { type GluePlan, planGlueUp } from './plan-glue-up.ts';
import type { PieceStage } from './stages-of-piece.ts';

/** What is in the glue pot, and how warm it is. */
export interface Glue {
  readonly adhesive: Adhesive;
  readonly celsius: number;
  readonly label: AdhesiveLabel;
}

/** The glue of the last glue-up, with what its label said, until another is chosen. */
export function usualGlue(glueups: readonly Glueup[], celsius?: number): Glue {
  const last = newest(glueups);
  const adhesive = adhesiveOf(last?.adhesive);
  return { adhesive, celsius: celsius ?? last?.celsius ?? tableCelsius, label: lastLabel(glueups, adhesive.id) };
}

/** What a stage takes that is still to come: glued by one pair of hands with a brush, until it is set up otherwise. */
export const planStage = (stage: PieceStage, glue: Glue, shop: Pick<Shop, 'clamps' | 'pace'>): GluePlan =>
  planGlueUp({ ...stage, ...glue, across: stage.width, caul: 0, hands: 1, tool: 'brush' }, shop);
