import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LimitedMachine } from '../../../src/core/milling/machine-limits.ts';
import type { MillingInput, MillingShop } from '../../../src/core/milling/milling-input.ts';
import { millingSequence } from '../../../src/core/milling/milling-sequence.ts';
import { type MillingStep, stages } from '../../../src/core/milling/milling-step.ts';
import { ownLimits } from '../../../src/core/milling/own-limits.ts';
import { machineLimits } from '../../../src/tables/machine-limits.ts';
import { sources } from '../../../src/tables/sources.ts';
import { blank, board, fullShop, millingInput, part, scenarios, stepsOf } from './shops-and-stacks.ts';

const shops: fc.Arbitrary<Partial<MillingShop>> = fc.record({
  jointerWidth: fc.constantFrom(null, 152, 203, 305),
  planerWidth: fc.constantFrom(null, 305, 381),
  planerSled: fc.boolean(),
  tableSaw: fc.boolean(),
  guidedSaw: fc.boolean(),
  mitreWidth: fc.constantFrom(null, undefined, 150, 305),
  router: fc.boolean(),
  handPlanes: fc.boolean(),
});

const warp = fc.record({
  thickness: fc.integer({ min: 12, max: 90 }),
  width: fc.integer({ min: 60, max: 380 }),
  cup: fc.integer({ min: 0, max: 6 }),
  bow: fc.integer({ min: 0, max: 25 }),
  twist: fc.integer({ min: 0, max: 12 }),
  crook: fc.integer({ min: 0, max: 30 }),
});

const cut = fc.record({
  length: fc.integer({ min: 60, max: 1100 }),
  strip: fc.integer({ min: 24, max: 160 }),
  thickness: fc.integer({ min: 6, max: 70 }),
  panel: fc.boolean(),
});

/** Any shop and any stack: boards of 2400 with blanks one after the other, each ripped into equal strips of one part. */
const inputs: fc.Arbitrary<MillingInput> = fc
  .tuple(shops, fc.array(fc.tuple(warp, fc.array(cut, { minLength: 1, maxLength: 4 })), { minLength: 1, maxLength: 4 }))
  .map(([shop, stack]) => {
    const boards = stack.map(([given], index) => board(`B${index}`, given));
    const parts: MillingInput['parts'][number][] = [];
    const blanks = stack.flatMap(([given, cuts], index) => {
      let start = 0;
      return cuts.flatMap(({ length, strip, thickness, panel }, place) => {
        const rough = Math.min(strip, given.width);
        const fit = Math.floor((given.width + 3.2) / (rough + 3.2));
        const blankLength = length + 50;
        const id = `p${index}.${place}`;
        if (start + blankLength > 2400) return [];
        const width = (panel ? fit : 1) * (rough - 3.2);
        parts.push(part(id, length, width, thickness, { panel, quantity: panel ? 1 : fit }));
        const strips = Array.from({ length: fit }, (_, at): [number, string, number] => [
          rough,
          id,
          panel ? 1 : at + 1,
        ]);
        const made = blank(`B${index}`, start, blankLength, ...strips);
        start += blankLength + 3.2;
        return [made];
      });
    });
    return millingInput({ boards, parts, blanks }, shop);
  });

const limitOf: Partial<Record<MillingStep['machine'], LimitedMachine>> = {
  jointer: 'jointer',
  planer: 'planer',
  'table saw': 'tableSaw',
  'guided saw': 'guidedSaw',
  router: 'router',
};

/** What a step gives a machine that is below the machine's least size, in words; carried pieces lie on a larger carrier. */
/** Sizes are sums: a millionth of a millimetre below a limit is on it. */
const noise = 1e-6;

