import { repository } from './repository.ts';

export const millings = repository('milling');
