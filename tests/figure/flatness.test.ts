import { describe, expect, it } from 'vitest';
import { figure } from '../../src/figure/flatness.ts';

const example = {
  thickness: 28,
  width: 250,
  length: 2400,
  cup: 2.5,
  bow: 6,
  faceAllowance: 1,
  rips: 2,
  blankLength: 1000,
};

describe('figure flatness', () => {
  it('answers the worked example', () => {
    // 28 - 2.5 / 4 - 6 x (1000 / 2400)^2 - 2 by hand, to the thousandth that is printed
    expect(figure(example)).toEqual({
      reachable: 24.333,
      lost: { cup: 0.625, bow: 1.042, twist: 0 },
      straightWidth: 250,
    });
  });

  it('takes twist and crook, and a whole flat board when nothing else is said', () => {
    expect(figure({ ...example, twist: 12, crook: 24 })).toMatchObject({
      lost: { twist: 1.25 },
      straightWidth: 245.833,
    });
    expect(figure({ thickness: 25, width: 100, length: 1000 })).toMatchObject({ reachable: 25 });
  });

  it('says 0 when nothing is left', () => {
    expect(figure({ ...example, thickness: 10, bow: 100, blankLength: 2400 })).toMatchObject({ reachable: 0 });
  });

  const wrong: [object, string][] = [
    [{ thickness: undefined }, 'thickness'],
    [{ thickness: '28' }, 'thickness'],
    [{ width: null }, 'width'],
    [{ length: -1 }, 'length'],
    [{ cup: Number.POSITIVE_INFINITY }, 'cup'],
    [{ bow: 5000 }, 'bow'],
    [{ crook: -3 }, 'crook'],
    [{ rips: 2.5 }, 'rips'],
    [{ blankLength: 3000 }, 'blankLength'],
    [{ faceAllowance: -1 }, 'faceAllowance'],
    [{ colour: 3 }, 'colour'],
  ];
  for (const [change, field] of wrong) {
    it(`names ${field} for ${JSON.stringify(change)}`, () => {
      expect(figure({ ...example, ...change })).toMatchObject({ kind: 'problem', field });
    });
  }
});
