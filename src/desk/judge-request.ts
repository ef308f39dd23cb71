import { createHash, timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders } from 'node:http';

/** What a request is judged by. */
export type Asked = {
  readonly method: string;
  /** As it came, before anything has been decoded. */
  readonly url: string;
  readonly headers: IncomingHttpHeaders;
  /** How many `Host` headers it had. */
  readonly hosts: number;
};

/** What the desk knows of itself: where it is, and the secret in the browser's cookie. */
export type DeskSecrets = { readonly port: number; readonly session: string };

/** Why a request is refused: a status, and a sentence for whoever sent it. */
export type Refused = { readonly status: 400 | 403 | 404 | 405 | 411 | 413; readonly says: string };

/** The largest form, and the largest one with photographs, in bytes. */
export const MOST_FORM = 2_000_000;
export const MOST_PICTURES = 80_000_000;
const MOST_ADDRESS = 4000;

/** Names of the read cabinet and of the desk's own files; never a path, an encoded sign or two slashes. */
const PATH = /^\/(?:[a-z0-9-]+(?:\/[a-z0-9-]+)*(?:\.(?:css|js|woff2|webp|jpg|pdf))?)?$/;

/**
 * Whether a request may be answered at all; null when it may. Against a page that rebinds its name to this machine the
 * host must be the exact one; against forms and pictures on other sites stand the cookie, which other sites do not send, and
 * for what changes something the exact origin. What a form changes wants the form's own token as well: see `isSecret`.
 */
export function judgeRequest({ method, url, headers, hosts }: Asked, { port, session }: DeskSecrets): Refused | null {
  if (hosts !== 1 || headers.host !== `127.0.0.1:${port}`)
    return { status: 403, says: `The desk is at http://127.0.0.1:${port}/ and under no other name.` };
  if (method !== 'GET' && method !== 'POST') return { status: 405, says: 'The desk takes no such request.' };
  const [path = ''] = url.split('?');
  if (url.length > MOST_ADDRESS || !PATH.test(path)) return { status: 404, says: 'There is no page here.' };
  const site = headers['sec-fetch-site'];
  const isFirst = method === 'GET' && path === '/open';
  if (site !== undefined && site !== 'same-origin' && !(method === 'GET' && site === 'none'))
    return { status: 403, says: 'Another site may not ask the desk for anything.' };
  if (isFirst) return null;
  if (!isSecret(cookieOf(headers.cookie, `desk-${port}`), session))
    return {
      status: 403,
      says: 'This browser has not been let in. Open the address that the desk printed; it works once.',
    };
  return method === 'POST' ? judgeBody(headers, port, path) : null;
}

function judgeBody(headers: IncomingHttpHeaders, port: number, path: string): Refused | null {
  if (headers.origin !== `http://127.0.0.1:${port}`)
    return { status: 403, says: 'Only a page of the desk may change something.' };
  const kind = (headers['content-type'] ?? '').split(';')[0]?.trim().toLowerCase();
  if (kind !== 'application/x-www-form-urlencoded' && kind !== 'multipart/form-data')
    return { status: 400, says: 'The desk takes forms and nothing else.' };
  const length = Number(headers['content-length'] ?? Number.NaN);
  if (!Number.isSafeInteger(length) || headers['transfer-encoding'] !== undefined)
    return { status: 411, says: 'The desk must be told how long a form is.' };
  const most = path.endsWith('/photographs') ? MOST_PICTURES : MOST_FORM;
  if (length > most) return { status: 413, says: `This is larger than ${most / 1e6} MB, and nothing of it was taken.` };
  return null;
}

/** Whether a text is the secret; how long that takes tells nothing of where they differ. */
export function isSecret(text: string | undefined | null, secret: string): boolean {
  const digest = (one: string): Buffer => createHash('sha256').update(one).digest();
  return timingSafeEqual(digest(text ?? ''), digest(secret)) && text === secret;
}

/** The one cookie of this name; undefined when there is none, or more than one. */
function cookieOf(header: string | undefined, name: string): string | undefined {
  const found = (header ?? '')
    .split(';')
    .map((one) => one.trim())
    .filter((one) => one.startsWith(`${name}=`));
  return found.length === 1 ? found[0]?.slice(name.length + 1) : undefined;
}

/** What every answer of the desk says to the browser. */
export const ANSWER_HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy': [
    "default-src 'none'",
    "style-src 'self'",
    "script-src 'self'",
    "img-src 'self' blob:",
    "font-src 'self'",
    "connect-src 'self'",
    "form-action 'self'",
    "frame-ancestors 'none'",
    "base-uri 'none'",
  ].join('; '),
  'Referrer-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Cache-Control': 'no-store',
};
