import { repository } from './repository.ts';

export const deliveries = repository('delivery');
