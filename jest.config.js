// Tests read the sources directly; only processes that a test starts run the built files.
export default {
  testEnvironment: '<rootDir>/tests/support/page-text-environment.js',
  roots: ['<rootDir>/libs', '<rootDir>/apps', '<rootDir>/tests'],
  testPathIgnorePatterns: ['/node_modules/', '/dist/'],
  modulePathIgnorePatterns: ['<rootDir>/.deckround', '/dist/'],
  extensionsToTreatAsEsm: ['.ts'],
  moduleNameMapper: {
    '^@deckround/(contracts|client|billing|calendar|telematics|usage|upkeep|reliability|learning|routing|partition|planning|register|register-store|catalogue|demo|store|jobs|platform)$':
      '<rootDir>/libs/$1/src/index.ts',
    '^@deckround/catalogue/spanish$': '<rootDir>/libs/catalogue/src/spanish/index.ts',
    '^@deckround/(api|worker)$': '<rootDir>/apps/$1/src/index.ts',
    '^(\\.{1,2}/.*)\\.js$': '$1',
  },
  transform: { '^.+\\.ts$': '<rootDir>/tests/support/own-globals.js' },
  sandboxInjectedGlobals: ['Math'],
  testTimeout: 120_000,
};
