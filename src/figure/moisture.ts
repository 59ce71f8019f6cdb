import { isProblem } from '../core/answer/problem.ts';
import { equilibriumMoisture } from '../core/moisture/equilibrium-moisture.ts';
import type { Figure } from './ask.ts';

/** `{"celsius": 21.1, "humidity": 50}` to the moisture that wood settles at. */
export const figure: Figure = (input) => {
  const { celsius, humidity } = input as { celsius: number; humidity: number };
  const moisture = equilibriumMoisture({ celsius, humidity });
  return isProblem(moisture) ? moisture : { percent: moisture.value };
};
