import { spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { missingPrograms } from '../../src/commands/test/missing-programs.ts';

/** A folder with programs of these names in it. */
function folderWith(...programs: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'programs-'));
  for (const program of programs) {
    writeFileSync(join(folder, program), '#!/bin/sh\n');
    chmodSync(join(folder, program), 0o755);
  }
  return folder;
}

// Packages of Debian 13 that hold these programs: packages.debian.org, contents of trixie.
test.for([
  [['browser', 'commands'], [], 'chromium, pdfinfo, zbarimg, exiftool', 'chromium poppler-utils zbar-tools libimage-exiftool-perl'],
  [['browser'], ['pdfinfo'], 'chromium, zbarimg', 'chromium zbar-tools'],
  [['commands', 'unit'], [], 'exiftool', 'libimage-exiftool-perl'],
] as const)('%j on a machine with %j: %s', ([steps, programs, missing, packages]) => {
  expect(missingPrograms(steps, { PATH: folderWith(...programs), CHROMIUM: '/nowhere/chromium' })).toBe(
    `The tests want ${missing}, which this machine lacks. On Debian and Ubuntu: sudo apt-get install ${packages}`,
  );
}); // prettier-ignore

test('nothing is said where all is there, or nothing is wanted', () => {
  const all = folderWith('pdfinfo', 'zbarimg', 'exiftool', 'own-browser');
  expect(missingPrograms(['browser', 'commands'], { PATH: all, CHROMIUM: join(all, 'own-browser') })).toBeNull();
  expect(missingPrograms(['unit', 'lint'], { PATH: '' })).toBeNull();
});

test('npm test says so before it begins, and ends with 1', () => {
  const { stdout, stderr, status } = spawnSync(process.execPath, ['src/commands/test.ts', '--only', 'commands'], {
    encoding: 'utf8',
    env: { PATH: folderWith() },
  });
  expect({ stdout, stderr, status }).toMatchObject({ stdout: '', status: 1 });
  expect(stderr).toBe(
    'The tests want exiftool, which this machine lacks. On Debian and Ubuntu: sudo apt-get install libimage-exiftool-perl\n',
  );
});
