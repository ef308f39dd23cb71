import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { FileSystemConfigLoader, HtmlValidate } from 'html-validate';
import type { ConfigData } from 'html-validate';
import { expect, test } from 'vitest';
import { builtFiles } from './site-links.ts';

/** The rules of the HTML standard and of WAI-ARIA as html-validate has them; what it adds of taste is left out. */
const CONFIG: ConfigData = {
  root: true,
  extends: ['html-validate:standard', 'html-validate:a11y'],
  rules: {
    'long-title': 'off',
    'no-raw-characters': 'off',
    // A list with `list-style: none` is read as a list in Safari only when it says so itself.
    'no-redundant-role': 'off',
  },
};

test('every page is HTML as the standard has it', async () => {
  const check = new HtmlValidate(new FileSystemConfigLoader(CONFIG));
  const pages = (await builtFiles('dist')).filter((file) => file.endsWith('.html'));
  expect(pages.length).toBeGreaterThan(100);
  const wrong: string[] = [];
  for (const page of pages) {
    const report = await check.validateString(await readFile(join('dist', page), 'utf8'), page);
    for (const { messages } of report.results)
      wrong.push(
        ...messages
          .filter(({ severity }) => severity === 2)
          .map(({ ruleId, message, line }) => `${page}:${line} ${ruleId}: ${message}`),
      );
  }
  expect(wrong.slice(0, 30)).toEqual([]);
});
