import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { cpSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { plainOutput } from '../../../src/commands/parts/plain-output.ts';

test.for([
  ['a plain line\nand another\tcell', 'a plain line\nand another\tcell'],
  ['\rPieces ███ 3 of 4', '\rPieces ███ 3 of 4'],
  ['red \u001b[31mtext\u001b[0m', 'red text'],
  ['title \u001b]0;stolen\u0007 end', 'title  end'],
  ['back\bspace, bell\u0007, C1 \u009b2J', 'back·space, bell·, C1 ·2J'],
  ['no problems\rreally', 'no problems·really'],
  ['turned \u202egpj.exe', 'turned ·gpj.exe'],
] as const)('%j is told as %j', ([text, told]) => {
  expect(plainOutput(text)).toBe(told);
});

test('what is in a sheet steers no terminal', () => {
  const at = join(mkdtempSync(join(tmpdir(), 'plain-')), 'cabinet');
  cpSync('tests/cabinets/empty', at, { recursive: true });
  const sheet = join(at, '..', 'coins.csv');
  writeFileSync(sheet, 'No.,Ruler,Weight\n1,Edward \u001b[2J\u001b]0;x\u0007I,heavy\u009b1A\n2,\u202eI drawdE,1.3 g\n');
  const { stdout, stderr, status } = spawnSync(process.execPath, ['src/commands/import.ts', sheet, '--cabinet', at], { encoding: 'utf8' });
  expect(status).toBe(0);
  // eslint-disable-next-line no-control-regex -- it is what must not be there
  expect(`${stdout}${stderr}`).not.toMatch(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e]/);
}); // prettier-ignore
