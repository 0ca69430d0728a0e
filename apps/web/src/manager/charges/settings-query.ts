import { queryOptions } from '@tanstack/react-query';
import { api } from '../../data/api.js';
import type { ChargeSettings } from '../../data/types.js';

export const settingsQuery = queryOptions({
  queryKey: ['charge-settings'],
  queryFn: ({ signal }) => api.get<ChargeSettings>('/v1/charge-settings', signal),
});
