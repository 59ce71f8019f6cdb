import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readyPieces } from '../../../src/core/milling/ready-pieces.ts';
import { tickAll } from '../../../src/core/steps/progress.ts';
import type { PieceRecords } from '../../../src/screens/bench/job-thread.ts';
import { type Answer, type Answers, type Later, whatNow } from '../../../src/screens/bench/what-now.ts';
import { stepsOf } from '../../../src/screens/finish/finish-steps.ts';
import type { Glueup } from '../../../src/store/records/glueup.ts';
import type { Timer } from '../../../src/store/records/timer.ts';
import { plan, run, sequence } from '../mill/records.ts';
import { bench, finish, glueup, hour, minute, now, ofPiece, timer } from './records.ts';

const nothingLater: Later = { gluable: new Map(), waits: [], missing: [] };
const said = ({ what, of, machine }: Answer) => [what.text, of, ...(machine ? [machine] : [])].join(' | ');
const lines = ({ now: toDo, waits, missing }: Answers) => [toDo, waits, missing].map((list) => list.map(said));
const told = (given: Parameters<typeof bench>[0], later: Later | undefined = nothingLater) =>
  lines(whatNow(bench(given), now, later));

describe('one piece, from boards to cure', () => {
  const ofRun = (done: number) => {
    const { steps } = sequence(plan('one'));
    const ticks = steps.slice(0, done).reduce((so, step) => tickAll(so, step, now), {});
    return { steps, milling: run(plan('one'), { pieceId: 'chest', ticks }) };
  };
  const sanded = ['sand-120', 'sand-180', 'sand-220', 'sample'];

  test.each<[string, Partial<PieceRecords>, string]>([
    ['with parts alone', {}, 'Plan the cuts | chest'],
    ['planned', { plan: plan('one') }, 'Mill the blanks | chest'],
    ['glued without a plan or a run', { glueups: [glueup('lid', 'chest', 'lid/1', 3)] }, 'Check it for square | chest'],
    ['sanded', { finish: finish('f', 'chest', ['sand-120']) }, 'Sand with 180 | chest'],
    ['coated: rags first', { finish: finish('f', 'chest', [...sanded, 'coat-1']) }, 'Rags after coat 1 | chest'],
    [
      'finished without anything else',
      { finish: { ...finish('f', 'chest', []), finishedAt: now } },
      'All stages done | chest',
    ],
  ])('%s', (_, records, first) => {
    expect(told({ pieces: [ofPiece('chest', records)] })).toEqual([[first], [], []]);
  });

  test('no boards logged: that comes first, until something is made without', () => {
    expect(told({ boardCount: 0, pieces: [ofPiece('chest')] })[0]).toEqual(['Log the boards you have | chest']);
    const milled = ofPiece('chest', { milling: run(plan('one'), { pieceId: 'chest', finishedAt: now }) });
    expect(told({ boardCount: 0, pieces: [milled] })[0]).toEqual(['Glue up | chest']);
  });

  test('a run says the first step with wood ready at each machine, and how much', () => {
    const { steps, milling } = ofRun(2);
    const answers = whatNow(bench({ pieces: [ofPiece('chest', { milling })] }), now).now;
    const ready = readyPieces(steps, milling.ticks);
    expect(answers.length).toBeGreaterThan(0);
    expect(new Set(answers.map(({ machine }) => machine)).size).toBe(answers.length);
    for (const { step, ready: count, machine, screen, id } of answers) {
      const own = steps.find((one) => one.id === step);
      expect([own?.machine, ready.get(step ?? '')?.length]).toEqual([machine, count]);
      expect([screen, id]).toEqual(['mill', 'run']);
    }
  });

  test('a step that rests waits, and is due once its time is over', () => {
    const { steps } = sequence(plan('one'));
    const rest = steps.findIndex(({ waits }) => waits !== undefined);
    const { milling } = ofRun(rest);
    const id = steps[rest]?.id ?? '';
    const at = (endsAt: number) => {
      const timers = [timer('milling', 'run', 'Rest', endsAt, id)];
      return whatNow(bench({ pieces: [ofPiece('chest', { milling })], timers }), now);
    };
    expect(at(now + hour).waits).toMatchObject([{ screen: 'mill', id: 'run', step: id }]);
    expect(at(now + hour).now.map(({ step }) => step)).not.toContain(id);
    expect(at(now - hour).now[0]).toMatchObject({ what: { text: 'Rest' }, step: id, until: now - hour });
    expect(at(now - hour).waits).toEqual([]);
  });

  test('a panel in the clamps is not glued a second time', () => {
    const { steps } = sequence(plan('one'));
    const gluing = steps.findIndex(({ machine }) => machine === 'clamps');
    const { milling } = ofRun(gluing);
    const clamps = (glueups: Glueup[]) =>
      told({ pieces: [ofPiece('chest', { milling, glueups })], glueups })[0]?.filter((line) => line.endsWith('clamps'));
    expect(clamps([])).toEqual([`${steps[gluing]?.title.text} | chest | clamps`]);
    expect(clamps([glueup('lid', 'chest', 'p2/1', 1)])).toEqual([]);
    expect(clamps([glueup('lid', 'chest', 'p2/1', 3)])).toHaveLength(1);
  });

  test('a coat waits for the one before it, then it is due', () => {
    const coated = finish('f', 'chest', [...sanded, 'coat-1', 'rags-1']);
    const next = stepsOf(coated).find(({ id }) => !(id in coated.ticks))?.title.text;
    const at = (endsAt: number) =>
      told({ pieces: [ofPiece('chest', { finish: coated })], timers: [timer('finish', 'f', 'Before coat 2', endsAt)] });
    expect(at(now + hour)).toEqual([[], ['Before coat 2 | f'], []]);
    expect(at(now - hour)).toEqual([[`${next} | chest`], [], []]);
    // After 48 h the coat is too hard to take the next (the table's longest wait): the timer began an hour ago.
    const timers = [timer('finish', 'f', 'Before coat 2', now - minute)];
    expect(whatNow(bench({ pieces: [ofPiece('chest', { finish: coated })], timers }), now).now).toMatchObject([
      { until: now - minute, by: now + 47 * hour },
    ]);
    // Rags never wait.
    const rags = ofPiece('chest', { finish: finish('f', 'chest', [...sanded, 'coat-1']) });
    expect(told({ pieces: [rags], timers: [timer('finish', 'f', 'Before coat 2', now + hour)] })).toEqual([
      ['Rags after coat 1 | chest'],
      ['Before coat 2 | f'],
      [],
    ]);
  });

  test('short of wood: said as missing, and the rest can be milled', () => {
    const short = {
      ...plan('one'),
      short: [1, 2].map((unit) => ({ part: 'p2', unit, missingWidth: 10 })),
    };
    expect(told({ pieces: [ofPiece('chest', { plan: short })] })).toEqual([
      ['Mill the blanks | chest'],
      [],
      ['Short of wood for Lid | chest'],
    ]);
  });

  test('what else can be glued is said once it is known, and nothing that would be taken back', () => {
    const pieces = [ofPiece('chest', { glueups: [glueup('lid', 'chest', 'p2/1', 3)] })];
    expect(lines(whatNow(bench({ pieces }), now))).toEqual([[], [], []]);
    const later = { ...nothingLater, gluable: new Map([['chest', ['Case', 'Door']]]) };
    expect(whatNow(bench({ pieces }), now, later).now).toMatchObject([{ what: { text: 'Glue up Case' }, ready: 2 }]);
    // All that the run had to glue is glued: it goes on after the glue.
    const milled = [ofPiece('chest', { milling: run(plan('one'), { pieceId: 'chest', finishedAt: now }) })];
    expect(told({ pieces: milled }, { ...nothingLater, gluable: new Map([['chest', []]]) })[0]).toEqual([
      'Check it for square | chest',
    ]);
  });
});

