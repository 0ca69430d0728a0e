// Stands for `@jest/globals`: every name is that of the test file that runs now.
const now = () => globalThis[Symbol.for('deckround.test-globals')];

const current = (name) =>
  new Proxy(() => {}, {
    apply: (_target, _self, args) => now()[name](...args),
    get: (_target, key) => now()[name][key],
  });

export const describe = current('describe');
export const it = current('it');
export const test = current('test');
export const expect = current('expect');
export const beforeAll = current('beforeAll');
export const afterAll = current('afterAll');
export const beforeEach = current('beforeEach');
export const afterEach = current('afterEach');
