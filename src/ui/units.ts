import type { LengthUnits } from '../core/length/length-units.ts';
import { signal } from './signal.ts';

/** The units in which this maker reads and types; set from the shop at start-up. */
export const units = signal<LengthUnits>({ unit: 'mm', nearest: 16 });