test('glue that is open comes first, then what has waited, then the work; machines keep together', () => {
  const glueups = [glueup('spread', 'x', 'a', 0), glueup('clamped', 'x', 'b', 1), glueup('strong', 'x', 'c', 3)];
  const timers = [
    timer('glueup', 'strong', 'To full strength', now - minute),
    timer('glueup', 'clamped', 'In the clamps', now - minute),
    timer('glueup', 'spread', 'Spread and close', now + 2 * minute),
    timer('finish', 'gone', 'Full cure', now + hour),
  ];
  const milling = (id: string) => ofPiece(id, { milling: run(plan('one'), { id: `run ${id}` }) });
  const [toDo, waits] = told({ pieces: [milling('chest'), milling('box')], timers, glueups });
  expect(toDo?.slice(0, 2)).toEqual(['Spread and close | spread', 'Clamps off | clamped']);
  expect(waits).toEqual(['Full cure | gone']);
  const machines = toDo?.slice(2).map((line) => line.split(' | ')[2]);
  expect(machines?.filter((machine, at) => machine !== machines[at - 1])).toEqual([...new Set(machines)]);
});

describe('whatever lies in the records', () => {
  const at = fc.integer({ min: -3 * hour, max: 3 * hour }).map((ms) => now + ms);
  const far = fc.constantFrom(0, 1, 2, 3) as fc.Arbitrary<0 | 1 | 2 | 3>;
  const { steps } = sequence(plan('one'));
  const coats = finish('f', 'x', []).steps as unknown as { id: string }[];

  /** A piece at any point of any stages, with the timers that run for it. */
  const made = (id: string) =>
    fc
      .record({
        planned: fc.boolean(),
        milled: fc.option(fc.nat(steps.length)),
        glued: fc.array(fc.record({ far, endsAt: at }), { maxLength: 2 }),
        coated: fc.option(fc.record({ done: fc.nat(coats.length), waits: fc.option(at) })),
      })
      .map(({ planned, milled, glued, coated }) => {
        const ticks = steps.slice(0, milled ?? 0).reduce((so, step) => tickAll(so, step, now), {});
        const glueups = glued.map((one, nth) => glueup(`${id} glue ${nth}`, id, `p2/${nth}`, one.far));
        const done = coats.slice(0, coated?.done).map((step) => step.id);
        const records = ofPiece(id, {
          ...(planned && { plan: plan('one') }),
          ...(milled !== null && {
            milling: run(plan('one'), {
              id: `${id} run`,
              ticks,
              ...(milled === steps.length && { finishedAt: now }),
            }),
          }),
          ...(coated && {
            finish: { ...finish(`${id} finish`, id, done), ...(done.length === coats.length && { finishedAt: now }) },
          }),
          glueups,
        });
        const timers = [
          ...glued.map(({ endsAt }, nth) => timer('glueup', `${id} glue ${nth}`, 'In the clamps', endsAt)),
          ...(coated?.waits ? [timer('finish', `${id} finish`, 'Before coat 2', coated.waits)] : []),
        ];
        return { records, timers, glueups };
      });
  const shops = fc.tuple(made('a'), made('b'), made('c')).map((all) =>
    bench({
      boardCount: 0,
      pieces: all.map(({ records }) => records),
      timers: all.flatMap(({ timers }) => timers),
      glueups: all.flatMap(({ glueups }) => glueups),
    }),
  );
  const everything = ({ now: toDo, waits, missing }: Answers) => [...toDo, ...waits, ...missing];
  const key = (answers: readonly Answer[]) => answers.map((one) => JSON.stringify(one)).sort();

  test('every piece is spoken of, and nothing twice', () => {
    fc.assert(
      fc.property(shops, (given) => {
        const all = everything(whatNow(given, now, nothingLater));
        expect(new Set(key(all)).size).toBe(all.length);
        for (const { piece } of given.pieces) expect(all.some(({ of }) => of.startsWith(piece.id))).toBe(true);
      }),
    );
  });

  test('a timer that runs is under way, one that has ended is not waited for', () => {
    fc.assert(
      fc.property(shops, (given) => {
        const { now: toDo, waits } = whatNow(given, now, nothingLater);
        const speaks = (list: readonly Answer[], { for: { id }, endsAt }: Timer) =>
          list.some((one) => one.id === id && one.until === endsAt);
        for (const one of given.timers) {
          if (one.endsAt > now) expect(speaks([...toDo, ...waits], one)).toBe(true);
          else expect(speaks(waits, one)).toBe(false);
        }
        for (const { until } of waits) expect(until).toBeGreaterThan(now);
      }),
    );
  });

  test('what is known a moment later comes after the rest: nothing moves under the thumb', () => {
    const gluable = fc.array(fc.constantFrom('Case', 'Door'), { maxLength: 2 });
    const later = fc
      .dictionary(fc.constantFrom('a', 'b', 'c'), gluable)
      .map((given): Later => ({ ...nothingLater, gluable: new Map(Object.entries(given)) }));
    fc.assert(
      fc.property(shops, later, (given, more) => {
        const at = whatNow(given, now).now;
        expect(whatNow(given, now, more).now.slice(0, at.length)).toEqual(at);
      }),
    );
  });

  test('the order in which records come out of the database changes nothing that is said', () => {
    fc.assert(
      fc.property(shops, (given) => {
        const turned = {
          ...given,
          pieces: given.pieces.toReversed(),
          timers: given.timers.toReversed(),
          glueups: given.glueups.toReversed(),
        };
        expect(key(everything(whatNow(turned, now, nothingLater)))).toEqual(
          key(everything(whatNow(given, now, nothingLater))),
        );
      }),
    );
  });
});
