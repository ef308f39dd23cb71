import { existsSync } from 'node:fs';
import process from 'node:process';
import { chromium } from 'playwright-core';
import type { Browser } from 'playwright-core';
import { BROWSERS } from '../../src/commands/test/missing-programs.ts';
import { serveFolder } from '../../src/commands/parts/serve-folder.ts';

/** A built folder, served, and a browser to open it with. */
export type OpenSite = { readonly address: string; readonly browser: Browser; readonly close: () => Promise<void> };

/** Starts Chromium: the one named by CHROMIUM, or Debian's. */
export function openBrowser(): Promise<Browser> {
  const executablePath = process.env['CHROMIUM'] ?? BROWSERS.find((path) => existsSync(path));
  if (executablePath === undefined)
    throw new Error('There is no Chromium here. Install it, or name it in the variable CHROMIUM.');
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}

/** Serves a built folder and starts Chromium. */
export async function openSite(folder: string, base = '/'): Promise<OpenSite> {
  const served = await serveFolder(folder, base, 0);
  if (!served.ok) throw new Error(served.problem);
  const browser = await openBrowser();
  return {
    address: served.value.address,
    browser,
    close: async () => {
      await browser.close();
      await served.value.close();
    },
  };
}
