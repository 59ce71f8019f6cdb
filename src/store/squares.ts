import { repository } from './repository.ts';

export const squares = repository('square');
