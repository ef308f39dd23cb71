import { spawn } from 'node:child_process';
import { globSync } from 'node:fs';
import { createServer } from 'node:net';
import process from 'node:process';
import puppeteer from 'puppeteer-core';

/** A page in one of three engines: what the tests of all engines ask of it, and no more. */
export type EnginePage = {
  readonly open: (address: string) => Promise<void>;
  /** Runs an expression in the page; a promise is waited for. */
  readonly read: <T>(expression: string) => Promise<T>;
  /** Presses the middle of the first thing that the selector names, as a mouse does. */
  readonly press: (selector: string) => Promise<void>;
  /** Keys as a keyboard sends them, into what has the focus. */
  readonly type: (text: string) => Promise<void>;
  /** What the window shows, as PNG. */
  readonly picture: () => Promise<Buffer>;
  readonly close: () => Promise<void>;
};
export type EngineName = 'Chromium' | 'Firefox' | 'WebKit';
export const ENGINES: readonly EngineName[] = ['Chromium', 'Firefox', 'WebKit'];
type Window = { readonly width: number; readonly height: number };

/** Starts an engine with one page. Debian's packages `chromium`, `firefox-esr`, `webkit2gtk-driver` and `xvfb` are needed. */
export function openEngine(name: EngineName, window: Window): Promise<EnginePage> {
  return name === 'WebKit' ? openWebKit(window) : openByBiDi(name, window);
}

async function openByBiDi(name: 'Chromium' | 'Firefox', { width, height }: Window): Promise<EnginePage> {
  const isFirefox = name === 'Firefox';
  const browser = await puppeteer.launch({
    browser: isFirefox ? 'firefox' : 'chrome',
    executablePath: isFirefox ? '/usr/bin/firefox-esr' : '/usr/bin/chromium',
    args: isFirefox ? [] : ['--no-sandbox', '--disable-gpu'],
    defaultViewport: { width, height },
  });
  const [page = await browser.newPage()] = await browser.pages();
  await page.setViewport({ width, height });
  return {
    open: async (address) => {
      await page.goto(address, { waitUntil: 'load' });
    },
    read: async <T>(expression: string) => (await page.evaluate(expression)) as T,
    press: (selector) => page.locator(selector).click(),
    type: (text) => page.keyboard.type(text),
    picture: async () => Buffer.from(await page.screenshot()),
    close: () => browser.close(),
  };
}

/** The key under which WebDriver hands out elements (W3C WebDriver, section 11, web element identifier). */
const ELEMENT = 'element-6066-11e4-a52e-4f735466cecf';

async function openWebKit({ width, height }: Window): Promise<EnginePage> {
  const port = await freePort();
  const driver = spawn('xvfb-run', ['-a', '-s', '-screen 0 1600x1400x24', 'WebKitWebDriver', `--port=${port}`], {
    // A group of its own, so that the screen and the browser end with it.
    detached: true,
    stdio: 'ignore',
    env: { ...process.env, WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1' },
  });
  const ask = async (method: string, path: string, body?: object): Promise<unknown> => {
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    const { value } = (await answer.json()) as { value: unknown };
    if (!answer.ok) throw new Error(`WebKit at ${path}: ${JSON.stringify(value)}`);
    return value;
  };
  await untilReady(ask);
  const options = { binary: miniBrowser(), args: ['--automation'] };
  const begun = (await ask('POST', '/session', {
    capabilities: { alwaysMatch: { browserName: 'MiniBrowser', 'webkitgtk:browserOptions': options } },
  })) as { sessionId: string };
  const at = `/session/${begun.sessionId}`;
  const find = async (value: string): Promise<string> => {
    const found = (await ask('POST', `${at}/element`, { using: 'css selector', value })) as Record<string, string>;
    return found[ELEMENT] ?? '';
  };
  await ask('POST', `${at}/window/rect`, { width, height });
  return {
    open: async (url) => {
      await ask('POST', `${at}/url`, { url });
    },
    read: async <T>(expression: string) =>
      (await ask('POST', `${at}/execute/sync`, { script: `return (${expression})`, args: [] })) as T,
    press: async (selector) => {
      await ask('POST', `${at}/element/${await find(selector)}/click`, {});
    },
    type: async (text) => {
      await ask('POST', `${at}/element/${await find(':focus')}/value`, { text });
    },
    picture: async () => Buffer.from(String(await ask('GET', `${at}/screenshot`)), 'base64'),
    close: async () => {
      await ask('DELETE', at).catch(() => undefined);
      if (driver.pid !== undefined) process.kill(-driver.pid);
    },
  };
}

async function untilReady(ask: (method: string, path: string) => Promise<unknown>): Promise<void> {
  for (let tries = 0; tries < 600; tries++) {
    const status = await ask('GET', '/status').catch(() => null);
    if ((status as { ready?: boolean } | null)?.ready === true) return;
    await new Promise((next) => setTimeout(next, 100));
  }
  throw new Error('WebKitWebDriver did not start. Debian has it as webkit2gtk-driver, and xvfb-run as xvfb.');
}

/** The small browser that comes with the driver, wherever the architecture puts it. */
function miniBrowser(): string {
  const [found] = globSync('/usr/lib/*/webkit2gtk-4.*/MiniBrowser');
  if (found === undefined) throw new Error('There is no MiniBrowser here. Debian has it in libwebkit2gtk.');
  return found;
}

function freePort(): Promise<number> {
  return new Promise((found, failed) => {
    const server = createServer();
    server.once('error', failed);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => found(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });
}
