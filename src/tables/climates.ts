import type { SourceId } from '../core/answer/source-id.ts';
import type { Air } from '../core/moisture/equilibrium-moisture.ts';

/** Where a piece may live: the air in its driest and in its dampest season. */
export interface Climate {
  readonly id: string;
  readonly name: string;
  readonly dry: Air;
  readonly wet: Air;
  readonly source: SourceId;
}

function climate(id: string, name: string, dry: Air, wet: Air): Climate {
  return { id, name, dry, wet, source: 'assumption' };
}

/** Round figures to start from. A hygrometer in the room for a year is better. */
export const climates: readonly Climate[] = [
  climate(
    'heated-cold-winter',
    'Heated house, cold winters',
    { celsius: 20, humidity: 30 },
    { celsius: 24, humidity: 60 },
  ),
  climate(
    'heated-mild-winter',
    'Heated house, mild winters',
    { celsius: 20, humidity: 40 },
    { celsius: 22, humidity: 65 },
  ),
  climate('dry-inland', 'House in dry country', { celsius: 21, humidity: 20 }, { celsius: 26, humidity: 40 }),
  climate('damp-coast', 'House on a damp, warm coast', { celsius: 22, humidity: 55 }, { celsius: 28, humidity: 75 }),
  climate('air-conditioned', 'Conditioned all year', { celsius: 21, humidity: 35 }, { celsius: 24, humidity: 50 }),
  climate('unheated', 'Unheated room or shed', { celsius: 22, humidity: 60 }, { celsius: 3, humidity: 85 }),
];
