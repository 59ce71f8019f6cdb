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
    title:
      'Forest Products Laboratory. 2010. Wood handbook: wood as an engineering material. General Technical Report FPL-GTR-190. USDA Forest Service.',
  },
  'wood-handbook-memory': {
    kind: 'from-memory',
    title: 'Wood handbook (FPL-GTR-190), figure recalled and not checked against the text.',
  },
  'simpson-1998': {
    kind: 'published',
    title:
      'Simpson, W.T. 1998. Equilibrium moisture content of wood in outdoor locations in the United States and worldwide. Research Note FPL-RN-0268. USDA Forest Service.',
  },
  nhla: {
    kind: 'published',
    title:
      'National Hardwood Lumber Association. Rules for the measurement and inspection of hardwood and cypress (2011).',
  },
  'nhla-memory': {
    kind: 'from-memory',
    title: 'Rules of the National Hardwood Lumber Association, recalled and not checked against the text.',
  },
  ahec: {
    kind: 'published',
    title: 'American Hardwood Export Council. Guide to grading sawn lumber, section on measurement.',
  },
  'nist-sp811': {
    kind: 'published',
    title: 'NIST Special Publication 811, Guide for the use of the SI, appendix B.',
  },
  'surfaced-thickness': {
    kind: 'published',
    title:
      'Hardwood lumber standard thicknesses, surfaced two sides: NHLA surfaced-lumber rule as tabulated in public engineering tables.',
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
    title: 'An assumption of this app, stated where it is used; change it to suit.',
  },
  label: { kind: 'label', title: 'Typed in by you from the label, sheet or manual.' },
};
