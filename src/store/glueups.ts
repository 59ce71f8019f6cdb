import { repository } from './repository.ts';

export const glueups = repository('glueup');
