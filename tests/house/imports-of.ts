import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import ts from 'typescript';

/** Every file of `src` with code in it, and the files of `src` it imports: paths from the project on, type imports included. */
export type Imports = ReadonlyMap<string, readonly string[]>;

const ROOT = resolve(import.meta.dirname, '../..');
const CODE = /\.(?:ts|astro|mjs)$/;

export function importsOfSource(): Imports {
  const files = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
    .map((file) => join('src', file))
    .filter((file) => CODE.test(file));
  const known = new Set(files);
  return new Map(
    files.map((file) => [
      file,
      importsIn(file, readFileSync(join(ROOT, file), 'utf8')).filter((imported) => known.has(imported)),
    ]),
  );
}

/** The files that a text imports by a path, whether or not they are there. */
export function importsIn(file: string, text: string): readonly string[] {
  const code = file.endsWith('.astro') ? scriptsOf(text) : text;
  return ts
    .preProcessFile(code, true, true)
    .importedFiles.map(({ fileName }) => fileName.replace(/\?.*$/, ''))
    .filter((name) => name.startsWith('.'))
    .map((name) => join(dirname(file), name));
}

/** What is code in a page or a component: between its fences, and in its scripts. */
function scriptsOf(text: string): string {
  const fenced = /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '';
  return [fenced, ...[...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map(([, code]) => code ?? '')].join('\n');
}

/** The circles: sets of files of which each leads to each of the others, or files that import themselves (R. Tarjan, 1972). */
export function circlesIn(imports: Imports): readonly (readonly string[])[] {
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const open: string[] = [];
  const circles: string[][] = [];
  const visit = (file: string): void => {
    order.set(file, order.size);
    lowest.set(file, order.size - 1);
    open.push(file);
    for (const next of imports.get(file) ?? []) {
      if (!order.has(next)) visit(next);
      if (open.includes(next)) lowest.set(file, Math.min(lowest.get(file) ?? 0, lowest.get(next) ?? 0));
    }
    if (lowest.get(file) !== order.get(file)) return;
    const circle = open.splice(open.indexOf(file));
    if (circle.length > 1 || (imports.get(file) ?? []).includes(file)) circles.push(circle);
  };
  for (const file of imports.keys()) if (!order.has(file)) visit(file);
  return circles;
}
