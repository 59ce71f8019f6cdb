import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem, within } from '../answer/problem.ts';
import { mm, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { checkMillingInput } from './check-milling-input.ts';
import { layBlanks } from './lay-blanks.ts';
import type { MillingInput } from './milling-input.ts';
import { ownAllowance } from './own-allowance.ts';
import { warpCost } from './reachable-thickness.ts';
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

/** What a strip was to become and what it came to. */
export interface CameTo {
  readonly strip: string;
  readonly label: string;
  readonly planned: { readonly width: number; readonly thickness: number };
  readonly finishedWidth: number | null;
  readonly cleanThickness: number | null;
  readonly lost: string | null;
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
 * - `input`: what the run was made from; `records`: what was noted of its strips, mm
 *
 * Result: widths and thicknesses in mm, yields in percent of the area crosscut from the boards.
 * Valid for a run of this input; strips without a record count as planned.
 * Errors: as `millingSequence`; a record of no strip of the run, or of a strip larger than its board gave.
 *
 * Example: rough strips of 100, 100, 100, 100, 100 that came to 96 wide: an edge allowance of 4 from now on.
 *
 * Source: the nearest-rank percentile; nine of ten is an assumption.
 */
export function runOutcome(input: MillingInput, records: readonly StripRecord[]): Outcome<RunOutcome> {
  const wrong = checkMillingInput(input);
  if (isProblem(wrong)) return wrong;
  const blanks = layBlanks(input);
  const strips = blanks.flatMap((blank) => blank.strips.map((strip) => ({ blank, strip })));
  const noted = new Map<string, StripRecord>();
  for (const [index, record] of records.entries()) {
    const found = strips.find(({ strip }) => strip.id === record.strip);
    const refused = found
      ? recordProblem(record, found.strip.width, found.blank.board.thickness)
      : problem('strip', 'This strip is not part of the run.');
    if (isProblem(refused)) return within(refused, `records.${index}`);
    noted.set(record.strip, record);
  }

  const edges: number[] = [];
  const faces: number[] = [];
  for (const { blank, strip } of strips) {
    const record = noted.get(strip.id);
    if (record?.finishedWidth !== undefined && strip.part.panel) edges.push(strip.width - record.finishedWidth);
    if (record?.cleanThickness !== undefined && !blank.board.surfaced) {
      const cost = warpCost(blank.board, strip.width, blank.length);
      const off = blank.board.thickness - record.cleanThickness - cost.cup - cost.bow - cost.twist;
      faces.push(Math.max(0, off) / 2);
    }
  }
  const edge = ownAllowance(edges, 'rough width - finished width');
  const face = ownAllowance(faces, '(rough thickness - warp - clean thickness) / 2');

  const toMake = unitsToMake(
    strips.map(({ strip }) => strip),
    noted,
    input,
  );
  const missing = new Set(toMake.map(({ part, unit }) => `${part}#${unit}`));
  const started = blanks.reduce((sum, { board, length }) => sum + board.width * (length + input.shop.crosscutKerf), 0);
  const units = new Map(
    strips.flatMap(({ strip: { part, units: served } }) => served.map((unit) => [`${part.id}#${unit}`, part] as const)),
  );
  const area = (counts: (unit: string) => boolean) =>
    [...units].reduce((sum, [unit, part]) => sum + (counts(unit) ? part.length * part.width : 0), 0);

  return {
    strips: strips.map(({ strip }) => ({
      strip: strip.id,
      label: strip.label,
      planned: { width: strip.finished, thickness: strip.part.thickness },
      finishedWidth: noted.get(strip.id)?.finishedWidth ?? null,
      cleanThickness: noted.get(strip.id)?.cleanThickness ?? null,
      lost: noted.get(strip.id)?.lost ?? null,
    })),
    yield: {
      planned: share(
        area(() => true),
        started,
      ),
      real: share(
        area((unit) => !missing.has(unit)),
        started,
      ),
    },
    toMake,
    allowances: { ...(edge ? { edge } : {}), ...(face ? { face } : {}) },
  };
}

function recordProblem(record: StripRecord, width: number, thickness: number): Outcome<null> {
  const bounds = { finishedWidth: width, cleanThickness: thickness } as const;
  for (const field of ['finishedWidth', 'cleanThickness'] as const) {
    const value = record[field];
    if (value === undefined || (value > 0 && value <= bounds[field])) continue;
    return problem(field, 'This is above zero and at most the rough {most}. Measure again.', {
      most: mm(bounds[field]),
    });
  }
  return null;
}

function unitsToMake(
  strips: readonly { id: string; part: MillingInput['parts'][number]; units: readonly number[]; finished: number }[],
  noted: ReadonlyMap<string, StripRecord>,
  { practice }: MillingInput,
): RunOutcome['toMake'] {
  const came = new Map<string, { part: (typeof strips)[number]['part']; unit: number; width: number }>();
  for (const { id, part, units, finished } of strips) {
    const record = noted.get(id);
    const width = record?.lost === undefined ? (record?.finishedWidth ?? finished) : 0;
    for (const unit of units) {
      const before = came.get(`${part.id}#${unit}`)?.width ?? 0;
      came.set(`${part.id}#${unit}`, { part, unit, width: before + width });
    }
  }
  return [...came.values()].flatMap(({ part, unit, width }) => {
    const missingWidth = part.width - width;
    if (missingWidth <= practice.widthToleranceMm.value) return [];
    return [{ part: part.id, unit, label: unitName(part, [unit]), missingWidth }];
  });
}

const share = (finished: number, started: number): Worked => {
  const value = started === 0 ? 0 : (100 * finished) / started;
  return {
    value,
    working: {
      steps: [
        {
          finds: 'yield',
          by: phrase('{finished} of finished faces / {started} crosscut from boards', {
            finished: { value: finished / 1e6, unit: 'm2' },
            started: { value: started / 1e6, unit: 'm2' },
          }),
          gives: percent(value),
        },
      ],
      sources: ['geometry'],
    },
  };
};
