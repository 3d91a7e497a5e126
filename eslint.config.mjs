import { fileURLToPath } from 'node:url';
import boundaries from 'eslint-plugin-boundaries';
import importX from 'eslint-plugin-import-x';
import reactHooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';

const resolver = fileURLToPath(new URL('./scripts/lint/resolver.cjs', import.meta.url));

/** Which part of the house a file belongs to. */
const elements = [
  { type: 'core', pattern: 'shared', partialMatch: false },
  { type: 'generated', pattern: 'src/generated', partialMatch: false },
  { type: 'platform', pattern: 'src/platform', partialMatch: false },
  { type: 'feature', pattern: 'src/*', partialMatch: false, capture: ['feature'] },
  { type: 'service', pattern: 'src', partialMatch: false },
  { type: 'board', pattern: 'board', partialMatch: false },
  { type: 'seed', pattern: 'prisma', partialMatch: false },
  { type: 'test', pattern: 'test', partialMatch: false },
  { type: 'bench', pattern: 'bench', partialMatch: false },
  { type: 'scripts', pattern: 'scripts', partialMatch: false },
];

const files = [
  { category: 'spec', pattern: '**/*.spec.{ts,tsx}' },
  { category: 'face', pattern: '**/*.face.ts' },
  { category: 'face', pattern: '**/*.module.ts' },
];

const local = (...types) => ({ to: { element: { types: { anyOf: types } } } });
const own = { dependency: { relationship: { to: 'internal' } } };
const outside = { to: { module: { origin: ['external', 'core'] } } };

/** Who may import what; anything not said here is refused. */
const policies = [
  { allow: own },
  { from: { element: { type: '!core' } }, allow: outside },
  // The core is pure: no package, no part of Node, nothing of the service or the board; only its tests may use more.
  { from: { file: { categories: 'spec' } }, allow: outside },
  { from: { element: { type: 'platform' } }, allow: local('core', 'generated') },
  { from: { element: { type: 'feature' } }, allow: local('core', 'generated', 'platform') },
  // A feature meets another one only at its face or its module.
  {
    from: { element: { type: 'feature' } },
    allow: { to: { element: { type: 'feature' }, file: { categories: 'face' } } },
  },
  { from: { element: { type: 'service' } }, allow: local('core', 'generated', 'platform', 'feature') },
  {
    from: { element: { type: 'seed' } },
    allow: local('core', 'generated', 'platform', 'feature', 'service'),
  },
  { from: { element: { type: 'board' } }, allow: local('core') },
  { from: { element: { type: 'bench' } }, allow: local('core') },
  {
    from: { element: { types: { anyOf: ['test', 'scripts'] } } },
    allow: local(
      'core',
      'generated',
      'platform',
      'feature',
      'service',
      'board',
      'seed',
      'test',
      'scripts',
      'bench',
    ),
  },
  {
    from: { file: { categories: 'spec' } },
    allow: local('core', 'generated', 'platform', 'feature', 'service', 'test'),
  },
];

export default tseslint.config(
  {
    ignores: [
      'dist/',
      'board/dist/',
      'node_modules/',
      'src/generated/',
      'board/api/documents.ts',
      'src/records/api/documents.ts',
      'coverage/',
      '.flagway/',
      'test/browser/screens/',
    ],
  },
  ...tseslint.configs.strict,
  {
    files: ['**/*.{ts,tsx}'],
    extends: [tseslint.configs.recommendedTypeCheckedOnly],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
  },
  {
    plugins: { 'import-x': importX },
    settings: {
      'import-x/resolver': { [resolver]: {} },
      'import-x/parsers': { '@typescript-eslint/parser': ['.ts', '.tsx'] },
      'import-x/extensions': ['.ts', '.tsx', '.mjs'],
    },
    rules: { 'import-x/no-cycle': ['error', { ignoreExternal: true }], 'import-x/no-self-import': 'error' },
  },
  {
    files: ['shared/**', 'src/**', 'board/**', 'bench/**', 'test/**', 'prisma/**', 'scripts/**'],
    plugins: { boundaries },
    settings: {
      'boundaries/elements': elements,
      'boundaries/files': files,
      'boundaries/root-path': import.meta.dirname,
      'import/resolver': { [resolver]: {} },
    },
    rules: { 'boundaries/dependencies': ['error', { default: 'disallow', checkAllOrigins: true, policies }] },
  },
  {
    rules: {
      // A class that is injected must be imported as a value: its type is what the injector reads.
      '@typescript-eslint/consistent-type-imports': 'off',
      // The modules of the framework are classes with nothing in them.
      '@typescript-eslint/no-extraneous-class': ['error', { allowWithDecorator: true }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-console': 'error',
    },
  },
  {
    files: ['**/*.{ts,tsx}'],
    rules: {
      '@typescript-eslint/restrict-template-expressions': [
        'error',
        { allowNumber: true, allowBoolean: true },
      ],
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: { attributes: false } }],
    },
  },
  {
    // The core knows no clock, no chance and no surroundings: equal input gives an equal answer everywhere.
    files: ['shared/**/*.ts'],
    ignores: ['**/*.spec.ts'],
    rules: {
      // Loops over numbered phases and slots read arrays by indices they have just made themselves.
      '@typescript-eslint/no-non-null-assertion': 'off',
      'no-restricted-globals': [
        'error',
        ...[
          'process',
          'fetch',
          'setTimeout',
          'setInterval',
          'performance',
          'crypto',
          'window',
          'document',
          'navigator',
          'localStorage',
          'indexedDB',
        ].map((name) => ({ name, message: 'The core has no surroundings: take it as an argument.' })),
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Date', property: 'now', message: 'The core has no clock: take the time as an argument.' },
        {
          object: 'Math',
          property: 'random',
          message: 'The core has no chance: take a seed as an argument.',
        },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
          message: 'The core has no clock: take the time as an argument.',
        },
        {
          selector: 'CallExpression[callee.property.name=/^toLocale/]',
          message: 'The core has no locale: format at the edge.',
        },
      ],
    },
  },
  {
    files: ['board/**/*.{ts,tsx}'],
    plugins: { 'react-hooks': reactHooks },
    rules: {
      'react-hooks/rules-of-hooks': 'error',
      'react-hooks/exhaustive-deps': 'error',
      // A form's fields are typed as text or file; the forms here have no files.
      '@typescript-eslint/no-base-to-string': 'off',
    },
  },
  {
    // Benchmarks read arrays by numbers they have just counted.
    files: ['bench/**'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    // Tests look into answers of unknown shape; an assertion that finds something else fails by itself.
    files: ['**/*.spec.{ts,tsx}', 'test/**'],
    rules: {
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/unbound-method': 'off',
      '@typescript-eslint/require-await': 'off',
      '@typescript-eslint/no-dynamic-delete': 'off',
    },
  },
  { files: ['scripts/lint/*.cjs'], rules: { '@typescript-eslint/no-require-imports': 'off' } },
);
