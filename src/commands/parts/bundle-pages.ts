import { readdirSync } from 'node:fs';
import { rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import type { AstroIntegration } from 'astro';
import type { PagesProgram, StyledPage } from './pages-program.ts';
import { PARTS } from './pages-program.ts';

// A process of its own, whose memory ends with it: has Astro bundle the pages for one place on the web, and makes no page.
const [folder = '', site = '', base = ''] = process.argv.slice(2);
const files = join(folder, PARTS.files);
let pages: ReadonlyMap<string, Omit<StyledPage, 'key'>> = new Map();

const keepBundle: AstroIntegration = {
  name: 'keep-bundle',
  hooks: {
    // The styles of each page are filled in while bundling goes on.
    'astro:build:setup': (setup) => {
      pages = setup.pages;
    },
    'astro:build:start': ({ setPrerenderer }) =>
      setPrerenderer((usual) => ({
        name: 'keep-bundle',
        setup: () => rename(join(files, '.prerender'), join(folder, PARTS.program)),
        getStaticPaths: () => Promise.resolve([]),
        render: usual.render,
      })),
  },
};

// Astro takes variables of these names for its own settings; a shell or a test runner may have set them.
for (const name of ['SITE', 'BASE_URL', 'ASSETS_PREFIX', 'DEV', 'PROD', 'MODE', 'SSR'])
  Reflect.deleteProperty(process.env, name);
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
// Astro takes any other word here for a site in the making, whose pages let the tool's own scripts in.
process.env['NODE_ENV'] = 'production';
const { build } = await import('astro');
const cacheDir = join(folder, 'astro');
await build({ site, base, outDir: files, cacheDir, logLevel: 'error', integrations: [keepBundle] });

const entry = readdirSync(join(folder, PARTS.program)).find((name) => /^prerender-entry.*\.mjs$/.test(name));
if (entry === undefined) throw new Error('Astro bundled no pages.');
const styled = [...pages].map(([key, { route, component, styles }]): StyledPage => ({ key, route, component, styles }));
const program: PagesProgram = { entry, pages: styled };
await writeFile(join(folder, PARTS.told), JSON.stringify(program));
