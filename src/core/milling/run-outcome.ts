import type { Outcome } from '../answer/problem.ts';
import { sumOf } from '../answer/sum-of.ts';
import type { Worked } from '../answer/worked.ts';
import { yieldOf } from '../breakdown/yield-of.ts';
import { checkMillingInput } from './check-milling-input.ts';
import type { MillingInput, MillingPart } from './milling-input.ts';
import type { MillingStep } from './milling-step.ts';
import { ownAllowance } from './own-allowance.ts';
import { reachableThickness } from './reachable-thickness.ts';
import { grouped } from './step-draft.ts';
import { type StripRecord, stripRecords } from './strip-records.ts';
import type { Measured } from './with-measured.ts';
import { unitName } from './workpiece.ts';

export interface RunOutcome {
  readonly strips: readonly StripRecord[];
  /** Finished parts against wood started, by area of the faces, in percent. */
  readonly yield: { readonly planned: Worked; readonly real: Worked };
  /** Units of parts that are still to be made: a strip was lost, or came out too narrow. */
  readonly toMake: readonly {
    readonly part: string;
    readonly unit: number;
    readonly label: string;
    readonly missingWidth: number;
  }[];
  /** What would have been allowance enough for nine strips of ten; absent with too few measured. */
  readonly allowances: { readonly edge?: Worked; readonly face?: Worked };
}

/**
 * What a milling run really came to: each strip, the yield against the plan, what must be made again, and the maker's
 * own allowances as the next defaults.
 *
 * @param input what the run was made from
 * @param steps of the run, mm
 * @param measured in the order it was taken, mm
 * @param lost by strip, why it can't be used
 * @returns widths and thicknesses in mm, yields in percent of the area crosscut from the boards
 * @valid a run of this input; strips that weren't measured count as planned, readings that don't fit don't count
 * @errors as `millingSequence`
 * @example runOutcome(oneShelf, millingSequence(oneShelf), [], {})
 *   // => { yield: { planned: { value: 78.7 } }, toMake: [] }
 * @source the nearest-rank percentile; nine of ten is an assumption
 */
export function runOutcome(
  input: MillingInput,
  steps: readonly MillingStep[],
  measured: readonly Measured[],
  lost: Readonly<Record<string, string>>,
): Outcome<RunOutcome> {
  const wrong = checkMillingInput(input);
  if (wrong) return wrong;
  const strips = stripRecords(input, steps, measured, lost);

  // No strip comes out larger than it was: what two readings differ by isn't an allowance.
  const edges = strips.flatMap(({ strip: { part, width }, finishedWidth }) =>
    finishedWidth === undefined || !part.panel ? [] : Math.max(0, width - finishedWidth),
  );
  const faces = strips.flatMap(({ blank: { board, length }, strip: { width }, cleanThickness }) =>
    cleanThickness === undefined ? [] : Math.max(0, reachableThickness(board, width, length, 0) - cleanThickness) / 2,
  );
  const edge = ownAllowance(edges, 'rough width - finished width');
  const face = ownAllowance(faces, '(rough thickness - warp - clean thickness) / 2');

  const ofUnits = strips.flatMap((record) => record.strip.units.map((unit) => ({ ...record, unit })));
  const made = grouped(ofUnits, ({ strip: { part }, unit }) => `${part.id}#${unit}`).map((own) => {
    const { strip, unit } = own[0] as (typeof ofUnits)[number];
    const width = own.reduce(
      (sum, { lost: why, strip: { finished }, finishedWidth = finished }) =>
        sum + (why === undefined ? finishedWidth : 0),
      0,
    );
    return { part: strip.part, unit, missingWidth: strip.part.width - width };
  });
  const lacks = ({ missingWidth }: (typeof made)[number]) => missingWidth > input.practice.widthToleranceMm.value;
  const started = [...new Set(strips.map(({ blank }) => blank))].reduce(
    (sum, { board, length }) => sum + board.width * (length + input.shop.crosscutKerf),
    0,
  );

  return {
    strips,
    yield: {
      planned: share(made, started),
      real: share(
        made.filter((unit) => !lacks(unit)),
        started,
      ),
    },
    toMake: made
      .filter(lacks)
      .map(({ part, unit, missingWidth }) => ({ part: part.id, unit, label: unitName(part, [unit]), missingWidth })),
    allowances: { ...(edge && { edge }), ...(face && { face }) },
  };
}

/** The finished faces of units against the wood started, mm2. */
const share = (units: readonly { readonly part: MillingPart }[], started: number): Worked =>
  yieldOf(sumOf(units, ({ part }) => part.length * part.width) / 1e6, started / 1e6);
