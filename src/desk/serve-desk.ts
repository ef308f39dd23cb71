import { randomBytes } from 'node:crypto';
import { createServer } from 'node:http';
import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { getRequestListener } from '@hono/node-server';
import type { Hono } from 'hono';
import { ANSWER_HEADERS, isSecret, judgeRequest } from './judge-request.ts';

/** A desk that is open: the address that lets one browser in, once, and what closes it. */
export type OpenDesk = {
  readonly address: string;
  readonly port: number;
  readonly close: () => Promise<void>;
  /** Settles when it was closed, by hand or because nobody used it. */
  readonly closed: Promise<void>;
};

export type DeskShell = {
  /** The pages; handed the token that each of its forms carries. */
  readonly pages: (formToken: string, port: () => number) => Hono;
  /** Port 0 takes any that is free. */
  readonly port: number;
  /** After so long without a request it closes, in milliseconds. */
  readonly idle: number;
};

const FORM_TOKEN = 'form-token';

/** Opens the desk on this machine and for this machine alone. Throws what the machine says when the port is taken. */
export async function serveDesk({ pages, port, idle }: DeskShell): Promise<OpenDesk> {
  const [first, session, formToken] = [secret(), secret(), secret()];
  let at = port;
  let isFirstUsed = false;
  const app = pages(formToken, () => at);
  const answer = getRequestListener((request) => app.fetch(request), {
    hostname: '127.0.0.1',
    overrideGlobalObjects: false,
  });
  const server = createServer({ maxHeaderSize: 16_384, requestTimeout: 120_000, headersTimeout: 20_000 });
  let bell = setTimeout(close, idle);

  server.on('request', (request: IncomingMessage, response: ServerResponse) => {
    for (const [name, value] of Object.entries(ANSWER_HEADERS)) response.setHeader(name, value);
    const { method = '', url = '', headers } = request;
    const refused = judgeRequest({ method, url, headers, hosts: hostsIn(request) }, { port: at, session });
    if (refused !== null) {
      refuse(response, refused.status, refused.says);
      return;
    }
    clearTimeout(bell);
    bell = setTimeout(close, idle);
    if (url.startsWith('/open')) letIn(url, response);
    else void answer(request, response);
  });
  // What is no HTTP at all is not answered.
  server.on('clientError', (_, socket) => socket.destroy());
  server.on('upgrade', (_, socket) => socket.destroy());

  function letIn(url: string, response: ServerResponse): void {
    const token = new URLSearchParams(url.split('?')[1] ?? '').get('token');
    if (isFirstUsed || !isSecret(token, first)) {
      refuse(response, 403, 'This address has been used, or was never right. Close the desk and open it again.');
      return;
    }
    isFirstUsed = true;
    const cookie = `desk-${at}=${session}; HttpOnly; SameSite=Strict; Path=/`;
    response.writeHead(303, { 'Set-Cookie': cookie, Location: '/' }).end();
  }

  function close(): void {
    clearTimeout(bell);
    server.close();
    server.closeAllConnections();
  }

  const closed = new Promise<void>((done) => server.once('close', done));
  await listening(server, port);
  at = (server.address() as AddressInfo).port;
  return {
    address: `http://127.0.0.1:${at}/open?token=${first}`,
    port: at,
    closed,
    close: () => {
      close();
      return closed;
    },
  };
}

/** Whether a form carries the token of its desk. */
export function hasToken(form: { get: (name: string) => unknown }, token: string): boolean {
  const given = form.get(FORM_TOKEN);
  return typeof given === 'string' && isSecret(given, token);
}

function listening(server: Server, port: number): Promise<void> {
  return new Promise((done, fail) => {
    server.once('error', fail);
    server.listen(port, '127.0.0.1', done);
  });
}

function hostsIn({ rawHeaders }: IncomingMessage): number {
  return rawHeaders.filter((name, index) => index % 2 === 0 && name.toLowerCase() === 'host').length;
}

/** 256 bits by chance. */
function secret(): string {
  return randomBytes(32).toString('base64url');
}

function refuse(response: ServerResponse, status: number, says: string): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8', Connection: 'close' });
  response.end(`${says}\n`);
}