function belowLimit(step: MillingStep, { shop, limits }: MillingInput): string[] {
  if (step.machine === 'mitre saw')
    return step.pieces.flatMap(({ id, size }) =>
      size.width > (shop.mitreWidth ?? 0) ||
      size.length < limits.sledLeast.mm ||
      size.thickness > limits.guidedSaw.depthPerPass.mm
        ? `${step.id} ${id}: too wide, too thick or too short to hold`
        : [],
    );
  const machine = limitOf[step.machine];
  if (!machine) return [];
  const least = limits[machine];
  const ends = step.stage === 'crosscut' || step.stage === 'fold' || step.stage === 'crosscut rough';
  return step.pieces.flatMap(({ id, size, target }) => {
    const onSled = ends && machine === 'tableSaw';
    const leastLength =
      step.carrier && machine === 'planer'
        ? limits.carrierLength.mm
        : onSled
          ? limits.sledLeast.mm
          : least.leastLength.mm;
    const ripped =
      step.target?.dimension === 'width' && machine === 'tableSaw' ? (target ?? step.target.value) : undefined;
    const aim = step.target?.dimension === 'thickness' ? (step.target.value ?? size.thickness) : size.thickness;
    const wrong: string[] = [];
    if (size.length < leastLength - noise) wrong.push(`${step.id} ${id}: length ${size.length}`);
    if (!(step.carrier && machine === 'planer') && !onSled) {
      if ((ripped ?? size.width) < least.leastWidth.mm - noise)
        wrong.push(`${step.id} ${id}: width ${ripped ?? size.width}`);
      if (aim < least.leastThickness.mm - noise) wrong.push(`${step.id} ${id}: thickness ${aim}`);
    }
    if (machine === 'planer' && size.width > (shop.planerWidth ?? 0) + noise) wrong.push(`${step.id} ${id}: too wide`);
    if (machine === 'jointer' && step.stage.match(/face|first/) && size.width > (shop.jointerWidth ?? 0))
      wrong.push(`${step.id} ${id}: too wide`);
    if (machine.endsWith('Saw') && size.thickness > least.depthPerPass.mm) wrong.push(`${step.id} ${id}: too deep`);
    return wrong;
  });
}

const owned: Record<MillingStep['machine'], (shop: MillingShop) => boolean> = {
  bench: () => true,
  rack: () => true,
  clamps: () => true,
  'hand saw': () => true,
  'hand plane': (shop) => shop.handPlanes,
  jointer: (shop) => shop.jointerWidth !== null,
  planer: (shop) => shop.planerWidth !== null,
  'table saw': (shop) => shop.tableSaw,
  'guided saw': (shop) => shop.guidedSaw,
  'mitre saw': (shop) => Boolean(shop.mitreWidth),
  router: (shop) => shop.router,
};

