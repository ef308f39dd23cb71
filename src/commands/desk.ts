import { spawn } from 'node:child_process';
import { join, relative, resolve } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { reignsOf } from '../catalogue/reigns.ts';
import { good, refuse } from '../core/outcome.ts';
import { openCabinet } from '../desk/cabinet-state.ts';
import { deskPages } from '../desk/desk-pages.ts';
import { serveDesk } from '../desk/serve-desk.ts';
import type { DeskTools } from '../desk/tools.ts';
import { nextNumber } from './add/new-piece.ts';
import { readAloud } from './add/questions.ts';
import { endWith, readWords } from './parts/command-line.ts';
import { serveFolder } from './parts/serve-folder.ts';

const HELP = `npm run desk                        edit the cabinet in content/ in a browser, on this machine alone

  --port 4400                       another port than the first that is free
  --out DIR                         where the site is built; without it, dist
  --cabinet DIR                     another cabinet

The address that is printed lets one browser in, once. Ctrl+C closes the desk; so do two hours in which nobody uses it.
`;
/** Two hours. */
const IDLE = 2 * 60 * 60 * 1000;

const { values, positionals, cabinet } = readWords(HELP, {
  port: { type: 'string' },
  out: { type: 'string' },
  cabinet: { type: 'string' },
});
if (positionals.length > 0)
  endWith(`"${positionals[0]}" belongs to no flag. Write --help to see what this command takes.`);
const port = values.port === undefined ? 0 : Number(values.port);
if (!Number.isInteger(port) || port < 0 || port > 65_535)
  endWith(`--port takes a number up to 65535; this says "${values.port}".`);
const out = resolve(values.out ?? 'dist');

const state = await openCabinet(cabinet.at);
if (state === null) endWith(`There is no cabinet at ${cabinet.shown}. Begin one: npm run begin -- ${cabinet.shown}`);
const served: { close?: () => Promise<void> } = {};
const tools: DeskTools = {
  readAloud: (as, text, records, { scale }) =>
    readAloud(
      { flag: as, reads: as },
      text,
      {
        reigns: records.rulers.flatMap(reignsOf),
        works: records.works.map(({ id, fields }) => ({
          id,
          names: fields.short === undefined ? [] : [fields.short],
          title: fields.title,
        })),
      },
      scale,
    ),
  nextNumber,
  out: relative(process.cwd(), out) || '.',
  build: (tell) =>
    new Promise((done) => {
      const command = fileURLToPath(new URL('build.ts', import.meta.url));
      const child = spawn(process.execPath, [command, '--cabinet', cabinet.at, '--out', out], {
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
process.once('SIGINT', () => void desk.close());
process.once('SIGTERM', () => void desk.close());
await desk.closed;
await served.close?.();
await state.close();
process.stdout.write('The desk is closed.\n');
process.exit(0);
