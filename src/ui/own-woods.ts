import type { OwnWood } from '../store/records/shop.ts';
import { signal } from './signal.ts';

/** The woods that this maker added; set from the shop at start-up. */
export const ownWoods = signal<readonly OwnWood[]>([]);