describe('any shop, any stack', () => {
  it('never puts a piece on a machine below its limit, nor on one that is not there', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        for (const step of stepsOf(input)) {
          expect(belowLimit(step, input)).toEqual([]);
          expect(owned[step.machine](input.shop), step.id).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('brings every unit to its thickness and length, or reports it', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const steps = stepsOf(input);
        const reported = steps.filter(({ stage }) => stage === 'decide').map(({ pieces }) => pieces[0]?.id ?? '');
        const strips = input.blanks.flatMap((one) => one.strips.map((strip) => ({ ...strip, from: one.board })));
        for (const { part: id, unit, from } of strips) {
          const wanted = input.parts.find((one) => one.id === id);
          if (!wanted) throw new Error('no such part');
          const key = `${id}#${unit}`;
          const cutTo = steps.find(
            ({ stage, pieces }) => stage === 'crosscut' && pieces.some((piece) => piece.id === key),
          );
          if (!cutTo) {
            const told = reported.some((one) => one === key || one.startsWith(`${from}@`));
            expect(told, `${key} neither finished nor reported`).toBe(true);
            continue;
          }
          expect(cutTo.target?.value).toBe(wanted.length);
          const thickness = lastThickness(steps, key);
          expect(Math.abs((thickness ?? 0) - wanted.thickness), key).toBeLessThanOrEqual(0.5 + 1e-9);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('works in the order of the trade, with ids that tell every step and the same steps again', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const steps = stepsOf(input);
        const order = steps.map(({ stage }) => stages.indexOf(stage));
        expect(order).toEqual([...order].sort((one, other) => one - other));
        expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
        for (const { pieces } of steps) expect(new Set(pieces.map(({ id }) => id)).size).toBe(pieces.length);
        expect(stepsOf(structuredClone(input))).toEqual(steps);
        expect(JSON.parse(JSON.stringify(steps))).toEqual(steps);
      }),
      { numRuns: 150 },
    );
  });

  it('only makes wood smaller, step after step', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const before = new Map<string, { thickness: number; width: number; length: number }>();
        for (const { stage, pieces, id: step } of stepsOf(input)) {
          if (stage === 'decide') continue;
          for (const { id, size } of pieces) {
            const was = before.get(id);
            for (const side of ['thickness', 'width', 'length'] as const) {
              expect(size[side]).toBeGreaterThan(0);
              if (was && stage !== 'crosscut rough' && stage !== 'rip rough') {
                expect(size[side], `${step} ${id} ${side}`).toBeLessThanOrEqual(was[side] + 0.01);
              }
            }
            before.set(id, size);
          }
        }
      }),
      { numRuns: 150 },
    );
  });
});

/** The last thickness that anything which becomes this piece was planed to, or came with; followed back along `from`. */
function lastThickness(steps: readonly MillingStep[], key: string): number | undefined {
  const made = new Set([key]);
  let thickness: number | undefined;
  for (const { pieces, target } of [...steps].reverse()) {
    for (const piece of pieces.filter(({ id }) => made.has(id))) {
      for (const id of piece.from ?? []) made.add(id);
      if (thickness === undefined && target?.dimension === 'thickness') thickness = piece.target ?? target.value;
    }
  }
  return thickness;
}

describe('cautions', () => {
  const all = Object.values(scenarios).flatMap(stepsOf);

  it('stand at every machine, with a source, and the manual first', () => {
    for (const { machine, cautions } of all) {
      if (['bench', 'rack', 'clamps'].includes(machine)) continue;
      expect(cautions.length).toBeGreaterThan(0);
      for (const { source } of cautions) expect(sources[source]).toBeDefined();
      if (machine.startsWith('hand')) continue;
      expect(cautions.some(({ say }) => say.text.includes('manual'))).toBe(true);
    }
  });

  // 29 CFR 1910.213 and OSHA 3157 (from memory): guards, a spreader or riving knife at the saw, push blocks under 3 in.
  it('name guard and riving knife at the saw, the guard at the jointer, and never take one off', () => {
    const text = (machine: string) =>
      all
        .filter((step) => step.machine === machine)
        .map(({ cautions }) => cautions.map(({ say }) => say.text).join(' '));
    for (const said of text('table saw')) expect(said).toMatch(/Guard on; riving knife/);
    for (const said of text('jointer')) expect(said).toMatch(/Guard over the cutterhead/);
    for (const { todo, why, cautions } of all) {
      for (const said of [todo, why, ...cautions.map(({ say }) => say)]) {
        expect(said.text).not.toMatch(/(remove|take off|without|lift) (the |its )?(guard|riving|spreader)/i);
        expect(said.text).not.toContain('!');
      }
    }
  });

  it('ask for push blocks for narrow strips only', () => {
    const narrow = stepsOf(scenarios['two narrow rails side by side']).find(({ stage }) => stage === 'sawn edge');
    const wide = stepsOf(scenarios['a wide and long panel, a full shop']).find(({ stage }) => stage === 'face');
    expect(narrow?.cautions[0]?.say.text).toContain('push blocks');
    expect(wide?.cautions.some(({ say }) => say.text.includes('push blocks'))).toBe(false);
  });
});

