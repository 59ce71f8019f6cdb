import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emptyForm, type FinishForm } from '../../../src/screens/finish/finish-form.ts';
import { readFinishForm } from '../../../src/screens/finish/read-finish-form.ts';
import { finishById } from '../../../src/tables/finishes.ts';
import { units } from '../../../src/ui/units.ts';
import { outside } from '../../setup/outside.ts';

const read = (change: Partial<FinishForm>, unit: 'in' | 'mm' = 'mm') => {
  units.value = { unit, nearest: 16 };
  return readFinishForm({ ...emptyForm, ...change });
};
const wrong = (change: Partial<FinishForm>) => [...read(change).problems.keys()];

test('an untouched form takes what is usual for the kind, and nothing is wrong', () => {
  const { finish, coats, method, problems, containers, airFactor } = read({});
  expect(finish).toBe(finishById('oil-varnish'));
  expect([coats, method, airFactor.value, containers, problems.size]).toEqual([3, 'brush', 1, [], 0]);
  expect(read({ kind: 'wiping-varnish' }).method).toBe('rag');
});

test('where no air is typed the shop’s own stands, in either degrees', () => {
  const air = { celsius: 15, humidity: 50 };
  for (const unit of ['in', 'mm'] as const) {
    units.value = { unit, nearest: 16 };
    const found = readFinishForm(emptyForm, air);
    expect(found.air.celsius).toBeCloseTo(15, 9);
    // Ten degrees halve it, by the rule of the air: five below 20 °C are 2 ^ 0.5.
    expect(found.airFactor.value).toBeCloseTo(2 ** 0.5, 9);
  }
  expect(readFinishForm({ ...emptyForm, celsius: '20' }, air).airFactor.value).toBe(1);
});

test('the can wins over the table and is marked as its figure', () => {
  const { finish, label } = read({ rate: '9-11', wait: '4', cure: '5 to 7' });
  expect(finish.coverage).toEqual({ least: 9, most: 11 });
  expect(finish.waitSeconds).toEqual({ least: 14_400, most: 14_400 });
  expect(finish.cureSeconds).toEqual({ least: 432_000, most: 604_800 });
  expect(finish.source).toBe('label');
  expect(Object.keys(label).sort()).toEqual(['coverage', 'cureSeconds', 'waitSeconds']);
});

test.each<[string, Partial<FinishForm>]>([
  ['rate', { rate: '0' }],
  ['rate', { rate: 'far' }],
  ['coats', { coats: '0' }],
  ['coats', { coats: '40' }],
  ['coats', { coats: '' }],
  ['coats', { coats: '1.5' }],
  ['insideCoats', { insideCoats: '-1' }],
  ['containers.0.price', { containers: [{ size: '1 l', price: '' }] }],
  ['containers.0.price', { containers: [{ size: '1 l', price: '0' }] }],
  ['containers.0.litres', { containers: [{ size: '', price: '5' }] }],
  ['containers.0.litres', { containers: [{ size: '900 l', price: '5' }] }],
  ['shapes.0.areaM2', { shapes: [{ name: 'leg', area: '', count: '1', treatment: 'shown' }] }],
  ['shapes.0.count', { shapes: [{ name: '', area: '1', count: '0', treatment: 'shown' }] }],
  ['celsius', { celsius: '2' }],
  ['humidity', { humidity: '99' }],
  ['wait', { wait: '24-2' }],
  ['cure', { use: '20', cure: '2' }],
  ['onShelf', { onShelf: 'some' }],
  ['mix.a', { mix: { ...emptyForm.mix, on: true, a: '0' } }],
  ['mix.a', { mix: { ...emptyForm.mix, on: true, a: '' } }],
  ['mix.densityA', { mix: { ...emptyForm.mix, on: true, a: '3', by: 'mass' } }],
  ['mix.potLife', { mix: { ...emptyForm.mix, on: true, a: '3', potLife: '0' } }],
  ['mix.pace', { mix: { ...emptyForm.mix, on: true, a: '3', pace: '0' } }],
  ['mix.pace', { mix: { ...emptyForm.mix, on: true, a: '3', pace: 'slow' } }],
  ['mix.pace', { mix: { ...emptyForm.mix, on: true, a: '3', potLife: '40', pace: '1e9' } }],
  ['mix.left', { mix: { ...emptyForm.mix, on: true, a: '3', left: '0' } }],
])('says at %s what is wrong with %j', (entry, change) => {
  expect(wrong(change)).toEqual([entry]);
});

test('without a rate on the can, solids and film give it; a rate typed in wins', () => {
  // By hand: 50 % solids at 25 µm: 500 / 25 = 20 m² from a litre.
  expect(read({ solids: '50', film: '25' }).finish.coverage).toEqual({ least: 20, most: 20 });
  // Doubles leave only rounding.
  outside({
    what: '50 % solids at 1 mil, m2 per litre',
    source: 'nist-sp811',
    at: 'appendix B: 1 mil is 25.4 micrometres',
    expected: 500 / 25.4,
    got: read({ solids: '50', film: '1' }, 'in').finish.coverage.least,
    tolerance: 5e-10,
  });
  expect(read({ solids: '50', film: '25', rate: '12' }).finish.coverage.least).toBe(12);
  expect(wrong({ solids: '50' })).toEqual(['film']);
  expect(wrong({ solids: '0', film: '25' })).toEqual(['solids']);
});

test('a shape that nothing is typed for is passed over', () => {
  expect(wrong({ shapes: [{ name: '', area: '', count: '', treatment: 'shown' }] })).toEqual([]);
});

test('a mix that is not wanted is not complained about', () => {
  expect(wrong({ mix: { ...emptyForm.mix, on: false, a: 'x' } })).toEqual([]);
});

test('Fahrenheit for makers who read inches', () => {
  // 59 °F is 15 °C exactly; 2 ^ 0.5 by the rule of the air.
  expect(read({ celsius: '59' }, 'in').airFactor.value).toBeCloseTo(2 ** 0.5, 9);
});

const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

test('whatever is typed, no number comes out that is none', () => {
  const text = fc.oneof(fc.string({ maxLength: 8 }), fc.constantFrom('', '0', '12', '1/0', '1e9', 'NaN', '-3', '2,5'));
  fc.assert(
    fc.property(fc.array(text, { minLength: 9, maxLength: 9 }), (texts) => {
      const [rate = '', coats = '', size = '', price = '', area = '', wait = '', a = '', left = '', celsius = ''] =
        texts;
      const form: FinishForm = {
        ...emptyForm,
        rate,
        coats,
        celsius,
        containers: [{ size, price }],
        shapes: [{ name: '', area, count: coats, treatment: 'shown' }],
        wait,
        mix: { ...emptyForm.mix, on: true, a, left },
      };
      const { problems: _, ...values } = readFinishForm(form);
      expect(numbersIn(values).filter((number) => !Number.isFinite(number))).toEqual([]);
    }),
  );
});
