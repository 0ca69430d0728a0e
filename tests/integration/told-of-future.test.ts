import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type FieldShop, fieldShop } from '../support/field-shop.js';

const TODAY = '2026-06-05';
const TOMORROW = '2026-06-06';
/** The service's clock stands at 15:00. */
const WITHIN_REASON = '2026-06-05T15:04:00Z';

let field: FieldShop;
let machineId: string;

beforeAll(async () => {
  field = await fieldShop();
  machineId = field.shop.machineIds.get('M1')!;
});
afterAll(() => field.stop());

const post = (path: string, body: object) => field.manager.post(path, body);

/** Of each kind of fact that a desk tells: how it is told of a time. */
const TOLD: readonly [path: string, field: string, body: object][] = [
  ['/v1/completions', 'doneOn', { itemCode: 'sharpen-blades' }],
  ['/v1/findings', 'foundOn', { itemCode: 'sharpen-blades', observation: 'nicked' }],
  ['/v1/stopgaps', 'madeOn', { description: 'spliced', limitHours: '20', minutes: 30 }],
  ['/v1/failure-causes', 'happenedOn', { rootCause: 'flood', completionIds: [] }],
  ['/v1/meter-changes', 'changedOn', { oldHours: '900' }],
];

describe('what is told of a time that is yet to come', () => {
  it.each(TOLD)('is refused with the field that says so: %s', async (path, name, body) => {
    const refused = await post(path, { machineId, ...body, [name]: TOMORROW });
    expect(refused.status).toBe(422);
    expect(refused.body.errors).toEqual([{ pointer: `/${name}`, detail: expect.stringContaining('in the future') }]);
    expect((await post(path, { machineId, ...body, [name]: TODAY })).status).toBe(201);
  });

  it('is refused of the close of a stopgap', async () => {
    const { items } = (await field.manager.get(`/v1/stopgaps?machineId=${machineId}`)).body;
    const close = (closedOn: string) =>
      post(`/v1/stopgaps/${items[0].id}/close`, { because: 'not-needed', reason: 'mended by the site', closedOn });
    expect((await close(TOMORROW)).body.errors).toMatchObject([{ pointer: '/closedOn' }]);
    expect((await close(TODAY)).status).toBe(201);
  });

  it('is refused of the end of a visit, which stays open', async () => {
    const [visit] = (await field.manager.get('/v1/visits?from=2026-06-08')).body.items;
    const finish = (finishedAt: string) =>
      field.manager.post(`/v1/visits/${visit.id}/finish`, { finishedAt, done: [] });
    const refused = await finish(visit.endAt);
    expect(refused.status).toBe(422);
    expect(refused.body.errors).toMatchObject([{ pointer: '/finishedAt' }]);
    expect((await field.manager.get(`/v1/visits/${visit.id}`)).body.state).toBe('proposed');
    expect((await finish(WITHIN_REASON)).status).toBe(201);
  });
});
