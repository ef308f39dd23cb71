import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';

/** What a program keeps for itself. */
const OWN = /^private\/(\.lock\/|undo\/|\.gitignore$)/;

/** Every file of a cabinet with its bytes as text, but for the lock and the journal. */
export function folderTexts(at: string): Readonly<Record<string, string>> {
  const names = readdirSync(at, { recursive: true, encoding: 'utf8' }).filter((name) =>
    statSync(join(at, name)).isFile(),
  );
  const files = names.map((name) => name.split(sep).join('/')).filter((name) => !OWN.test(name));
  return Object.fromEntries(files.sort().map((name) => [name, readFileSync(join(at, name), 'utf8')]));
}
