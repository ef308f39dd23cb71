import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { GROUND, webManifest } from '../../src/site/models/shared/browser-frame.ts';
import { wholeCabinet } from './whole-cabinet.ts';

test('the browser is told the ground of the page by day and by night, as tokens.css has it', async () => {
  const tokens = await readFile('src/site/styles/tokens.css', 'utf8');
  const night = tokens.indexOf('prefers-color-scheme: dark');
  for (const [colour, within] of [
    [GROUND.light, tokens.slice(0, night)],
    [GROUND.dark, tokens.slice(night)],
  ] as const) {
    const raw = /--ground: var\((--[a-z0-9-]+)\)/.exec(within)?.[1] ?? '';
    expect(tokens).toContain(`${raw}: ${colour};`);
  }
});

// W3C, Web Application Manifest, §1: every member below is a text; start_url is within scope, and icons are found from the site.
test('the manifest names the cabinet and stays below its folder', async () => {
  const manifest = webManifest(await wholeCabinet('tests/cabinets/marked')) as Readonly<Record<string, unknown>> & {
    readonly icons: readonly { readonly src: string; readonly sizes: string }[];
  };
  expect(manifest).toMatchObject({ start_url: '/', scope: '/', display: 'browser' });
  expect(manifest['name']).toMatch(/./);
  for (const { src, sizes } of manifest.icons) {
    const file = await sharp(`public${src}`).metadata();
    if (sizes !== 'any') expect(`${file.width}x${file.height}`).toBe(sizes);
  }
});

describe.for(['touch-icon.png', 'icon-512.png'])('%s', (name) => {
  test('is the icon drawn on the ground of a page, to the edge, for a mask of any shape, and holds pixels alone', async () => {
    const { data, info } = await sharp(`public/${name}`).removeAlpha().raw().toBuffer({ resolveWithObject: true });
    const wanted = await drawn(info.width);
    let off = 0;
    for (const [at, value] of wanted.entries()) off += Math.abs(value - (data[at] ?? 0));
    expect(off / wanted.length).toBeLessThan(1);
    expect((await readFile(`public/${name}`)).toString('latin1')).not.toMatch(/tEXt|iTXt|eXIf|tIME/);
  });
});

/** The icon by day, within the middle four fifths that no mask cuts (W3C manifest, §1.10.2, safe zone). */
async function drawn(size: number): Promise<Buffer> {
  const inner = Math.round(size * 0.76);
  const icon = await sharp('public/icon.svg', { density: 1200 }).resize(inner, inner).png().toBuffer();
  const edge = Math.floor((size - inner) / 2);
  return sharp({ create: { width: size, height: size, channels: 3, background: '#eef3f4' } })
    .composite([{ input: icon, left: edge, top: edge }])
    .removeAlpha()
    .raw()
    .toBuffer();
}
