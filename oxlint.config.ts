import js from '@eslint/js';
import { type DummyRuleMap, defineConfig } from 'oxlint';
import ts from 'typescript-eslint';
import mayImport from './tests/house/may-import.json' with { type: 'json' };

/**
 * How the TypeScript is linted (the pages are `eslint.config.mjs`): the rules of two published sets, and those of this house:
 * who may import whom, what the core may not touch, how long a function may be.
 */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = mayImport;
const MODULES = Object.keys(MAY_IMPORT);

/** A module that is not in another's row is above it. `tests/house/imports.test.ts` holds the same table, and that there are no circles. */
const directions = Object.entries(MAY_IMPORT).map(([module, below]) => ({
  files: [`src/${module}/**/*.ts`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        paths: [{ name: 'astro:content', message: 'Pages take the cabinet from src/site/cabinet.ts.' }],
        patterns: [
          {
            regex: `^(\\.\\./)+(${MODULES.filter((one) => one !== module && !below.includes(one)).join('|')})/`,
            message: 'Nothing points back: see the direction of imports in DEVELOPERS.md.',
          },
          ...(module === 'core' ? [{ regex: '^[^.]', message: 'The core imports only itself.' }] : []),
        ],
      },
    ],
  } satisfies DummyRuleMap,
}));

/** No module may hold these, so a parser tells them first. */
const NOT_IN_MODULES = ['no-dupe-args', 'no-octal'];
/** This linter does not have it; there is hardly a class here. */
const NOT_KNOWN = ['@typescript-eslint/no-unsafe-class-instance-assignment'];
/** A later set may turn off a rule of an earlier one. */
const published = [js.configs.recommended, ...ts.configs.strictTypeChecked].flatMap(({ rules }) =>
  Object.entries({ ...rules }),
);
const known = [...new Map(published)].filter(
  ([name, level]) => level !== 'off' && ![...NOT_IN_MODULES, ...NOT_KNOWN].includes(name),
);
const rules = Object.fromEntries(known) as DummyRuleMap;
const withoutTypes: DummyRuleMap = Object.fromEntries(
  known.flatMap(([name]) => (name.startsWith('@typescript-eslint/') ? [[name, 'off']] : [])),
);

/** Tables that are read from top to bottom, however long: a row a field. */
const TABLES = ['src/catalogue/fields/piece-fields.ts', 'src/publish/public-piece.ts'];

export default defineConfig({
  plugins: ['typescript'],
  categories: { correctness: 'off' },
  options: { typeAware: true, typeCheck: true, denyWarnings: true },
  ignorePatterns: ['dist/**', 'dist-*/**', 'hall-*/**', 'content/**', '**/*.astro'],
  rules: {
    ...rules,
    '@typescript-eslint/consistent-type-imports': 'error',
    '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
    '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
    '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
    '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: false }],
  },
  overrides: [
    ...directions,
    { files: ['src/site/cabinet.ts'], rules: { 'no-restricted-imports': 'off' } },
    {
      files: ['src/core/**/*.ts'],
      rules: {
        'no-restricted-globals': ['error', 'Date', 'console', 'process', 'document', 'window', 'fetch'],
        'no-restricted-properties': ['error', { object: 'Math', property: 'random' }],
      },
    },
    { files: ['src/**/*.ts'], rules: { 'max-lines-per-function': ['error', { max: 60 }] } },
    { files: TABLES, rules: { 'max-lines-per-function': 'off' } },
    {
      files: ['**/*.mjs'],
      rules: withoutTypes,
    },
  ],
});
