import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import sirv from 'sirv';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';

export type Served = { readonly address: string; readonly close: () => Promise<void> };

/** The ports tried after the one asked for, when that is taken. */
const TRIES = 20;

/** Serves a built folder under its base path, to this machine only. Port 0 takes any free one. */
export async function serveFolder(folder: string, base: string, port: number): Promise<Outcome<Served>> {
  const files = sirv(folder, { dev: true, etag: true });
  const server = createServer((request, response) => {
    const path = request.url ?? '/';
    if (!path.startsWith(base)) {
      response.writeHead(path === '/' ? 302 : 404, path === '/' ? { Location: base } : {});
      response.end();
      return;
    }
    request.url = `/${path.slice(base.length)}`;
    files(request, response, () => {
      response.writeHead(404);
      response.end('There is no page here.');
    });
  });
  for (let tried = 0; tried < TRIES; tried += 1) {
    const error = await new Promise<NodeJS.ErrnoException | null>((settle) => {
      server.once('error', settle);
      server.listen(port === 0 ? 0 : port + tried, '127.0.0.1', () => {
        server.off('error', settle);
        settle(null);
      });
    });
    if (error === null) {
      const { port: taken } = server.address() as AddressInfo;
      return good({
        address: `http://localhost:${taken}${base}`,
        close: () => new Promise((done) => server.close(() => done())),
      });
    }
    if (error.code !== 'EADDRINUSE') return refuse(`The site could not be served: ${error.message}.`);
  }
  return refuse(`The ports ${port} to ${port + TRIES - 1} are all taken. Choose another with --port.`);
}
