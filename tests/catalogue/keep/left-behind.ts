import { existsSync, readdirSync } from 'node:fs';
import type { Dirent } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { recoverCabinet } from '../../../src/catalogue/keep/change-cabinet.ts';
import { folderTexts } from './folder-texts.ts';

type Texts = Readonly<Record<string, string>>;

/**
 * What is not a part of the stroke and can be made again, each file by itself: what is printed from the cabinet, what an import
 * suggests before it is agreed to, drafts.
 */
const ALONE = /^private\/(plan\.md|tickets\.html|inventory\.\w+|photographs\.html|desk\/|import\/([^/]+\.(mapping|names)\.yaml|[^/]+\/unread\.csv|[^/]+\.trial\/))/; // prettier-ignore

const THINGS = ['pieces', 'exhibits', 'types'];

/** How a stop left a cabinet, once the next command's recovery has run. */
export type Left = 'before' | 'after';

/**
 * Looks at what was left by a command that was stopped, after the recovery with which the next command begins: all of it or
 * nothing, no file that belongs to neither, no piece of a file, nothing half-written in the journal. `isEach` when each file is a
 * stroke of its own.
 */
export async function leftBehind(
  at: string,
  before: Texts,
  after: Texts,
  where: string,
  isEach = false,
): Promise<Left> {
  await recoverCabinet(at, () => undefined);
  const found = existsSync(at) ? folderTexts(at) : {};
  const states = new Set<Left>();
  for (const file of new Set([...Object.keys(before), ...Object.keys(after), ...Object.keys(found)])) {
    const [was, is, becomes] = [before[file], found[file], after[file]];
    expect([was, becomes], `${where}: ${file}`).toContain(is);
    if (was !== becomes && !ALONE.test(file) && !isEach) states.add(is === becomes ? 'after' : 'before');
  }
  expect([...states].length, `${where}: some files are as before, some as after`).toBeLessThan(2);
  expect(strays(at), where).toEqual([]);
  return states.has('after') ? 'after' : 'before';
}

/** What is left half-written anywhere in a cabinet, and folders of things in which nothing lies. */
function strays(at: string): readonly string[] {
  const entries = existsSync(at) ? readdirSync(at, { recursive: true, withFileTypes: true }) : [];
  return entries
    .filter((entry) => entry.name.endsWith('unfinished') || (entry.isDirectory() && isEmptyThing(at, entry)))
    .map((entry) => join(entry.parentPath, entry.name));
}

/** Whether it is the folder of a piece, an exhibit or a series with nothing in it. */
function isEmptyThing(at: string, { name, parentPath }: Dirent): boolean {
  const isThing = THINGS.some((folder) => parentPath === join(at, folder));
  return isThing && readdirSync(join(parentPath, name)).length === 0;
}
