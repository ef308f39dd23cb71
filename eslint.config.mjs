import js from '@eslint/js';
import astro from 'eslint-plugin-astro';
import { defineConfig } from 'eslint/config';
import ts from 'typescript-eslint';
import MAY_IMPORT from './tests/house/may-import.json' with { type: 'json' };

/**
 * Who may import whom: the direction of the house. A module that is not in another's row is above it.
 * The commands put together what the rest is handed. `tests/house/imports.test.ts` holds the same table, and that there are no circles.
 */
const MODULES = Object.keys(MAY_IMPORT);

const astroContent = {
  name: 'astro:content',
  message: 'Pages take the cabinet from src/site/cabinet.ts.',
};

const directions = Object.entries(MAY_IMPORT).map(([module, below]) => ({
  files: [`src/${module}/**/*.{ts,astro}`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        paths: [astroContent],
        patterns: [
          {
            regex: `^(\\.\\./)+(${MODULES.filter((one) => one !== module && !below.includes(one)).join('|')})/`,
            message: 'Nothing points back: see the direction of imports in DEVELOPERS.md.',
          },
          ...(module === 'core' ? [{ regex: '^[^.]', message: 'The core imports only itself.' }] : []),
        ],
      },
    ],
  },
}));

/** Tables that are read from top to bottom, however long: a row a field. */
const TABLES = [
  'src/catalogue/fields/piece-fields.ts',
  'src/publish/public-piece.ts',
  'src/site/components/paper/Marks.astro',
];
/** Where functions are still longer, or patterns: a file that is changed is taken out of the list. */
const LONG_SO_FAR = [
  'src/import/**/*.ts',
  'src/privacy/{exact-spots,page-policy,sums}.ts',
  'src/core/dating/read-cycle.ts',
];

export default defineConfig(
  { ignores: ['dist/**', 'dist-*/**', 'hall-*/**', 'node_modules/**', '.astro/**', '.cache/**', 'content/**'] },
  js.configs.recommended,
  ...ts.configs.strictTypeChecked.map((config) => ({ ...config, files: ['src/**/*.ts', 'tests/**/*.ts'] })),
  {
    files: ['src/**/*.ts', 'tests/**/*.ts'],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: false }],
      // There is no enum here and hardly a class, and these two took half of the linter's time.
      '@typescript-eslint/no-unsafe-enum-assignment': 'off',
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
    },
  },
  ...astro.configs['flat/recommended'],
  ...directions,
  {
    files: ['src/core/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', 'Date', 'console', 'process', 'document', 'window', 'fetch'],
      'no-restricted-properties': ['error', { object: 'Math', property: 'random' }],
    },
  },
  {
    files: ['src/**/*.{ts,astro,mjs}'],
    ignores: [...TABLES, ...LONG_SO_FAR],
    rules: {
      'max-lines-per-function': ['error', { max: 60 }],
      'no-restricted-syntax': [
        'error',
        { selector: 'Literal[regex.pattern=/.{121,}/]', message: 'Build a pattern this long from lists of words.' },
      ],
    },
  },
  { files: ['src/site/cabinet.ts'], rules: { 'no-restricted-imports': 'off' } },
  {
    files: ['**/*.mjs'],
    languageOptions: { globals: { process: 'readonly', console: 'readonly' } },
  },
);
