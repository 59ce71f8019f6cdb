import { repository } from './repository.ts';

export const boards = repository('board');
