import { defineConfig } from 'astro/config';
import { shortScopes } from './src/site/short-scopes.ts';
import { photographsInDev } from './src/photographs/cache/in-dev.ts';

// A script that imports another when it is needed says no more than that. What fetches the other's own imports beforehand
// throws in a copy that opens from a folder; Astro takes the setting from an environment alone.
const plainImports = { name: 'plain-imports', configEnvironment: () => ({ build: { modulePreload: false } }) };

// What finds pieces is one file: one a module was a chain of five requests, each waiting for the one before. What reads measures
// is three times as large, and asked for when a measure is.
const FINDER =
  /src\/site\/(?:find\/(?!read-measure)|islands\/(?:find-pieces|lay-found|read-json))|core\/legends\/match-mask|fuse\.js/;
// Vite's helper for late imports has a file of its own: among the finder's it brought the finder to every visitor of the list.
const finderInOne = {
  codeSplitting: {
    groups: [
      { name: 'late', test: /preload-helper/, priority: 1 },
      { name: 'find', test: FINDER },
    ],
  },
};

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
  vite: {
    plugins: [shortScopes(), plainImports],
    build: { assetsInlineLimit: 0, cssCodeSplit: false },
    environments: { client: { build: { rolldownOptions: { output: finderInOne } } } },
  },
});
