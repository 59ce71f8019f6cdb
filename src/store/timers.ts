import { repository } from './repository.ts';

export const timers = repository('timer');
