/** A tier of tests; all tiers read TypeScript through swc as ES modules. */
const tier = (displayName, testMatch, extra = {}) => ({
  displayName,
  testMatch: testMatch.map((glob) => `<rootDir>/${glob}`),
  testEnvironment: 'node',
  extensionsToTreatAsEsm: ['.ts', '.tsx'],
  moduleNameMapper: { '^(\\.{1,2}/.*)\\.js$': '$1' },
  transform: {
    '^.+\\.(ts|tsx|js)$': [
      '@swc/jest',
      {
        jsc: {
          target: 'es2022',
          parser: { syntax: 'typescript', tsx: true, decorators: true },
          transform: { legacyDecorator: true, decoratorMetadata: true, react: { runtime: 'automatic' } },
        },
      },
    ],
  },
  setupFilesAfterEnv: ['<rootDir>/test/support/patience.mjs'],
  transformIgnorePatterns: ['/node_modules/(?!(content-disposition|cookie)/)'],
  ...extra,
});

const withServers = {
  globalSetup: '<rootDir>/test/support/global-setup.mjs',
  globalTeardown: '<rootDir>/test/support/global-teardown.mjs',
};

export default {
  projects: [
    tier(
      'core',
      ['shared', 'board', 'bench', 'scripts'].map((folder) => `${folder}/**/*.spec.ts`),
    ),
    tier('standards', ['test/standards/**/*.spec.ts']),
    tier('service', ['test/service/**/*.spec.ts', 'src/**/*.spec.ts'], withServers),
    tier('faults', ['test/faults/**/*.spec.ts'], withServers),
    tier('browser', ['test/browser/**/*.spec.ts'], withServers),
  ],
};
