import { defineConfig } from 'astro/config';
import { shortScopes } from './src/site/short-scopes.ts';
import { photographsInDev } from './src/photographs/cache/in-dev.ts';

// The address and the folders are handed to Astro by the commands, which read them from the cabinet and their own flags.
export default defineConfig({
  site: 'http://localhost:4321',
  output: 'static',
  trailingSlash: 'always',
  // `data/pieces.json.ts` makes a file, every page a folder with an index.html.
  build: { format: 'directory', inlineStylesheets: 'never', concurrency: 8 },
  devToolbar: { enabled: false },
  integrations: [photographsInDev()],
  // One style sheet for all pages, fetched once: it is smaller than the eight that a page of a piece would ask for.
  // A script that imports another when it is needed says no more than that: so it can be made to run from a folder, too.
  vite: { plugins: [shortScopes()], build: { assetsInlineLimit: 0, cssCodeSplit: false, modulePreload: false } },
});
