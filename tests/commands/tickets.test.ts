import { cp, mkdtemp, readFile, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { runHere } from './run-here.ts';

let at = '';
beforeAll(async () => {
  at = join(await mkdtemp(join(tmpdir(), 'tickets-')), 'cabinet');
  await cp('content', at, { recursive: true });
});

async function tickets(...words: readonly string[]): Promise<{ readonly code: number; readonly says: string }> {
  const { status, stdout, stderr } = await runHere('tickets', '--cabinet', at, ...words);
  return { code: status, says: `${stdout}${stderr}` };
}
const page = () => readFile(join(at, 'private/tickets.html'), 'utf8');
const count = (says: string) => Number(/^(\d+) tickets?/.exec(says)?.[1]);

describe('tickets', { timeout: 120_000 }, () => {
  test('of one tray are those that the ledger keeps there, in the order of their numbers, for the keeper alone to read', async () => {
    const ledger = (await readFile(join(at, 'private/ledger.csv'), 'utf8')).split('\n');
    const there = ledger.filter((line) => line.includes('Cabinet S, tray 2,'));
    const { says } = await tickets('--tray', 'Cabinet S, tray 2');
    expect(there.length).toBeGreaterThan(2);
    // Pieces that have left may still have a place in the ledger.
    expect(count(says)).toBeGreaterThan(0);
    expect(count(says)).toBeLessThanOrEqual(there.length);
    const numbers = [...(await page()).matchAll(/class="book"[^>]*>(\d{4})</g)].map(([, number]) => Number(number));
    expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
    expect((await stat(join(at, 'private/tickets.html'))).mode & 0o077).toBe(0);
  });

  test('of a set, an exhibit, a tag or the newest are counted by what the files say', async () => {
    expect(count((await tickets('--newest', '5')).says)).toBe(5);
    const exhibit = await readFile(join(at, 'exhibits/struck-in-york/exhibit.md'), 'utf8');
    const shown = exhibit.match(/- piece: /g)?.length ?? 0;
    const { says } = await tickets('--exhibit', 'struck-in-york');
    expect(count(says)).toBeLessThanOrEqual(shown);
    expect(count(says)).toBeGreaterThan(shown / 2);
    expect((await tickets('--set', 'mints-of-1279', '--tag', 'no-such-tag')).says).toContain('No piece is in this selection.'); // prettier-ignore
  });

  test('stand on sheets of the paper that was named, with its own fonts, and ask for nothing else', async () => {
    await tickets('--piece', 'york-penny-3b', '--size', 'square-50', '--paper', 'letter');
    const text = await page();
    expect(text).toContain('@page{size:215.9mm 279.4mm;margin:0}');
    // Two inches, front and back.
    expect(text).toMatch(/<rect class="outline ticket" x="0" y="0" width="50.8" height="50.8"/);
    expect([...text.matchAll(/(?:src|href)="(?!#)|url\((?!["']?data:).{0,40}/g)].map(([found]) => found)).toEqual([]);
    expect(/\d GBP/.test(text)).toBe(false);
  });

  test('for what is not there are refused in a sentence', async () => {
    expect(await tickets('--set', 'mints-of-1297')).toEqual({ code: 1, says: 'There is no set "mints-of-1297". Write mints-of-1279.\n' }); // prettier-ignore
    expect((await tickets('--size', 'round-29')).says).toMatch(/^There is no ticket "round-29"\. Write one of fit, /);
    expect((await tickets('--newest', 'all')).code).toBe(1);
  });
});
