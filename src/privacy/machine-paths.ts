import { homedir } from 'node:os';
import process from 'node:process';

/** A folder of somebody's machine, by what stands before and after its owner's name; no address on the web has that form. */
const ANYBODYS =
  /(?<![\w.~-])(?:file:\/\/\/?\S|\/(?:home|Users)\/[^/\s"'<>]+\/|[A-Za-z]:[\\/]+(?:Users|Documents and Settings)[\\/])/;

/** What such a path has in any case: a quick look saves a slow one. */
const BEGINS = ['file://', '/home/', 'Users', 'Documents'] as const;

/** Asked of the machine once: it is asked of every text of a site. */
const OURS = [
  ['the folder of the program', process.cwd()],
  ['your home folder', homedir()],
] as const;

/** Too short to be told from a part of an address. */
const SHORT = 6;

/** Which folder of a machine a text names, in words; null when it names none. `text` is without escapes. */
export function machinePathIn(text: string, cabinet: string | null): string | null {
  for (const [what, path] of [['the folder of the cabinet', cabinet] as const, ...OURS])
    if (path !== null && path.length >= SHORT && names(text, path)) return what;
  return BEGINS.some((begin) => text.includes(begin)) && ANYBODYS.test(text) ? 'a folder of a machine' : null;
}

/** Whether a text names what is in a folder. */
function names(text: string, folder: string): boolean {
  for (let at = text.indexOf(folder); at !== -1; at = text.indexOf(folder, at + 1))
    if ('/\\'.includes(text.charAt(at + folder.length) || ' ')) return true;
  return false;
}
