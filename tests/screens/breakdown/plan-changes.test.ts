import { describe, expect, test } from 'vitest';
import { namesOf } from '../../../src/screens/breakdown/names.ts';
import { planChanges } from '../../../src/screens/breakdown/plan-changes.ts';
import { problemFromRecords } from '../../../src/screens/breakdown/problem-from-records.ts';
import { whatIfs } from '../../../src/screens/breakdown/what-ifs.ts';
import type { Board } from '../../../src/store/records/board.ts';
import type { Piece } from '../../../src/store/records/piece.ts';
import { board, part, piece, planned, shop, solve } from './samples.ts';

const rack = [board('a'), board('b'), board('c')];
const chest = piece([part('lid'), part('cleat', { panel: false, width: 45, length: 420 })]);
const asked = problemFromRecords(shop, rack, chest);
const plan = planned(asked, solve(asked));
const changes = (now: Piece, boards: readonly Board[], cutDone: string[] = []) =>
  planChanges({ ...plan, cutDone }, now, boards, namesOf(now, boards));

describe('what has changed since a plan was made', () => {
  test('nothing', () => expect(changes(chest, rack)).toEqual([]));

  test('a part that changed, one that is new, one that is deleted', () => {
    expect(changes(piece([part('lid', { width: 380 }), part('foot')]), rack)).toEqual([
      'lid has changed.',
      'foot is new.',
      '1 part deleted.',
    ]);
  });

  test('a name alone changes nothing', () => {
    expect(changes(piece([part('lid', { name: 'Top' }), ...chest.parts.slice(1)]), rack)).toEqual([]);
  });

  test('a board that was taken for something else, unless it is cut for this plan', () => {
    const used = plan.blanks[0]?.board ?? '';
    const taken = rack.map((one) => (one.id === used ? board(used, { state: 'cut' }) : one));
    expect(changes(chest, taken)).toEqual([`Board ${used.toUpperCase()} is no longer in the rack.`]);
    expect(changes(chest, taken, [used])).toEqual([]);
  });
});

describe('a board that is put right after the plan was made', () => {
  const used = plan.blanks[0]?.board ?? '';
  const changed = (change: Partial<Board>) => rack.map((one) => (one.id === used ? { ...one, ...change } : one));
  const says = [`Board ${used.toUpperCase()} has changed.`];

  test('its size, its warp, a knot marked on it', () => {
    expect(changes(chest, changed({ width: 180 }))).toEqual(says);
    expect(changes(chest, changed({ warp: { cup: 3, bow: 0 } }))).toEqual(says);
    const knot = { start: 400, length: 60, offset: 0, width: 200, kind: 'knot' };
    expect(changes(chest, changed({ defects: [knot] }))).toEqual(says);
  });

  test('no longer, once it is cut; nor what no cut hangs on', () => {
    expect(changes(chest, changed({ width: 180 }), [used])).toEqual([]);
    expect(changes(chest, changed({ note: 'pitch pocket', chalk: 'X', readings: [] }))).toEqual([]);
  });
});

describe('what if', () => {
  test('one figure is another, and the question itself stays as it was', () => {
    const before = structuredClone(asked);
    const all = whatIfs(asked, namesOf(chest, rack));
    const said = (label: string) => all.find((one) => one.label === label);
    expect(all.map(({ label, now }) => [label, now]).slice(0, 3)).toEqual([
      ['Width of the jointer', 203],
      ['Thickness of lid', 19],
      ['Width of lid', 400],
    ]);
    expect(said('Width of the jointer')?.asked(305).shop.jointerWidth).toBe(305);
    expect(
      said('Width of lid')
        ?.asked(380)
        .parts.map(({ width }) => width),
    ).toEqual([380, 45]);
    expect(
      said('Thickness of lid')
        ?.asked(16)
        .parts.map(({ thickness }) => thickness),
    ).toEqual([16, 19]);
    expect(asked).toEqual(before);
  });
});
