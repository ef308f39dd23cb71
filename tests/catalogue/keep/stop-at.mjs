// Makes the disk stop at the n-th thing that is changed on it under a folder. As a program's first import (node --import) it is
// set by STOP_IN, STOP_AT and STOP_HOW, and writes how many there were into STOP_COUNT; a test calls `stopAt`.
//   kill    ends the process as a cut of the power would, in the middle of a write
//   gone    the same without an end: nothing reaches the disk any more, so what a process has left there is what is looked at
//   ENOSPC  and other codes are thrown from then on; a full disk still lets names be changed and files removed
import { createRequire, syncBuiltinESMExports } from 'node:module';
import process from 'node:process';

const fs = createRequire(import.meta.url)('node:fs');
const writeNow = fs.writeFileSync;
const appendNow = fs.writeSync;
const stop = { folder: '', at: Infinity, how: '', count: 0 };

const WRITES = /^[wa]|\+/;
const PROMISED = [
  'writeFile',
  'appendFile',
  'rename',
  'link',
  'copyFile',
  'mkdir',
  'rm',
  'rmdir',
  'unlink',
  'cp',
  'chmod',
];
const LEADS = ['rename', 'link', 'copyFile', 'cp'];
const FREES = ['rename', 'rm', 'rmdir', 'unlink', 'chmod'];

/** From here on, stops at change `at`; nothing is stopped with Infinity. */
export function stopAt(folder, at, how) {
  Object.assign(stop, { folder, at, how, count: 0 });
}
/** How many changes there have been since. */
export const changesSeen = () => stop.count;

/** Counts one change, and ends or fails it when its turn has come. `half` does a part of it first. */
function reached(name, path, half) {
  if (stop.folder === '' || typeof path !== 'string' || !path.startsWith(stop.folder)) return;
  stop.count += 1;
  if (stop.count < stop.at) return;
  if (stop.count === stop.at && (stop.how === 'kill' || stop.how === 'gone')) half?.();
  if (stop.how === 'kill') {
    process.kill(process.pid, 'SIGKILL');
    for (;;);
  }
  if (stop.how === 'ENOSPC' && FREES.includes(name)) return;
  const code = stop.how === 'gone' ? 'EIO' : stop.how;
  throw Object.assign(new Error(`${code}: ${name} '${path}'`), { code, path, syscall: name });
}

for (const name of PROMISED) {
  const real = fs.promises[name];
  fs.promises[name] = async (...words) => {
    const [from, what] = words;
    const path = LEADS.includes(name) ? what : from;
    const half = name === 'writeFile' ? () => writeNow(path, what.slice(0, what.length / 2)) : undefined;
    // To make a folder that is there changes nothing.
    if (name !== 'mkdir' || !fs.existsSync(path)) reached(name, path, half);
    return real(...words);
  };
}
const openReal = fs.promises.open;
fs.promises.open = async (path, flags, mode) => {
  if (!WRITES.test(String(flags ?? 'r'))) return openReal(path, flags, mode);
  reached('open', path);
  const file = await openReal(path, flags, mode);
  const { writeFile, sync } = file;
  file.writeFile = async (what, ...words) => {
    reached('write', path, () => appendNow(file.fd, what.slice(0, what.length / 2)));
    return writeFile.call(file, what, ...words);
  };
  file.sync = async () => {
    reached('sync', path);
    return sync.call(file);
  };
  return file;
};
syncBuiltinESMExports();

const { STOP_IN, STOP_AT, STOP_HOW, STOP_COUNT } = process.env;
if (STOP_IN !== undefined) {
  stopAt(STOP_IN, Number(STOP_AT), STOP_HOW);
  if (STOP_COUNT !== undefined) process.on('exit', () => writeNow(STOP_COUNT, String(stop.count)));
}
