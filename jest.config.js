// Tests run in plain Node and read the sources directly; only processes and threads that they start run built files.
export default {
  testEnvironment: '<rootDir>/tests/support/jest/environment.js',
  runtime: '<rootDir>/tests/support/jest/runtime.js',
  roots: ['<rootDir>/libs', '<rootDir>/apps', '<rootDir>/tests'],
  testPathIgnorePatterns: ['/node_modules/', '/dist/'],
  modulePathIgnorePatterns: ['<rootDir>/.deckround', '/dist/'],
  transform: {},
  testTimeout: 120_000,
  // The files do not share a database. Here, not among the arguments of a run: there a caller's own would not replace it.
  maxWorkers: '100%',
  // What files keep in their modules stays until their worker ends.
  workerIdleMemoryLimit: '1GB',
};
