import type { Screens } from '../app/shell.tsx';
import Bench from './bench/bench.tsx';
import { questions } from './questions.ts';

/** Every screen by the name in its address. */
export const screens: Screens = { home: Bench, questions, others: () => import('./others.ts') };
