import js from '@eslint/js';
import astro from 'eslint-plugin-astro';
import { defineConfig } from 'eslint/config';
import MAY_IMPORT from './tests/house/may-import.json' with { type: 'json' };

/** How the pages are linted; everything else is `oxlint.config.ts`, which does not read them. */
const MODULES = Object.keys(MAY_IMPORT);
const directions = Object.entries(MAY_IMPORT).map(([module, below]) => ({
  files: [`src/${module}/**/*.astro`],
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
        ],
      },
    ],
  },
}));

export default defineConfig(
  {
    ignores: ['**/*.{js,mjs,cjs,ts}', '!**/*.astro/**', 'dist/**', 'dist-*/**', 'hall-*/**', '.astro/**', '.cache/**'],
  },
  js.configs.recommended,
  ...astro.configs['flat/recommended'],
  ...directions,
  { files: ['src/**/*.astro'], rules: { 'max-lines-per-function': ['error', { max: 60 }] } },
  { files: ['src/site/components/paper/Marks.astro'], rules: { 'max-lines-per-function': 'off' } },
);
