import { repository } from './repository.ts';

export const finishes = repository('finish');
