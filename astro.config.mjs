import process from 'node:process';
import { defineConfig } from 'astro/config';
import { photographsInDev } from './src/photographs/cache/in-dev.ts';

// The address and the folder come from `src/commands/build.ts`, which reads them from the cabinet and its own flags.
export default defineConfig({
  site: process.env.SITE ?? 'http://localhost:4321',
  base: process.env.BASE ?? '/',
  outDir: process.env.OUT ?? './dist',
  // Each cabinet and each folder it is built into has a store of its own, so that two builds may go on side by side.
  cacheDir: process.env.STORE ?? './.cache/store',
  output: 'static',
  trailingSlash: 'always',
  // `data/pieces.json.ts` makes a file, every page a folder with an index.html.
  build: { format: 'directory', inlineStylesheets: 'never', concurrency: 8 },
  devToolbar: { enabled: false },
  integrations: [photographsInDev()],
  // One style sheet for all pages, fetched once: it is smaller than the eight that a page of a piece would ask for.
  vite: { build: { assetsInlineLimit: 0, cssCodeSplit: false } },
});
