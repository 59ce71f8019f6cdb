import { repository } from './repository.ts';

export const pieces = repository('piece');
