import { describe, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { jointContact } from '../../../src/screens/movement/joint-contact.ts';
import { jointKind, jointKinds } from '../../../src/screens/movement/joint-kinds.ts';
import { judge } from '../../../src/screens/movement/read-joint.ts';
import { woodOfPart } from '../../../src/screens/movement/wood-of-part.ts';
import type { Part } from '../../../src/store/records/piece.ts';
import { outside } from '../../setup/outside.ts';
import { board, cleat, joint, lid, part, seasons } from './samples.ts';

const parts = [lid, cleat, board, part('other', 900, 90, 22, { panel: false })];
function verdict(kind: string, ...of: Part[]) {
  const judged = judge(joint(kind, ...of), parts, seasons);
  if (isProblem(judged)) throw new Error(judged.message.text);
  return judged.verdict.value;
}

const meetsOf = (kind: string) => jointKind(kind)?.meets ?? expect.fail(`no ${kind}`);

describe('where two parts touch', () => {
  test('a cleat lies across the lid: its own length along the seam, its width across', () => {
    expect(jointContact({}, [lid, cleat], meetsOf('cleat'))).toEqual({ length: 430, breadth: 40 });
  });

  test('an apron under a top touches with its thickness; a seam and a rail have no breadth', () => {
    const apron = part('apron', 400, 90, 20);
    expect(jointContact({}, [lid, apron], meetsOf('top'))).toEqual({ length: 400, breadth: 20 });
    expect(jointContact({}, [board, board], meetsOf('seam'))).toEqual({ length: 900 });
    expect(jointContact({}, [apron, board], meetsOf('rail'))).toEqual({ length: 90 });
  });
});

describe('verdicts on records', () => {
  test('a cleat across a cherry lid floats by what the handbook’s coefficient gives', () => {
    const found = verdict('cleat', lid, cleat);
    expect(found).toMatchObject({ advice: 'float', moves: true });
    // 0.00248 tangential. Exact but for floating point.
    outside({
      what: 'cleat across a black cherry lid of 430 mm, 8 to 11 %: movement apart, mm',
      source: 'wood-handbook',
      at: 'Table 13-5',
      expected: 430 * 0.00248 * 3,
      got: found.worst,
      tolerance: 5e-10,
    });
  });

  test.each([
    ['seam', board, parts[3] as Part, 'glue'],
    ['mitre', board, parts[3] as Part, 'glue'],
    ['corner', lid, lid, 'mechanical'],
    ['rail', board, parts[3] as Part, 'mechanical'],
    ['breadboard', lid, cleat, 'mechanical'],
    ['groove', lid, cleat, 'float'],
  ])('%s', (kind, first, second, advice) => {
    expect(verdict(kind, first, second).advice).toBe(advice);
  });

  test('a mitre where one part’s grain crosses is aligned, not glued', () => {
    const crossed = { ...joint('mitre', board, lid), meets: [mitre('across'), mitre('along')] as const };
    const judged = judge(crossed, parts, seasons);
    expect(isProblem(judged) ? judged : judged.verdict.value.advice).toBe('align');
  });

  test('what the maker measured of the contact wins over the parts’ sizes', () => {
    const judged = judge({ ...joint('cleat', lid, cleat), length: 200, breadth: 30 }, parts, seasons);
    expect(isProblem(judged) ? judged : judged.contact).toEqual({ length: 200, breadth: 30 });
  });

  test('a part that is gone, and a wood without figures, are said', () => {
    const gone = judge(joint('cleat', lid, part('gone', 1, 1, 1)), parts, seasons);
    expect(isProblem(gone) && gone.field).toBe('parts');
    const strange = part('strange', 600, 300, 20, { species: 'own-wood' });
    const unknown = judge(joint('cleat', strange, cleat), [strange, cleat], seasons);
    expect(isProblem(unknown) && unknown.message.text).toContain('no tangential figure');
  });

  test('a kind of joint that only a newer version knows is said, unless the record says how the parts meet', () => {
    const newer = judge(joint('scarf', lid, cleat), parts, seasons);
    expect(isProblem(newer) && newer.field).toBe('kind');
    const said = judge({ ...joint('scarf', lid, cleat), meets: meetsOf('cleat') }, parts, seasons);
    expect(isProblem(said) ? said : said.verdict.value.advice).toBe('float');
  });

  test('every kind has a name and meets as its surfaces allow', () => {
    for (const { id, meets } of jointKinds) {
      expect(verdict(id, lid, lid).reason.text, id).not.toBe('');
      expect(jointKind(id)?.meets).toBe(meets);
    }
  });
});

test('a part’s cut goes along with its figures', () => {
  expect(woodOfPart(lid).cut).toBe('flat');
  expect(woodOfPart({ ...lid, cut: 'quarter' })).toMatchObject({
    cut: 'quarter',
    figures: { coefficients: { radial: 0.00126 } },
  });
});

const mitre = (grain: 'along' | 'across') => ({ surface: 'mitre', grain }) as const;
