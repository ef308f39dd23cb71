import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

// The framework's own loader and cache, and eight pages at once, as here: nothing but a title and a text on each page. The cache
// goes with its site: among the packages, which are linked, it would be there for the next that is built from nothing.
const CONFIG = `export default {
  cacheDir: './kept',
  trailingSlash: 'always',
  build: { concurrency: 8 },
  devToolbar: { enabled: false },
  experimental: { incrementalBuild: true },
};
`;
const PAGE = `---
import { readFileSync } from 'node:fs';
import { createHash } from 'node:crypto';

export function getStaticPaths() {
  const all = JSON.parse(readFileSync('pages.json', 'utf8'));
  return all.map((page) => ({
    params: { id: page.id },
    props: { page },
    cacheKey: createHash('sha256').update(JSON.stringify(page)).digest('hex'),
  }));
}

const { page } = Astro.props;
---

<!doctype html>
<html lang="en">
  <head><meta charset="utf-8" /><title>{page.title}</title></head>
  <body><h1>{page.title}</h1>{page.texts.map((text) => <p>{text}</p>)}</body>
</html>
`;
const BUILD = `import { build } from 'astro';
process.env.ASTRO_TELEMETRY_DISABLED = '1';
await build({ root: process.cwd(), logLevel: 'error' });
`;

/** Writes a project of Astro alone with so many pages of about so many bytes; `node build.mjs` in it builds it. */
export function writeBareSite(folder: string, pages: number, bytes: number): void {
  mkdirSync(join(folder, 'src/pages'), { recursive: true });
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'), 'junction');
  writeFileSync(join(folder, 'astro.config.mjs'), CONFIG);
  writeFileSync(join(folder, 'package.json'), '{ "type": "module", "private": true }\n');
  writeFileSync(join(folder, 'package-lock.json'), '{}\n');
  writeFileSync(join(folder, 'src/pages/[id].astro'), PAGE);
  writeFileSync(join(folder, 'build.mjs'), BUILD);
  writePages(folder, pages, bytes, 'first');
}

/** Writes what the pages say; of the first page it says `word`. */
export function writePages(folder: string, pages: number, bytes: number, word: string): void {
  const text = 'crowned facing bust, long cross, three pellets in each angle of it '.repeat(7);
  const texts = (at: number): readonly string[] =>
    Array.from({ length: Math.max(1, Math.round(bytes / (text.length + 10))) }, (_, line) => `${at} ${line} ${text}`);
  const all = Array.from({ length: pages }, (_, at) => ({
    id: `page-${at}`,
    title: at === 0 ? word : `Page ${at}`,
    texts: texts(at),
  }));
  writeFileSync(join(folder, 'pages.json'), JSON.stringify(all));
}