describe('limits of the maker’s own machines', () => {
  const cleats = scenarios['short cleats'];

  it('win over the defaults: a manual that allows 150 mm lets cleats go one by one', () => {
    const own = { jointer: { length: 150 }, planer: { length: 150 } };
    const limits = ownLimits(machineLimits, own);
    expect(limits.jointer.leastLength).toEqual({ mm: 150, source: 'label' });
    expect(limits.jointer.leastWidth).toEqual(machineLimits.jointer.leastWidth);
    const rough = stepsOf({ ...cleats, limits }).find(({ stage }) => stage === 'crosscut rough');
    expect(rough?.pieces.length).toBe(3);
  });

  it('are refused when they are nonsense', () => {
    for (const length of [0, -5, Number.NaN, 1e6]) {
      const limits = ownLimits(machineLimits, { jointer: { length } });
      expect(millingSequence({ ...cleats, limits })).toMatchObject({ field: 'limits.jointer.leastLength' });
    }
  });
});

describe('safer ways', () => {
  const cleat = (start: number, length: number) =>
    millingInput({
      boards: [board('B1', { width: 60, length, cup: 0, bow: 0 })],
      parts: [part('cleat', 120, 40, 22)],
      blanks: [blank('B1', start, 170, [44, 'cleat'])],
    });

  it('a short part alone keeps waste of its board until the last cut', () => {
    const steps = stepsOf(cleat(0, 900));
    expect(steps.find(({ stage }) => stage === 'crosscut rough')?.pieces[0]?.target).toBeCloseTo(355.6, 9);
    expect(steps.find(({ stage }) => stage === 'mark out')?.todo.text).toContain('Left long on purpose: B1 · blank 1');
  });

  it('at the far end of the board it keeps the waste before it', () => {
    expect(stepsOf(cleat(730, 900)).find(({ stage }) => stage === 'crosscut rough')?.pieces[0]?.target).toBeCloseTo(
      355.6,
      9,
    );
  });

  // What is left long is just as long as the limit: a sum's last binary digit must not put it below.
  it('wherever it lies on the board, what is left long goes over the machines', () => {
    for (const start of [0, 157, 700, 953.2, 1500.1]) {
      const steps = stepsOf(cleat(start, 2400));
      const machineAt = (at: string) => steps.find(({ stage }) => stage === at)?.machine;
      expect(steps.find(({ stage }) => stage === 'crosscut rough')?.pieces[0]?.target).toBeCloseTo(355.6, 9);
      expect([machineAt('face'), machineAt('thickness')]).toEqual(['jointer', 'planer']);
    }
  });

  it('from a board as short as itself it goes by carrier, rail or hand plane', () => {
    const machines = stepsOf(cleat(0, 170)).map(
      ({ stage, machine, carrier }) => `${stage} ${machine}${carrier ? '+' : ''}`,
    );
    expect(machines).toContain('face planer+');
    expect(machines).toContain('edge hand plane');
    expect(machines).toContain('thickness planer+');
  });

  it('with no safe way at all it is reported', () => {
    const bare = { jointerWidth: 203, planerWidth: null, router: false, handPlanes: false };
    const input = cleat(0, 170);
    const [first, ...rest] = stepsOf({ ...input, shop: { ...fullShop, ...bare } });
    expect(first?.todo.text).toContain('No machine here takes');
    expect(rest).toEqual([]);
  });

  it('thin stock rides on a carrier through the planer', () => {
    const steps = stepsOf(
      millingInput({
        boards: [board('B1', { thickness: 20 })],
        parts: [part('back', 500, 100, 5)],
        blanks: [blank('B1', 0, 550, [104, 'back'])],
      }),
    );
    expect(steps.find(({ stage }) => stage === 'thickness')).toMatchObject({ machine: 'planer', carrier: true });
  });
});

