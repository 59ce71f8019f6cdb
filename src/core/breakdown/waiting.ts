import type { Rack, Unit } from './rack.ts';

/** The units that still wait for a place while a draft is rebuilt, counted by part. */
export class Waiting {
  private readonly rack: Rack;
  private readonly parts: { readonly unit: Unit; count: number }[];

  constructor(rack: Rack, pending: readonly number[]) {
    this.rack = rack;
    this.parts = [];
    for (const at of pending) {
      const unit = rack.units[at] as Unit;
      const known = this.parts.find((part) => part.unit.partAt === unit.partAt);
      if (known) known.count++;
      else this.parts.push({ unit, count: 1 });
    }
  }

  placed(unit: Unit): void {
    const part = this.parts.find((candidate) => candidate.unit.partAt === unit.partAt);
    if (part) part.count--;
  }

  alike(unit: Unit): number {
    return this.parts.find((part) => part.unit.partAt === unit.partAt)?.count ?? 0;
  }

  /** One waiting solid of each part that could come out of a blank so long. */
  solids(blankLength: number): Unit[] {
    return this.parts
      .filter(({ unit, count }) => count > 0 && !unit.part.panel && unit.blankLength <= blankLength)
      .map(({ unit }) => unit);
  }

  /**
   * The most that width left over beside strips can be worth to one of the parts that wait, in mm2 of wood.
   *
   * @param width left over, mm
   * @param blankLength of the blank that it is left over from, mm
   */
  worth(species: string, width: number, blankLength: number): number {
    const { minStrip, ripKerf, crosscutKerf } = this.rack.shop;
    let most = 0;
    for (const { unit, count } of this.parts) {
      if (count === 0 || unit.blankLength > blankLength || unit.part.species !== species) continue;
      const fits = Math.min(count, Math.floor((width + ripKerf) / (unit.need + ripKerf)));
      const used = unit.part.panel ? (width < minStrip ? 0 : Math.min(width, unit.need * count)) : fits * unit.need;
      most = Math.max(most, used * (unit.blankLength + crosscutKerf));
    }
    return most;
  }
}
