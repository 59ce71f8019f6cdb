import { repository } from './repository.ts';

export const plans = repository('plan');
