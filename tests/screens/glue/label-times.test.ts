import { expect, test } from 'vitest';
import { labelTexts, lastLabel, readLabel } from '../../../src/screens/glue/label-times.ts';
import { formReader } from '../../../src/ui/form-reader.ts';
import { started, typed } from './samples.ts';

test('minutes and hours as labels give them, and the same text again', () => {
  const texts = { open: '5–10', clamp: '45', cure: '24', atCelsius: '21', leastCelsius: '8' };
  const reader = formReader();
  const label = readLabel(texts, reader);
  expect(reader.problems.size).toBe(0);
  expect(label).toEqual({
    seconds: {
      open: { least: 300, most: 600 },
      clamp: { least: 2700, most: 2700 },
      cure: { least: 86_400, most: 86_400 },
    },
    atCelsius: 21,
    leastCelsius: 8,
  });
  expect(labelTexts(label)).toEqual(texts);
  expect(readLabel({}, formReader())).toEqual({});
});

test('the label of the last glue-up with that kind is the one that is kept', () => {
  const older = started(typed({ label: { open: '4' } }), 1000);
  const newer = started(typed({ label: { open: '6' } }), 2000);
  const other = started(typed({ adhesive: 'casein', label: { open: '9' } }), 3000);
  expect(lastLabel([newer, other, older], newer.adhesive)?.seconds?.open).toEqual({ least: 360, most: 360 });
  expect(lastLabel([older], 'epoxy-fast')).toEqual({});
});
