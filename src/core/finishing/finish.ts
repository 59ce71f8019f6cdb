import type { Phrase } from '../answer/phrase.ts';
import type { Range } from '../answer/range.ts';
import type { SourceId } from '../answer/source-id.ts';

/** A kind of finish, never a brand. Waits hold at 20 degrees Celsius and 50 percent humidity. */
export interface Finish {
  readonly id: string;
  readonly name: string;
  /** Spreading rate of a coat on sealed wood, m2 per litre. */
  readonly coverage: Range;
  /** How many times as much the first coat takes on bare wood. */
  readonly firstCoat: { readonly openPores: number; readonly closedPores: number };
  readonly coats: Range;
  /** Between coats: not before `least`, and after `most` the old coat must be rubbed dull again. Seconds. */
  readonly waitSeconds: Range;
  /** After the coat is on, wipe off what stands: seconds; left out where nothing is wiped. */
  readonly wipeOffSeconds?: Range;
  /** Grit to rub with between coats; left out where none is needed. */
  readonly betweenGrit?: number;
  /** Grit to which the bare wood is sanded. */
  readonly bareGrit: number;
  readonly useAfterSeconds: Range;
  readonly cureSeconds: Range;
  /** What is left keeps this long in a full, shut can; mixed shellac and opened cans. Seconds. */
  readonly keepsSeconds: Range;
  /** Rags can catch fire by themselves. */
  readonly dryingOil: boolean;
  /** Vapour that burns and harms. */
  readonly solvent: boolean;
  readonly waterBorne: boolean;
  readonly cautions: readonly Phrase[];
  readonly source: SourceId;
}
