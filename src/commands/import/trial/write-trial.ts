import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { makeFolder } from '../../../catalogue/keep/fault-sentence.ts';
import { questionsPage, rowsPage } from './trial-pages.ts';
import type { Trial } from './trial-rows.ts';
import { trialRows } from './trial-rows.ts';

/** Rows on one page. */
const PAGE = 500;

/**
 * Writes what an import would do as pages to be read in a browser: the questions first, then every row of the sheet, 500 a page.
 * They hold private cells and lie under `private/`. Returns the first page.
 */
export async function writeTrial(folder: string, trial: Trial): Promise<string> {
  await rm(folder, { recursive: true, force: true });
  await makeFolder(folder);
  const rows = trialRows(trial);
  const pages = Math.ceil(rows.length / PAGE);
  const put = (name: string, html: string): Promise<void> => writeFile(join(folder, name), html, { mode: 0o600 });
  for (let page = 1; page <= pages; page += 1)
    await put(`rows-${page}.html`, rowsPage(rows.slice((page - 1) * PAGE, page * PAGE), page, pages));
  const first = join(folder, 'index.html');
  await put('index.html', questionsPage(trial, rows, PAGE));
  return first;
}
