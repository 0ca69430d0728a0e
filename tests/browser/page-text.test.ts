import { expect, it } from '@jest/globals';
import PlainEnvironment from '../support/jest/environment.js';

it('a failed test tells what the pages showed that it had opened, and those alone', async () => {
  const page = (text: string, isClosed = false) => ({
    ...{ isClosed: () => isClosed, url: () => 'http://shop.example/week' },
    innerText: async () => text,
  });
  const global: { pagesOfTest?: unknown[] } = {};
  const tell = (event: object) => PlainEnvironment.prototype.handleTestEvent.call({ global }, event);
  await tell({ name: 'test_start' });
  global.pagesOfTest!.push(page('No visit today'), page('', true), page('x'.repeat(9000)));
  const error = new Error('heading never came');
  const { stack } = error;
  await tell({ name: 'test_fn_success' });
  expect(error.stack).toBe(stack);
  await tell({ name: 'test_fn_failure', error });
  const [, first, second, third] = error.stack!.split('\n\n');
  expect(error.stack!.startsWith(stack!)).toBe(true);
  expect(first).toBe('The page at http://shop.example/week showed:\nNo visit today');
  expect(second).toBe('A page at http://shop.example/week, closed by then.');
  expect(third!.length).toBeLessThan(3100);
  await tell({ name: 'test_start' });
  const other = new Error('nothing was open');
  await tell({ name: 'test_fn_failure', error: other });
  expect(other.stack).not.toContain('The page at');
});
