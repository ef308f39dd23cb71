// Makes the disk stop at the n-th thing that is changed on it under a folder. As a program's first import (node --import) it is
// set by STOP_IN, STOP_AT, STOP_HOW and STOP_INTO; a test calls `stopAt`.
//   kill    ends the process as a cut of the power would, in the middle of a write
//   copies  stops nothing: a copy of the folder is made before each change, in the middle of it where it is a write, into the
//           folders 1, 2, 3 of STOP_INTO. Each is what a process killed there would have left. What was changed, and what sort
//           of file, stands line by line in STOP_INTO.kinds
//   gone    the same without an end: nothing reaches the disk any more, so what a process has left there is what is looked at
//   ENOSPC  and other codes are thrown from then on; a full disk still lets names be changed and files removed
import { createRequire, syncBuiltinESMExports } from 'node:module';
import process from 'node:process';

const fs = createRequire(import.meta.url)('node:fs');
const writeNow = fs.writeFileSync;
const appendNow = fs.writeSync;
const { cpSync: copyNow, existsSync: isThere } = fs;
const stop = { folder: '', at: Infinity, how: '', into: '', count: 0, isCopying: false };

const WRITES = /^[wa]|\+/;
/** The functions that change the disk, in their two forms. */
const CHANGES = [
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

/** From here on, stops at change `at`; nothing is stopped with Infinity, or with `copies` at any. */
export function stopAt(folder, at, how, into = '') {
  Object.assign(stop, { folder, at, how, into, count: 0 });
}
/** How many changes there have been since. */
export const changesSeen = () => stop.count;

/** Counts one change, and ends or fails it when its turn has come. `half` does a part of it first. */
function reached(name, path, half) {
  if (stop.folder === '' || stop.isCopying || typeof path !== 'string' || !path.startsWith(stop.folder)) return;
  stop.count += 1;
  if (stop.how === 'copies') {
    stop.isCopying = true;
    appendKind(name, path);
    half?.();
    if (isThere(stop.folder)) copyNow(stop.folder, `${stop.into}/${stop.count}`, { recursive: true });
    else fs.mkdirSync(`${stop.into}/${stop.count}`, { recursive: true });
    stop.isCopying = false;
    return;
  }
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

/** Says what sort of change this is: what is done, and to which sort of file. */
function appendKind(name, path) {
  const [top = '', next = ''] = path.slice(stop.folder.length + 1).split(/[/\\]/);
  const isPrivate = /^\.?private/.test(top);
  const sort = !isPrivate ? 'public' : (/^(undo|\.lock|import)/.exec(next)?.[0] ?? 'private');
  const role = /\.unfinished/.test(path) ? 'unfinished' : /entry\.json/.test(path) ? 'entry' : '';
  fs.appendFileSync(`${stop.into}.kinds`, `${name} ${sort} ${role}\n`);
}

/** Writes the first half of a text or of bytes, and leaves the place at which the file is written next. */
function putHalf(fd, what) {
  const half = what.slice(0, what.length / 2);
  if (typeof half === 'string') appendNow(fd, half, 0);
  else appendNow(fd, half, 0, half.length, 0);
}

/** Before one of the functions that change the disk. */
function before(name, [from, what]) {
  const path = LEADS.includes(name) ? what : from;
  const half = name === 'writeFile' ? () => writeNow(path, what.slice(0, what.length / 2)) : undefined;
  // To make a folder that is there changes nothing.
  if (name !== 'mkdir' || !isThere(path)) reached(name, path, half);
}
for (const name of CHANGES) {
  const [real, atOnce] = [fs.promises[name], fs[`${name}Sync`]];
  fs.promises[name] = async (...words) => {
    before(name, words);
    return real(...words);
  };
  fs[`${name}Sync`] = (...words) => {
    before(name, words);
    return atOnce(...words);
  };
}
/** The files open for writing, by their numbers. */
const opened = new Map();
const { openSync: openReal, closeSync: closeReal, fsync: syncReal, writeFileSync: writeReal } = fs;
fs.openSync = (path, flags, mode) => {
  const isWritten = WRITES.test(String(flags ?? 'r'));
  if (isWritten) reached('open', path);
  const file = openReal(path, flags, mode);
  if (isWritten) opened.set(file, path);
  return file;
};
fs.closeSync = (file) => {
  opened.delete(file);
  closeReal(file);
};
fs.writeFileSync = (file, what, ...words) => {
  if (opened.has(file)) reached('write', opened.get(file), () => putHalf(file, what));
  return writeReal(file, what, ...words);
};
fs.fsync = (file, done) => {
  try {
    reached('sync', opened.get(file));
  } catch (error) {
    done(error);
    return;
  }
  syncReal(file, done);
};
syncBuiltinESMExports();

const { STOP_IN, STOP_AT, STOP_HOW, STOP_INTO } = process.env;
if (STOP_IN !== undefined) stopAt(STOP_IN, Number(STOP_AT), STOP_HOW, STOP_INTO);
