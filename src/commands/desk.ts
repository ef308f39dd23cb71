import { spawn } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { good, refuse } from '../core/outcome.ts';
import { openCabinet } from '../desk/cabinet-state.ts';
import { deskPages } from '../desk/routes.ts';
import { serveDesk } from '../desk/serve-desk.ts';
import type { Built, DeskTools } from '../desk/tools.ts';
import { nextNumber } from './add/new-piece.ts';
import { endWith, readWords } from './parts/command-line.ts';
import { serveFolder } from './parts/serve-folder.ts';

const HELP = `npm run desk                        edit the cabinet in content/ in a browser, on this machine alone

  --port 4400                       another port than the first that is free
  --browse                        open it in the usual browser of this machine
  --out DIR                         where the site is built; without it, dist
  --cabinet DIR                     another cabinet

The address that is printed lets one browser in, once. Ctrl+C closes the desk; so do two hours in which nobody uses it.
`;
/** Two hours. */
const IDLE = 2 * 60 * 60 * 1000;

const { values, positionals, cabinet } = readWords(HELP, {
  port: { type: 'string' },
  browse: { type: 'boolean' },
  'made-by': { type: 'string' },
  out: { type: 'string' },
  cabinet: { type: 'string' },
});
if (positionals.length > 0)
  endWith(`"${positionals[0]}" belongs to no flag. Write --help to see what this command takes.`);
const port = values.port === undefined ? 0 : Number(values.port);
if (!Number.isInteger(port) || port < 0 || port > 65_535)
  endWith(`--port takes a number up to 65535; this says "${values.port}".`);
if (values['made-by'] !== undefined && (await isOlderThan(values['made-by'])))
  endWith(
    `This cabinet was made by version ${values['made-by']} of the program, and this is an older one. Open it with the newer one.`,
  );
const out = resolve(values.out ?? 'dist');

const state = await openCabinet(cabinet.at);
if (state === null) endWith(`There is no cabinet at ${cabinet.shown}. Begin one: npm run begin -- ${cabinet.shown}`);
const into = (what: Built): string => (what === 'site' ? out : `${out}-${what.replaceAll(' ', '-')}`);
const served: { close?: () => Promise<void> } = {};
const tools: DeskTools = {
  nextNumber,
  into,
  build: (what, tell) =>
    new Promise((done) => {
      const more = what === 'site' ? [] : ['--copy', ...(what === 'copy' ? [] : ['--unlisted'])];
      const command = fileURLToPath(new URL('build.ts', import.meta.url));
      const child = spawn(process.execPath, [command, '--cabinet', cabinet.at, '--out', into(what), ...more], {
        stdio: ['ignore', 'pipe', 'pipe'],
      });
      let said = '';
      for (const stream of [child.stdout, child.stderr])
        stream.setEncoding('utf8').on('data', (text: string) => {
          said += text;
          tell(
            text
              .trim()
              .split(/[\r\n]+/)
              .at(-1) ?? '',
          );
        });
      child.once('error', (error) => done(refuse(error.message)));
      child.once('close', (code) => done(code === 0 ? good(said.trim()) : refuse(said.trim())));
    }),
  preview: async () => {
    await served.close?.();
    const site = await serveFolder(out, '/', 0);
    if (!site.ok) return site;
    served.close = site.value.close;
    return good(site.value.address);
  },
};
const desk = await serveDesk({ pages: (token) => deskPages(state, token, tools), port, idle: IDLE }).catch(
  (error: unknown) =>
    endWith(
      `The desk cannot be opened${error instanceof Error && 'code' in error && error.code === 'EADDRINUSE' ? `: port ${port} is taken. Choose another with --port` : ''}.`,
    ),
);
process.stdout.write(
  `The desk of ${join(cabinet.shown)} is open, for this machine alone. Open this address once, in one browser:\n  ${desk.address}\n`,
);
if (values.browse === true) browse(desk.address);
process.once('SIGINT', () => void desk.close());
process.once('SIGTERM', () => void desk.close());
await desk.closed;
await served.close?.();
await state.close();
process.stdout.write('The desk is closed.\n');
process.exit(0);

/** Whether this program is older than the one of that version. */
async function isOlderThan(version: string): Promise<boolean> {
  const file = new URL('../../package.json', import.meta.url);
  const own = (JSON.parse(await readFile(file, 'utf8')) as { readonly version: string }).version;
  return own.localeCompare(version, 'en', { numeric: true }) < 0;
}

/** Opens an address in the usual browser of the machine; where that fails, the address is printed anyway. */
function browse(address: string): void {
  const [command, words] =
    process.platform === 'win32'
      ? (['cmd', ['/c', 'start', '', address]] as const)
      : ([process.platform === 'darwin' ? 'open' : 'xdg-open', [address]] as const);
  const child = spawn(command, words, { stdio: 'ignore', detached: true });
  child.once('error', () => undefined);
  child.unref();
}
