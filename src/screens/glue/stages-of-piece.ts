import { isProblem } from '../../core/answer/problem.ts';
import { fewestGroups } from '../../core/breakdown/fewest-groups.ts';
import { panelLayout } from '../../core/breakdown/panel-layout.ts';
import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { Needing } from '../../core/gluing/can-begin-now.ts';
import { panelStages } from '../../core/gluing/panel-stages.ts';
import type { Seam } from '../../core/gluing/seam.ts';
import type { Part, Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Shop } from '../../store/records/shop.ts';
import { assemblyStages } from './assembly-stages.ts';
import type { Meets } from './glue-form.ts';

/** One glue-up of a piece, before it is done. */
export interface PieceStage extends Needing {
  readonly seams: readonly Seam[];
  readonly meets: Meets;
  /** mm across, and of the outermost board, where the stage is a panel. */
  readonly width?: number;
  readonly outerBoard?: number;
  readonly species: string;
  /** The strips are guessed from the widest that the shop rips: there is no plan yet. */
  readonly guessed: boolean;
}

interface Laid {
  /** Widths of the strips of each sub-panel, mm. */
  readonly groups: readonly (readonly number[])[];
  /** mm that each strip is longer than the part. */
  readonly extra: number;
}

function laidBy(plan: Plan, part: Part, unit: number): Laid | undefined {
  // The plan holds the problem that it solved, as the planner wrote it.
  const { shop } = plan.problem as unknown as BreakdownProblem;
  const { strips, groups } = panelLayout(shop, plan, part.id, unit);
  if (strips.length === 0) return undefined;
  return {
    groups: groups.map((group) => group.map((at) => strips[at]?.jointed ?? 0)),
    extra: shop.lengthAllowance,
  };
}

function guessed({ width }: Part, { strips, allowances, machines: { planer } }: Shop): Laid {
  const number = Math.max(1, Math.ceil(width / Math.max(10, strips.max - allowances.edge)));
  const widths = Array<number>(number).fill(width / number);
  const groups = fewestGroups(widths, planer.owned ? planer.width : Number.POSITIVE_INFINITY);
  return { groups: groups.map((group) => widths.slice(0, group.length)), extra: allowances.length };
}

function stagesOfPanel(part: Part, unit: number, plan: Plan | undefined, shop: Shop): PieceStage[] {
  const planned = plan && laidBy(plan, part, unit);
  const { groups, extra } = planned ?? guessed(part, shop);
  const stages = panelStages({
    id: `${part.id}/${unit}`,
    name: part.quantity > 1 ? `${part.name} ${unit}` : part.name,
    length: part.length + extra,
    thickness: part.thickness,
    groups,
  });
  if (isProblem(stages)) return [];
  return stages.map((stage) => ({ ...stage, meets: 'edge', species: part.species, guessed: !planned }));
}

/** Every glue-up of a piece, none before what it needs: sub-panels, then panels, then what is put together from them. */
export function stagesOfPiece(piece: Piece, plan: Plan | undefined, shop: Shop): PieceStage[] {
  const panels = piece.parts
    .filter(({ panel }) => panel)
    .flatMap((part) =>
      Array.from({ length: part.quantity }, (_, at) => stagesOfPanel(part, at + 1, plan, shop)).flat(),
    );
  return [...panels, ...assemblyStages(piece, panels)];
}
