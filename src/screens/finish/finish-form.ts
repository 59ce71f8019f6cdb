import type { FinishMethod } from '../../core/finishing/finish-amount.ts';
import type { Treatment } from '../../core/finishing/part-area.ts';

/** A size of can as it is typed. */
export interface ContainerText {
  readonly size: string;
  readonly price: string;
}

/** A shape added by hand, as it is typed. */
export interface ShapeText {
  readonly name: string;
  readonly area: string;
  readonly count: string;
  readonly treatment: Treatment;
}

/** Two parts that are mixed, as typed. */
export interface MixText {
  readonly on: boolean;
  readonly a: string;
  readonly b: string;
  readonly by: 'volume' | 'mass';
  readonly densityA: string;
  readonly densityB: string;
  /** Minutes. */
  readonly potLife: string;
  /** Minutes that one coat takes this maker. */
  readonly pace: string;
  /** What is left of one part. */
  readonly left: string;
  readonly leftPart: 'A' | 'B';
}

/** A finish as it is planned; kept through a killed tab, each entry as typed. */
export interface FinishForm {
  readonly kind: string;
  /** Not touched yet: what the kind usually gets. */
  readonly coats?: string;
  readonly insideCoats?: string;
  readonly rate: string;
  readonly method?: FinishMethod;
  readonly wood: 'bare' | 'sealed';
  readonly onShelf: string;
  readonly containers: readonly ContainerText[];
  readonly shapes: readonly ShapeText[];
  /** What the can says of times; empty: the table's figure. Hours between coats. */
  readonly wait: string;
  /** Minutes until it is wiped off. */
  readonly wipeOff: string;
  /** Days until use, and to full cure. */
  readonly use: string;
  readonly cure: string;
  /** Percent of the volume that stays, and the dry film of one coat: the rate by geometry where the can gives none. */
  readonly solids: string;
  readonly film: string;
  readonly mix: MixText;
  readonly celsius: string;
  readonly humidity: string;
  readonly firstGrit?: string;
  /** Grits that are not on the shelf. */
  readonly gritsMissing: readonly number[];
  readonly sections: string;
  readonly beforeAssembly: boolean;
  /** Ids of other pieces that get the same coats at the same time. */
  readonly others: readonly string[];
}

export const emptyContainer: ContainerText = { size: '', price: '' };

export const emptyForm: FinishForm = {
  kind: 'oil-varnish',
  rate: '',
  wood: 'bare',
  onShelf: '',
  containers: [emptyContainer],
  shapes: [],
  wait: '',
  wipeOff: '',
  use: '',
  cure: '',
  solids: '',
  film: '',
  mix: {
    on: false,
    a: '',
    b: '1',
    by: 'volume',
    densityA: '',
    densityB: '',
    potLife: '',
    pace: '',
    left: '',
    leftPart: 'B',
  },
  celsius: '',
  humidity: '',
  gritsMissing: [],
  sections: '',
  beforeAssembly: false,
  others: [],
};
