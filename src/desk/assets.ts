import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { classicScript } from '../publish/offline-copy/classic-script.ts';

const SITE = fileURLToPath(new URL('../site', import.meta.url));
const HERE = fileURLToPath(new URL('.', import.meta.url));
const STYLES = ['fonts.css', 'tokens.css', 'base.css', 'named.css'];
const PACKAGE = '@fontsource/source-sans-3/files/';

const kept = new Map<string, Promise<Uint8Array<ArrayBuffer>>>();

/** A file that the pages of the desk load: the styles of the site with its own, its script, or a font. */
export function asset(name: string): Promise<Uint8Array<ArrayBuffer>> {
  const held = kept.get(name) ?? made(name);
  kept.set(name, held);
  return held;
}

async function made(name: string): Promise<Uint8Array<ArrayBuffer>> {
  if (name === 'desk.js') return bytes(await classicScript(join(HERE, 'islands/desk-islands.ts')));
  if (name === 'desk.css') {
    const site = await Promise.all(STYLES.map((file) => readFile(join(SITE, 'styles', file), 'utf8')));
    const own = await Promise.all(
      ['desk.css', 'laying.css', 'form/form.css'].map((file) => readFile(join(HERE, file), 'utf8')),
    );
    const layers = '@layer tokens, base, components;\n';
    const all = [...site, ...own].join('\n');
    return bytes(layers + all.replaceAll(PACKAGE, '/fonts/').replaceAll('../fonts/', '/fonts/'));
  }
  const font = name.replace(/^fonts\//, '');
  const own = await readFile(join(SITE, 'fonts', font)).catch(() => null);
  if (own !== null) return new Uint8Array(own);
  const faces = dirname(createRequire(import.meta.url).resolve('@fontsource/source-sans-3/package.json'));
  return new Uint8Array(await readFile(join(faces, 'files', font)));
}

function bytes(text: string): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(text);
}
