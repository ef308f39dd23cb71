import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Where Chromium is looked for, unless the variable CHROMIUM names it. */
export const BROWSERS = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** What steps of `npm test` want from the machine: the program, Debian's package of it, and the steps. */
const WANTED = [
  { program: 'chromium', from: 'chromium', steps: ['browser'] },
  { program: 'pdfinfo', from: 'poppler-utils', steps: ['browser'] },
  { program: 'zbarimg', from: 'zbar-tools', steps: ['browser'] },
  { program: 'exiftool', from: 'libimage-exiftool-perl', steps: ['commands'] },
] as const;

/** A sentence on the programs that these steps want and the machine lacks; null when it has them all. */
export function missingPrograms(
  steps: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): string | null {
  const missing = WANTED.filter((one) => one.steps.some((step) => steps.includes(step)) && !isHere(one.program, env));
  if (missing.length === 0) return null;
  const programs = missing.map(({ program }) => program).join(', ');
  const packages = missing.map(({ from }) => from).join(' ');
  return `The tests want ${programs}, which this machine lacks. On Debian and Ubuntu: sudo apt-get install ${packages}`;
}

function isHere(program: string, env: Readonly<Record<string, string | undefined>>): boolean {
  const folders = (env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  if (program !== 'chromium') return folders.some((folder) => isExecutable(join(folder, program)));
  return env['CHROMIUM'] === undefined ? BROWSERS.some(isExecutable) : isExecutable(env['CHROMIUM']);
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
