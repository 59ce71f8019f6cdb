import { reachableThickness } from '../milling/reachable-thickness.ts';
import type { Rack, Run, Unit } from './rack.ts';

export interface DraftStrip {
  /** Place of the unit in the rack's list. */
  readonly unit: number;
  readonly width: number;
}

/** A blank as the search moves it about: its place along the run comes last, once all is settled. Never changed in place. */
export interface DraftBlank {
  /** Place of the run in the rack's list; -1 for a blank that is cut already. */
  readonly runAt: number;
  readonly run: Run;
  readonly length: number;
  readonly strips: readonly DraftStrip[];
  /** Width still to be ripped: what is left beside the strips and their kerfs. */
  readonly free: number;
}

/** Where strips for a unit could come from, and what wood that costs in mm2. */
export interface Place {
  readonly cost: number;
  readonly boardAt: number;
  readonly runAt: number;
  /** An open blank, or -1 for a new one on the run. */
  readonly blankAt: number;
}

/** A plan in the making: blanks without positions, and what length of each run is free. */
export class Draft {
  readonly rack: Rack;
  blanks: DraftBlank[];
  /** Free length of each run, with the kerf that the last blank at the run's end doesn't need. */
  readonly room: Float64Array;
  /** Width that each unit lacks; 0 when it is covered. */
  readonly missing: Float64Array;
  /** How far each missing unit was from a place when it was last tried: a share from 0 to 1 of what it needs. */
  readonly distance: Float64Array;

  constructor(rack: Rack, from?: Draft) {
    this.rack = rack;
    const { crosscutKerf } = rack.shop;
    this.blanks = from ? from.blanks.slice() : rack.cut.map((cut) => cutBlank(rack, cut));
    this.room = from ? from.room.slice() : Float64Array.from(rack.runs, (run) => run.length + crosscutKerf);
    this.missing = from ? from.missing.slice() : Float64Array.from(rack.units, (unit) => unit.need);
    this.distance = from ? from.distance.slice() : new Float64Array(rack.units.length).fill(1);
  }

  copy(): Draft {
    return new Draft(this.rack, this);
  }

  /** Opens a blank; the caller has seen to it that the run has room. */
  open(runAt: number, length: number): number {
    const run = this.rack.runs[runAt] as Run;
    this.room[runAt] = (this.room[runAt] ?? 0) - length - this.rack.shop.crosscutKerf;
    return this.blanks.push({ runAt, run, length, strips: [], free: run.width }) - 1;
  }

  rip(blankAt: number, unit: number, width: number, strips: number): void {
    const blank = this.blanks[blankAt] as DraftBlank;
    const added = Array.from({ length: strips }, () => ({ unit, width }));
    this.blanks[blankAt] = {
      ...blank,
      strips: [...blank.strips, ...added],
      free: blank.free - strips * (width + this.rack.shop.ripKerf),
    };
  }

  /** Rips strips for a unit where they were found to come from; an open blank that is too short for it grows. */
  cut({ blankAt, runAt }: Place, unit: number, width: number, strips: number): void {
    const { blankLength } = this.rack.units[unit] as Unit;
    const at = blankAt < 0 ? this.open(runAt, blankLength) : blankAt;
    const blank = this.blanks[at] as DraftBlank;
    if (blank.length < blankLength) {
      this.room[runAt] = (this.room[runAt] ?? 0) - (blankLength - blank.length);
      this.blanks[at] = { ...blank, length: blankLength };
    }
    this.rip(at, unit, width, strips);
  }

  /** Whether a blank can grow to a length: the run has room, and its strips stay thick enough over the longer bow. */
  canLengthen(blank: DraftBlank, length: number): boolean {
    if (blank.runAt < 0 || (this.room[blank.runAt] ?? 0) < length - blank.length) return false;
    const { shop, units } = this.rack;
    return blank.strips.every(
      ({ unit, width }) =>
        reachableThickness(blank.run.board, width, length, shop.faceAllowance) >= (units[unit] as Unit).part.thickness,
    );
  }

  /** Takes units out of the plan; blanks that serve nothing else close, others shrink to what they still serve. */
  remove(gone: Uint8Array): void {
    const { units, shop } = this.rack;
    const kept: DraftBlank[] = [];
    for (const blank of this.blanks) {
      const strips = blank.strips.filter(({ unit }) => !gone[unit]);
      if (strips.length === blank.strips.length) {
        kept.push(blank);
        continue;
      }
      const freed = blank.strips.reduce((sum, { unit, width }) => sum + (gone[unit] ? width + shop.ripKerf : 0), 0);
      if (blank.runAt < 0) kept.push({ ...blank, strips, free: blank.free + freed });
      else {
        const room = this.room[blank.runAt] ?? 0;
        const length = strips.reduce((most, { unit }) => Math.max(most, (units[unit] as Unit).blankLength), 0);
        this.room[blank.runAt] = room + blank.length - length + (strips.length === 0 ? shop.crosscutKerf : 0);
        if (strips.length > 0) kept.push({ ...blank, strips, length, free: blank.free + freed });
      }
    }
    this.blanks = kept;
    for (const [at, unit] of units.entries()) if (gone[at]) this.missing[at] = unit.need;
  }
}

function cutBlank(rack: Rack, { blank, run }: Rack['cut'][number]): DraftBlank {
  const used = blank.strips.reduce((sum, strip) => sum + strip.width + rack.shop.ripKerf, 0);
  return { runAt: -1, run, length: blank.length, strips: [], free: run.width - used };
}