describe('what is told before the first cut', () => {
  it('a crooked edge that leaves too little straight width', () => {
    const crooked = (crook: number) =>
      millingInput({
        boards: [board('B1', { width: 100, bow: 0, crook })],
        parts: [part('rail', 2300, 90, 20)],
        blanks: [blank('B1', 0, 2400, [96, 'rail'])],
      });
    expect(stepsOf(crooked(12))[0]?.todo.text).toContain('are straight');
    expect(stepsOf(crooked(2))[0]?.stage).toBe('mark out');
  });

  it('a panel whose strips do not add up', () => {
    const [first] = stepsOf(
      millingInput({
        boards: [board('B1')],
        parts: [part('lid', 900, 400, 19, { panel: true })],
        blanks: [blank('B1', 0, 950, [88, 'lid'], [88, 'lid'])],
      }),
    );
    expect(first?.todo.quantities[0]?.value).toBeCloseTo(169.6, 9);
    expect(first?.pieces[0]?.label).toBe('lid');
  });
});

describe('bad input', () => {
  const good = scenarios['mixed thickness'];
  const [k1] = good.boards;
  const cases: [string, Partial<MillingInput>, string][] = [
    ['a jointer of 5 mm', { shop: { ...good.shop, jointerWidth: 5 } }, 'shop.jointerWidth'],
    ['a planer of 90 m', { shop: { ...good.shop, planerWidth: 90000 } }, 'shop.planerWidth'],
    ['a kerf of no number', { shop: { ...good.shop, ripKerf: Number.NaN } }, 'shop.ripKerf'],
    ['a negative length allowance', { shop: { ...good.shop, lengthAllowance: -1 } }, 'shop.lengthAllowance'],
    [
      'a limit of zero',
      { limits: { ...good.limits, jointer: { ...good.limits.jointer, leastLength: { mm: 0, source: 'label' } } } },
      'limits.jointer.leastLength',
    ],
    ['a board of no thickness', { boards: [board('K1', { thickness: 0 })] }, 'boards.0.thickness'],
    ['a board marked twice', { boards: [...good.boards, ...(k1 ? [k1] : [])] }, 'boards.2.id'],
    ['a part of no length', { parts: [part('leg', 0, 44, 44)] }, 'parts.0.length'],
    [
      'folds longer than the panel',
      { parts: [part('leg', 700, 44, 44, { folds: [{ name: 'a', length: 800 }] })] },
      'parts.0.folds',
    ],
    ['a board that is not there', { blanks: [blank('X', 0, 750, [48, 'leg'])] }, 'blanks.0.board'],
    ['a part that is not there', { blanks: [blank('K1', 0, 750, [48, 'x'])] }, 'blanks.0.strips.0.part'],
    ['a blank beyond its board', { blanks: [blank('K1', 2000, 750, [48, 'leg'])] }, 'blanks.0.length'],
    ['a blank shorter than its part', { blanks: [blank('K1', 0, 500, [48, 'leg'])] }, 'blanks.0.length'],
    ['a blank of no strips', { blanks: [blank('K1', 0, 750)] }, 'blanks.0.strips'],
    ['a strip too narrow', { blanks: [blank('K1', 0, 750, [20, 'leg'])] }, 'blanks.0.strips.0.width'],
    ['strips wider than the board', { blanks: [blank('K1', 0, 750, [60, 'leg'], [60, 'leg'])] }, 'blanks.0.strips'],
    [
      'blanks that overlap',
      { blanks: [blank('K1', 0, 750, [48, 'leg']), blank('K1', 700, 750, [48, 'leg'])] },
      'blanks.1.start',
    ],
  ];
  for (const [name, wrong, field] of cases) {
    it(name, () => expect(millingSequence({ ...good, ...wrong })).toMatchObject({ kind: 'problem', field }));
  }

  it('nothing to mill is an empty run', () => {
    expect(millingSequence({ ...good, blanks: [] })).toEqual([]);
  });
});
