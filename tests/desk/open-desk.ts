import { cp, mkdtemp } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openCabinet } from '../../src/desk/cabinet-state.ts';
import type { CabinetState } from '../../src/desk/cabinet-state.ts';
import { deskPages } from '../../src/desk/routes.ts';
import { serveDesk } from '../../src/desk/serve-desk.ts';
import type { OpenDesk } from '../../src/desk/serve-desk.ts';
import type { DeskTools } from '../../src/desk/tools.ts';
import { good } from '../../src/core/outcome.ts';

export const TOOLS: DeskTools = {
  nextNumber: (numbers) => String(numbers.length + 1),
  build: (what) => Promise.resolve(good(`built the ${what}`)),
  preview: () => Promise.resolve(good('http://127.0.0.1:1/')),
  into: (what) => (what === 'site' ? 'dist' : `dist-${what.replaceAll(' ', '-')}`),
};

export type Answer = {
  readonly status: number;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly text: string;
};
export type Sent = {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
};

export type TestDesk = {
  readonly at: string;
  readonly state: CabinetState;
  readonly open: OpenDesk;
  readonly host: string;
  /** The cookie of the browser that was let in. */
  readonly cookie: string;
  /** Sends exactly what is said, the path as it stands. */
  readonly send: (path: string, sent?: Sent) => Promise<Answer>;
  /** Sends what the browser that was let in would send. */
  readonly ask: (path: string, form?: URLSearchParams) => Promise<Answer>;
  readonly close: () => Promise<void>;
};

/** A desk over a copy of a cabinet, with one browser let in. */
export async function openTestDesk(cabinet: string, idle = 60_000): Promise<TestDesk> {
  const at = join(await mkdtemp(join(tmpdir(), 'desk-')), 'cabinet');
  await cp(cabinet, at, { recursive: true, filter: (from) => !from.endsWith('.jpg') });
  const state = await openCabinet(at, { pause: 600_000 });
  if (state === null) throw new Error(`There is no cabinet ${cabinet}.`);
  const open = await serveDesk({ pages: (token) => deskPages(state, token, TOOLS), port: 0, idle });
  const host = `127.0.0.1:${open.port}`;
  const send = (path: string, { method = 'GET', headers = {}, body }: Sent = {}): Promise<Answer> =>
    new Promise((done, fail) => {
      const asked = request(
        { host: '127.0.0.1', port: open.port, path, method, agent: false, headers: { host, ...headers } },
        (got) => {
          let text = '';
          got.setEncoding('utf8');
          got.on('data', (part: string) => (text += part));
          got.on('end', () => done({ status: got.statusCode ?? 0, headers: got.headers, text }));
        },
      );
      asked.on('error', fail);
      asked.end(body);
    });
  const first = await send(open.address.slice(`http://${host}`.length));
  const cookie = String((first.headers['set-cookie'] as readonly string[] | undefined)?.[0]?.split(';')[0]);
  const ask: TestDesk['ask'] = (path, form) =>
    form === undefined
      ? send(path, { headers: { cookie, 'sec-fetch-site': 'same-origin' } })
      : send(path, {
          method: 'POST',
          headers: { cookie, ...formHeaders(host, form.toString()) },
          body: form.toString(),
        });
  return {
    at, state, open, host, cookie, send, ask,
    close: async () => {
      await open.close();
      await state.close();
    },
  }; // prettier-ignore
}

/** The headers that a browser sends with a form of the desk's own page. */
export function formHeaders(host: string, body: string): Readonly<Record<string, string>> {
  return {
    origin: `http://${host}`,
    'sec-fetch-site': 'same-origin',
    'content-type': 'application/x-www-form-urlencoded',
    'content-length': String(Buffer.byteLength(body)),
  };
}
