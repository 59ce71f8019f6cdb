import { firstBad } from '../answer/bad-number.ts';
import { firstWithin } from '../answer/first-within.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { m2, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { lengths } from '../breakdown/sizes.ts';
import { checkMillingInput } from './check-milling-input.ts';
import { layBlanks } from './lay-blanks.ts';
import type { MillingInput, MillingPart } from './milling-input.ts';
import { ownAllowance } from './own-allowance.ts';
import { reachableThickness } from './reachable-thickness.ts';
import { grouped } from './step-draft.ts';
import { unitName } from './workpiece.ts';

/** What the maker noted of a strip during the run, in mm; what was not measured is absent. */
export interface StripRecord {
  /** Its id in the run, for example `B3@1030/1`. */
  readonly strip: string;
  /** Thickness at which both faces were clean. */
  readonly cleanThickness?: number;
  /** Width with both edges jointed. */
  readonly finishedWidth?: number;
  /** Not usable in the end; why. */
  readonly lost?: string;
}

/** What a strip was to become, and what was noted of it. */
export interface CameTo extends StripRecord {
  readonly label: string;
  readonly planned: { readonly width: number; readonly thickness: number };
}

export interface RunOutcome {
  readonly strips: readonly CameTo[];
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
 * @param records what was noted of its strips, mm
 * @returns widths and thicknesses in mm, yields in percent of the area crosscut from the boards
 * @valid a run of this input; strips without a record count as planned
 * @errors as `millingSequence`; a record of no strip of the run, or of a strip larger than its board gave
 * @example runOutcome(oneShelf, []) // => { yield: { planned: { value: 78.7 } }, toMake: [] }
 * @source the nearest-rank percentile; nine of ten is an assumption
 */
export function runOutcome(input: MillingInput, records: readonly StripRecord[]): Outcome<RunOutcome> {
  const blanks = checkMillingInput(input) ?? layBlanks(input);
  if (isProblem(blanks)) return blanks;
  const strips = blanks.flatMap(({ board, length, strips: own }) =>
    own.map((work) => ({ ...records.findLast(({ strip }) => strip === work.id), board, length, work })),
  );
  const wrong = firstWithin(records, 'records', (record) => {
    const found = strips.find(({ work }) => work.id === record.strip);
    if (!found) return problem('strip', 'This strip is not part of the run.');
    // No strip comes out larger than it was.
    return firstBad([
      ...lengths(record, ['finishedWidth'], { above: 0, most: found.work.width }),
      ...lengths(record, ['cleanThickness'], { above: 0, most: found.board.thickness }),
    ]);
  });
  if (wrong) return wrong;

  const edges = strips.flatMap(({ work: { part, width }, finishedWidth }) =>
    finishedWidth === undefined || !part.panel ? [] : width - finishedWidth,
  );
  const faces = strips.flatMap(({ board, length, work: { width }, cleanThickness }) =>
    cleanThickness === undefined || board.surfaced
      ? []
      : Math.max(0, reachableThickness(board, width, length, 0) - cleanThickness) / 2,
  );
  const edge = ownAllowance(edges, 'rough width - finished width');
  const face = ownAllowance(faces, '(rough thickness - warp - clean thickness) / 2');

  const ofUnits = strips.flatMap((strip) => strip.work.units.map((unit) => ({ ...strip, unit })));
  const made = grouped(ofUnits, ({ work: { part }, unit }) => `${part.id}#${unit}`).map((own) => {
    const { work, unit } = own[0] as (typeof ofUnits)[number];
    const width = own.reduce(
      (sum, { lost, work: { finished }, finishedWidth = finished }) => sum + (lost === undefined ? finishedWidth : 0),
      0,
    );
    return { part: work.part, unit, missingWidth: work.part.width - width };
  });
  const lacks = ({ missingWidth }: (typeof made)[number]) => missingWidth > input.practice.widthToleranceMm.value;
  const started = blanks.reduce((sum, { board, length }) => sum + board.width * (length + input.shop.crosscutKerf), 0);

  return {
    strips: strips.map(({ board: _, length: __, work: { id, label, finished, part }, ...record }) => ({
      ...record,
      strip: id,
      label,
      planned: { width: finished, thickness: part.thickness },
    })),
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
const share = (units: readonly { readonly part: MillingPart }[], started: number): Worked => {
  const finished = units.reduce((sum, { part }) => sum + part.length * part.width, 0);
  return oneStep(
    'yield',
    phrase`${m2(finished / 1e6)} of finished faces / ${m2(started / 1e6)} crosscut from boards`,
    percent(started === 0 ? 0 : (100 * finished) / started),
    ['geometry'],
  );
};
