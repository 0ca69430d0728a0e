import { queryOptions } from '@tanstack/react-query';
import { everyPage } from '../../data/api.js';
import type { IntegrationKey, TelematicsSource, WebhookDelivery, WebhookEndpoint } from '../../data/types.js';

export const endpointsQuery = queryOptions({
  queryKey: ['webhook-endpoints'],
  queryFn: ({ signal }) => everyPage<WebhookEndpoint>('/v1/webhook-endpoints', signal),
});
export const deliveriesQuery = (endpointId: string) =>
  queryOptions({
    queryKey: ['webhook-endpoints', endpointId, 'deliveries'],
    queryFn: ({ signal }) => everyPage<WebhookDelivery>(`/v1/webhook-endpoints/${endpointId}/deliveries`, signal),
  });
export const keysQuery = queryOptions({
  queryKey: ['integration-keys'],
  queryFn: ({ signal }) => everyPage<IntegrationKey>('/v1/integration-keys', signal),
});
export const sourcesQuery = queryOptions({
  queryKey: ['telematics-sources'],
  queryFn: ({ signal }) => everyPage<TelematicsSource>('/v1/telematics/sources', signal),
});
