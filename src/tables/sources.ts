import type { SourceId } from '../core/answer/source-id.ts';

/**
 * - `published`: named, and the figure was read there
 * - `from-memory`: a published source is named, but the figure was recalled, not read
 * - `common-practice`: a habit or rule of thumb of the trade with no single source, or a stated assumption
 * - `label`: typed in by the maker from the can, bottle or manual
 */
export type SourceKind = 'published' | 'from-memory' | 'common-practice' | 'label';

export interface Source {
  readonly kind: SourceKind;
  readonly title: string;
}

export const sources: Readonly<Record<SourceId, Source>> = {
  'wood-handbook': {
    kind: 'published',
    title: 'USDA Forest Service. Wood handbook, FPL-GTR-190 (2010).',
  },
  'wood-handbook-memory': {
    kind: 'from-memory',
    title: 'Wood handbook, FPL-GTR-190, recalled and not checked against the text.',
  },
  'simpson-1998': {
    kind: 'published',
    title: 'USDA Forest Service. Equilibrium moisture content of wood in outdoor locations, FPL-RN-0268 (1998).',
  },
  nhla: {
    kind: 'published',
    title: 'National Hardwood Lumber Association (NHLA). Rules for measurement and inspection (2011).',
  },
  'nhla-memory': {
    kind: 'from-memory',
    title: 'NHLA rules, recalled and not checked against the text.',
  },
  ahec: {
    kind: 'published',
    title: 'AHEC. Guide to grading sawn lumber, measurement.',
  },
  'nist-sp811': {
    kind: 'published',
    title: 'NIST Special Publication 811, Guide for the use of the SI, appendix B.',
  },
  'surfaced-thickness': {
    kind: 'published',
    title: 'NHLA rules, surfaced two sides, as tabulated in public engineering tables.',
  },
  'osha-3157': {
    kind: 'published',
    title: 'OSHA 3157, A guide for protecting workers from woodworking hazards (1999).',
  },
  'osha-memory': {
    kind: 'from-memory',
    title: 'OSHA 3157 and 29 CFR 1910.213 on woodworking machines, recalled and not checked against the text.',
  },
  geometry: { kind: 'published', title: 'Plane geometry (Euclid, Elements).' },
  'common-practice': { kind: 'common-practice', title: 'Common practice of the trade; no single source.' },
  assumption: {
    kind: 'common-practice',
    title: 'An assumption of this app; change it to suit.',
  },
  label: { kind: 'label', title: 'Typed in by you from the label, sheet or manual.' },
};
