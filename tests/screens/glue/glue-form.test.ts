import { expect, test } from 'vitest';
import { forStage } from '../../../src/screens/glue/glue-form.ts';

test('another stage keeps what is typed of the glue and the work, and takes nothing over of the stage before', () => {
  const ofGlue = {
    adhesive: 'casein',
    celsius: '70',
    tool: 'roller',
    hands: '2',
    label: { open: '10' },
    caul: '1',
  } as const;
  const seams = [{ count: '3', length: '40', width: '3/4' }];
  const typed = {
    ...ofGlue,
    stage: 'lid/1',
    name: 'Lid',
    seams,
    meets: 'edge',
    across: '20',
    outerBoard: '5',
    species: 'x',
  } as const;
  expect(forStage(typed, 'lid/2')).toEqual({ ...ofGlue, stage: 'lid/2' });
  expect(forStage({}, '')).toEqual({ stage: '' });
});
