// A thread that tries mutants of one file, one after the other: for each, the modules that may come to it are loaded anew, under
// addresses of their own, and the tests run on them. All else is loaded once. Tells of each mutant the test that noticed it.
import { readFileSync } from 'node:fs';
import { registerHooks, stripTypeScriptTypes } from 'node:module';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parentPort, workerData } from 'node:worker_threads';

const { file, texts, tests, again, from } = workerData;
const addressOf = (path) => pathToFileURL(join(process.cwd(), path)).href;
const BARE = addressOf('tests/oracle/bare-test.mjs');
const AGAIN = again.map(addressOf);
/** What the runner of tests sets for every module; the variables of the process stand beside it, so that a test may change them. */
Object.assign(process.env, { MODE: 'test', DEV: '1', PROD: '', SSR: '1', BASE_URL: '/' });
const ENVIRONMENT = 'import.meta.env = globalThis.process.env; ';
const stripped = new Map();
let turn = 0;

registerHooks({
  resolve(name, context, next) {
    const found = name === 'vitest' ? { url: BARE, shortCircuit: true } : next(name, context);
    const [url] = found.url.split('?');
    return AGAIN.some((start) => url.startsWith(start)) ? { ...found, url: `${url}?turn=${turn}` } : found;
  },
  load(url, context, next) {
    const [plain] = url.split('?');
    if (!AGAIN.some((start) => plain.startsWith(start)) || !plain.endsWith('.ts')) return next(url, context);
    const isMutant = plain === addressOf(file) && texts[turn] !== null;
    if (!isMutant && !stripped.has(plain))
      stripped.set(plain, stripTypeScriptTypes(readFileSync(fileURLToPath(plain), 'utf8')));
    const source = isMutant ? stripTypeScriptTypes(texts[turn]) : stripped.get(plain);
    return { format: 'module', source: ENVIRONMENT + source, shortCircuit: true };
  },
});

for (turn = from; turn < texts.length; turn += 1) parentPort.postMessage({ turn, noticed: await notice() });

async function notice() {
  try {
    const { firstFailure } = await import(BARE);
    for (const path of tests) {
      await import(addressOf(path));
      const failed = await firstFailure();
      if (failed !== null) return `${path}: ${failed}`;
    }
    return null;
  } catch (error) {
    return `it does not load: ${String(error?.message ?? error).split('\n')[0]}`;
  }
}
