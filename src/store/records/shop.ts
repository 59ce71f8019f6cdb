import { tenthsOfMm } from '../../core/length/length-unit-sizes.ts';
import type { StoredRecord } from './record.ts';

export interface Units {
  readonly unit: 'in' | 'mm';
  /** Finest fraction wanted: 16 means sixteenths of an inch. */
  readonly nearest: number;
}

export interface Saw {
  readonly owned: boolean;
  readonly kerf: number;
}

export interface Machines {
  readonly jointer: { readonly owned: boolean; readonly width: number };
  readonly planer: { readonly owned: boolean; readonly width: number; readonly sled: boolean };
  readonly tableSaw: Saw;
  readonly guidedSaw: Saw;
  /** `width`: the widest board that it crosscuts. */
  readonly mitreSaw: Saw & { readonly width?: number };
  readonly router: { readonly owned: boolean };
  /** `wide`: what is wider than the jointer is flattened with them. */
  readonly handPlanes: { readonly owned: boolean; readonly wide?: boolean };
}

export type Machine = keyof Machines;

/** What a machine's own manual allows: the smallest piece, and the deepest pass or cut. */
export interface ManualLimit {
  readonly length?: number;
  readonly width?: number;
  readonly thickness?: number;
  readonly depth?: number;
}

export interface Clamps {
  readonly kind: string;
  readonly opening: number;
  readonly count: number;
}

export interface Air {
  readonly celsius: number;
  readonly humidity: number;
}

/** The air of the shop as thermometer and hygrometer read it once. */
export interface AirReading extends Air {
  readonly at: number;
}

/** What this maker wants of every check for square: what is left out is common practice. */
export interface SquareHabits {
  /** Slide allowed by use, mm for each metre of end. */
  readonly allowed?: { readonly [use: string]: number };
  /** Part of a clamp's pull that a case gives back. */
  readonly springBack?: number;
}

/** A tool that says what is square, straight or out of wind, with its own error as a test found it. */
export interface Reference {
  readonly tool: string;
  /** Degrees for a square, positive when its inside is over 90; millimetres for lengths. */
  readonly error: number;
  readonly at: number;
  readonly kind?: 'square' | 'straightedge' | 'sticks';
  /** The length over which an error in millimetres holds. */
  readonly length?: number;
}

/** A wood that the maker added, with the figures of a data sheet. Parts and boards hold its name for their species. */
export interface OwnWood {
  readonly name: string;
  /** Shrinkage from green to ovendry, percent. */
  readonly radial?: number;
  readonly tangential?: number;
  readonly volumetric?: number;
  /** At 12 % moisture. */
  readonly gravity?: number;
  readonly openPores?: boolean;
}

/** The one record about the shop itself. */
export interface Shop extends StoredRecord {
  readonly units: Units;
  /** Reading error of one measurement with the tape. */
  readonly tapePrecision: number;
  readonly machines: Machines;
  readonly manualLimits?: { readonly [machine in Machine]?: ManualLimit };
  readonly allowances: {
    /** Width that one strip loses to jointing both its edges. */
    readonly edge: number;
    /** Added once to a part's length, for snipe and the last trim. */
    readonly length: number;
    /** The least that must come off each face to clean it. */
    readonly face: number;
  };
  /** Rough width of a strip that goes into a panel. */
  readonly strips: { readonly min: number; readonly max: number };
  readonly clamps: readonly Clamps[];
  /** How long a kind of step takes this maker, learned from ticks. */
  readonly pace?: { readonly [step: string]: { readonly seconds: number; readonly count: number } };
  /** The air of the driest and of the dampest season where the last piece will live: the next one starts from it. */
  readonly climate?: { readonly dry?: Air; readonly damp?: Air };
  readonly woods?: readonly OwnWood[];
  readonly air?: readonly AirReading[];
  /** Where most pieces will live: id of a moisture band to dry to. */
  readonly driedFor?: string;
  readonly square?: SquareHabits;
  readonly theme?: 'light' | 'dark' | 'contrast';
  readonly hand?: 'left' | 'right';
  readonly references?: readonly Reference[];
}

export const shopId = 'shop';

/** What a mitre saw crosscuts until the maker has said. */
export const usualMitreWidth = 150;

/**
 * The shop as it stands before the maker has said anything: an 8 in jointer, a 13 in planer, a table saw, in sizes that
 * are round in the unit. Revision 0 says that it isn't stored yet.
 */
export function defaultShop(now: number, unit: Units['unit'] = 'in'): Shop {
  const size = (inches: number, mm: number) => (unit === 'in' ? (inches * tenthsOfMm.in) / 10 : mm);
  const kerf = size(1 / 8, 3.2);
  return {
    id: shopId,
    created: now,
    updated: now,
    revision: 0,
    units: { unit, nearest: 16 },
    tapePrecision: 0.5,
    machines: {
      jointer: { owned: true, width: size(8, 200) },
      planer: { owned: true, width: size(13, 330), sled: false },
      tableSaw: { owned: true, kerf },
      guidedSaw: { owned: false, kerf: 2.2 },
      mitreSaw: { owned: true, kerf, width: size(6, usualMitreWidth) },
      router: { owned: true },
      handPlanes: { owned: true },
    },
    allowances: { edge: size(1 / 8, 3), length: size(2, 50), face: size(1 / 16, 1.5) },
    strips: { min: size(2, 50), max: size(6, 150) },
    clamps: [{ kind: 'bar-light', opening: size(48, 1200), count: 6 }],
  };
}
