import { appendFile, cp, mkdtemp, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import type OpenSeadragon from 'openseadragon';
import { expect, test } from 'vitest';
import { buildInto } from '../built/build-into.ts';
import { builtFiles } from '../built/site-links.ts';
import { openBrowser } from './open-site.ts';

const viewerScript = createRequire(import.meta.url).resolve('openseadragon/build/openseadragon/openseadragon.min.js');
const SITE = 'https://example.org/marked/';

/** A cabinet that wants tiles, with one photograph of a listed piece and one of an unlisted. */
async function builtWithTiles(): Promise<string> {
  const cabinet = join(await mkdtemp(join(tmpdir(), 'tiled-')), 'cabinet');
  await cp('tests/cabinets/marked', cabinet, { recursive: true });
  for (const piece of ['plain-penny', 'unlisted-groat'])
    await cp('content/pieces/york-penny-3b/obverse.jpg', join(cabinet, 'pieces', piece, 'obverse.jpg'));
  await appendFile(join(cabinet, 'cabinet.yaml'), 'tiles: yes\n');
  return buildInto({ cabinet });
}

type Body = { readonly id: string; readonly width: number; readonly service: readonly { readonly id: string }[] };

test(
  'a viewer of another site opens the tiles that a manifest names, whole and close',
  { timeout: 300_000 },
  async () => {
    const built = await builtWithTiles();
    const manifest = await readFile(join(built, 'data/iiif/plain-penny/manifest.json'), 'utf8');
    const [, body = ''] = /"body":(\{.*?\}\]\})/.exec(manifest) ?? [];
    const { id, width, service } = JSON.parse(body) as Body;
    const tiles = service[0]?.id ?? expect.fail('the manifest names no tiles');
    expect(id).toBe(`${tiles}/full/max/0/default.jpg`);
    expect(width).toBeGreaterThan(512);
    expect(
      (await builtFiles(built)).filter((file) => /unlisted-groat.*(?:default\.jpg|info\.json)/.test(file)),
    ).toEqual([]);

    const browser = await openBrowser();
    try {
      const page = await browser.newPage({ viewport: { width: 600, height: 600 } });
      const asked: string[] = [];
      const lost: string[] = [];
      const types: Readonly<Record<string, string>> = { '.json': 'application/json', '.jpg': 'image/jpeg' };
      await page.route(`${SITE}**`, async (route) => {
        const path = decodeURIComponent(route.request().url()).slice(SITE.length);
        const bytes = await readFile(join(built, path)).catch(() => null);
        (bytes === null ? lost : asked).push(path);
        const headers = { 'Access-Control-Allow-Origin': '*' };
        await (bytes === null
          ? route.fulfill({ status: 404 })
          : route.fulfill({ body: bytes, contentType: types[extname(path)] ?? 'text/plain', headers }));
      });
      // The viewer stands on another site than the pictures.
      await page.route('https://viewer.example/', (route) =>
        route.fulfill({ contentType: 'text/html', body: '<div id="viewer" style="height: 600px"></div>' }),
      );
      await page.goto('https://viewer.example/');
      await page.addScriptTag({ path: viewerScript });
      await page.evaluate(async (info) => {
        const open = (globalThis as unknown as { OpenSeadragon: typeof OpenSeadragon }).OpenSeadragon;
        const viewer = open({
          id: 'viewer',
          tileSources: [info],
          showNavigationControl: false,
          crossOriginPolicy: 'Anonymous',
        });
        const loaded = async () => {
          while (!viewer.world.getItemAt(0).getFullyLoaded()) await new Promise((done) => setTimeout(done, 20));
        };
        await new Promise((done) => viewer.addHandler('open', done));
        await loaded();
        viewer.viewport.zoomTo(viewer.viewport.getMaxZoom(), undefined, true);
        await new Promise((done) => setTimeout(done, 100));
        await loaded();
      }, `${tiles}/info.json`);
      expect(lost).toEqual([]);
      const folder = tiles.slice(SITE.length);
      // The whole picture in small, and a part of it at its own size.
      expect(asked.some((path) => new RegExp(`^${folder}/full/\\d+,\\d+/0/default\\.jpg$`).test(path))).toBe(true);
      expect(
        asked.some((path) => new RegExp(`^${folder}/\\d+,\\d+,\\d+,\\d+/\\d+,\\d+/0/default\\.jpg$`).test(path)),
      ).toBe(true);
      expect(await page.locator('#viewer canvas').count()).toBeGreaterThan(0);
    } finally {
      await browser.close();
    }
  },
);
