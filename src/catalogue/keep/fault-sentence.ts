import { mkdirSync } from 'node:fs';
import { basename, dirname, relative, sep } from 'node:path';
import process from 'node:process';

/** What a keeper can do about each fault of the machine, by its code. */
const SENTENCES: Readonly<Record<string, (where: string) => string>> = {
  ENOSPC: () => 'There is no room left on the disk. Make room, and try again.',
  EDQUOT: () => 'There is no room left for you on this disk. Make room, and try again.',
  EFBIG: () => 'The disk takes no file of this size. Make room, and try again.',
  EROFS: (where) => `${where} lies on a disk that cannot be written to. Allow writing there, or choose another place.`,
  EACCES: (where) => `${where} may not be opened or written. Allow it, or close it where it is open, and try again.`,
  EPERM: (where) => `${where} may not be changed. Allow it, or close it where it is open, and try again.`,
  EBUSY: (where) => `${where} is in use. Close it where it is open, and try again.`,
  EMFILE: () => 'Too many files are open at once on this machine. Close other programs, and try again.',
  ENFILE: () => 'Too many files are open at once on this machine. Close other programs, and try again.',
  ENAMETOOLONG: (where) => `${where} is longer than a file name may be. Choose a shorter name.`,
  ENOTDIR: (where) => `${where} lies in something that is no folder. Choose another place.`,
  EISDIR: (where) => `${where} is a folder, and a file is wanted there. Move the folder away, and try again.`,
  EEXIST: (where) => `${where} is there already, and nothing is written over it. Choose another name.`,
  ENOENT: (where) => `${where} is not there any more. Bring it back, and try again.`,
  ENOTEMPTY: (where) => `${where} holds something that was put there meanwhile. Look at it, and try again.`,
  ELOOP: (where) => `${where} is a link that leads back to itself. Remove the link.`,
  EIO: (where) => `${where} cannot be read or written: the disk has a fault. Copy what is on it elsewhere.`,
  ENOMEM: () => 'There is not enough memory. Close other programs, and try again.',
};

/** What is being written, by the name it is to have. */
const UNFINISHED = /\.([^/\\]+)\.\d+\.unfinished$/;
/** What the program keeps for itself is named by its folder. */
const OWN = /(private[/\\](undo|\.lock))[/\\].*$/;

/** Faults by their numbers, which compiled programs tell alone. Source: errno(3) of Linux and macOS. */
const NUMBERED: Readonly<Record<string, string>> = {
  13: 'EACCES',
  28: 'ENOSPC',
  30: 'EROFS',
  69: 'EDQUOT',
  122: 'EDQUOT',
};

/** The code of a fault of the disk within what another program said of it; null where it says none. */
function codeIn(message: string): string | null {
  const number = /\(os error (\d+)\)/.exec(message)?.[1];
  return (
    (number === undefined ? null : NUMBERED[number]) ?? /\b(ENOSPC|EDQUOT|EROFS|EACCES): /.exec(message)?.[1] ?? null
  );
}

/** A sentence for what the machine refuses and a keeper can see to; null for a fault of the program. */
export function faultSentence(error: unknown): string | null {
  if (!(error instanceof Error)) return null;
  const { code, path } = error as NodeJS.ErrnoException;
  const name = path?.replace(OWN, '$1').replace(UNFINISHED, (_, file: string) => file.replaceAll('~', sep));
  const says = SENTENCES[code ?? ''] ?? SENTENCES[codeIn(error.message) ?? ''];
  if (says === undefined) return error.cause === undefined ? null : faultSentence(error.cause);
  return says(name === undefined ? 'A file or folder' : relative(process.cwd(), name) || '.');
}

/** A line of the program in a trace, of its sources or of the pages bundled of them. */
const OWN_LINE = /(?<=[/\\ ])((?:src[/\\][\w./\\[\]-]+|program[/\\](?:chunks[/\\])?[\w.-]+\.mjs):\d+)/g;

/**
 * What is said of an error: what to do about it, or how to report a fault of the program. Of that only its kind and the lines of
 * our own it passed through are told: its message may hold what is in a private file.
 */
export function tellFault(error: unknown): string {
  const sentence = faultSentence(error);
  if (sentence !== null) return sentence;
  const kind = error instanceof Error ? error.name.replace(/[^A-Za-z]/g, '') : typeof error;
  const stack = error instanceof Error ? (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line)) : [];
  const lines = [...stack.join('\n').matchAll(OWN_LINE)];
  const report = [
    `command  ${basename(process.argv[1] ?? '').replace(/\.ts$/, '')}`,
    `system   ${process.platform}, Node ${process.versions.node}`,
    `fault    ${kind}`,
    ...lines.slice(0, 8).map(([, line = '']) => `at       ${line.replaceAll('\\', '/')}`),
  ];
  return `This is a fault in Underglass and not in your cabinet, which is as it was. Please report it with these lines; nothing of yours is in them:\n\n${report.map((line) => `  ${line}`).join('\n')}\n`;
}

export function isCode(error: unknown, code: string): boolean {
  return error instanceof Error && 'code' in error && error.code === code;
}

/** Makes a folder and those it lies in; the first that was made, if any. What is thrown says why it could not be made. */
export function makeFolder(folder: string, mode?: number): string | undefined {
  try {
    return mkdirSync(folder, { recursive: true, ...(mode === undefined ? {} : { mode }) });
  } catch (error) {
    if (!isCode(error, 'ENOENT') || dirname(folder) === folder) throw error;
    // Of a disk that cannot be written to, Node says that the folder is not there; made by itself, it says why.
    const first = makeFolder(dirname(folder), mode);
    mkdirSync(folder, mode);
    return first ?? folder;
  }
}
