import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8', '.css': 'text/css', '.js': 'text/javascript', '.json': 'application/json',
  '.jsonld': 'application/ld+json', '.csv': 'text/csv; charset=utf-8', '.xml': 'application/xml', '.svg': 'image/svg+xml',
  '.webp': 'image/webp', '.jpg': 'image/jpeg', '.png': 'image/png', '.woff2': 'font/woff2', '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
}; // prettier-ignore

type Rule = { readonly path: string; readonly headers: readonly (readonly [string, string])[] };
type Redirect = { readonly from: string; readonly to: string; readonly status: number };

/** The rules of a `_headers` file: a path at the margin, its headers below it; `*` at the end stands for anything. */
function headerRules(text: string): readonly Rule[] {
  const blocks = text.split(/\n(?=\S)/).filter((block) => block.trim() !== '');
  return blocks.map((block) => {
    const [path = '', ...lines] = block.trimEnd().split('\n');
    return { path, headers: lines.map((line) => (/^\s+([^:]+):\s*(.*)$/.exec(line)?.slice(1) ?? []) as [string, string]) };
  }); // prettier-ignore
}

function redirects(text: string): readonly Redirect[] {
  return text.split('\n').flatMap((line) => {
    const [from, to, status] = line.trim().split(/\s+/);
    return from === undefined || to === undefined ? [] : [{ from, to, status: Number(status ?? 302) }];
  });
}

const matches = (rule: string, path: string): boolean =>
  rule.endsWith('*') ? path.startsWith(rule.slice(0, -1)) : rule === path;

const textOf = (file: string): Promise<string> => readFile(file, 'utf8').catch(() => '');

/** A plain server of static files, as a host has them: a built site under `base`, with its `_headers` and `_redirects`. */
export async function plainHost(
  built: string,
  base: string,
): Promise<{ readonly origin: string; readonly close: () => void }> {
  const rules = headerRules(await textOf(join(built, '_headers')));
  const moved = redirects(await textOf(join(built, '_redirects')));
  const answer = async (path: string, response: ServerResponse): Promise<void> => {
    for (const { headers } of rules.filter((rule) => matches(rule.path, path)))
      for (const [name, value] of headers) response.setHeader(name, value);
    const inside = path.startsWith(base) ? normalize(path.slice(base.length)) : '..';
    const named = join(built, inside, path.endsWith('/') ? 'index.html' : '');
    const isFile = !inside.startsWith('..') && (await stat(named).then((found) => found.isFile(), () => false)); // prettier-ignore
    // A host that knows the list looks there first; of what has a `*`, it serves what is there.
    const redirect = moved.find(({ from }) => matches(from, path));
    if (redirect !== undefined && !(isFile && redirect.from.endsWith('*'))) {
      const rest = path.slice(redirect.from.length - 1);
      return void response.writeHead(redirect.status, { Location: redirect.to.replace(':splat', rest) }).end();
    }
    const file = isFile ? named : join(built, '404.html');
    response.writeHead(isFile ? 200 : 404, { 'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream' });
    response.end(await readFile(file));
  };
  const server = createServer((request, response) => {
    void answer(decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname), response);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    origin: `http://127.0.0.1:${String((server.address() as AddressInfo).port)}`,
    close: () => void server.close(),
  };
}
