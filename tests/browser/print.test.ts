import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { piecesShown, shownExhibit } from '../../src/site/models/exhibit/shown-exhibit.ts';
import type { ShownExhibit } from '../../src/site/models/exhibit/shown-exhibit.ts';
import { buildInto } from '../built/build-into.ts';
import { wholeCabinet } from '../site/whole-cabinet.ts';
import { openSite } from './open-site.ts';
import type { OpenSite } from './open-site.ts';
import { codesOn, darkAlongRow, darkDownColumn, dotsOf, fontsOf, infoOf, printed, textOf, wordsOf } from './printed.ts';
import type { Printed } from './printed.ts';

// Printing and scanning dozens of sheets takes a busy machine its time.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const EXHIBIT = 'exhibits/struck-in-york';
/** Half the thickness of a printed line and a dot of the scan: what a ruler held to the paper would show. */
const TOLERANCE = 0.3;
/** From the edge of the sheet to what is printed, in millimetres. */
const [LEFT, TOP] = [9, 14];

let site: OpenSite;
let named: Printed;
let anonymous: Printed;
let letter: Printed;
let exhibit: ShownExhibit;

beforeAll(async () => {
  site = await openSite('dist');
  named = await printed(site, `${EXHIBIT}/print/`);
  anonymous = await printed(site, `${EXHIBIT}/print/anonymous/`);
  letter = await printed(site, `${EXHIBIT}/print/letter/`);
  const cabinet = await wholeCabinet('content');
  const [first] = cabinet.lists.exhibits;
  if (first === undefined) throw new Error('The demo has no exhibit.');
  exhibit = shownExhibit(cabinet, first);
});
afterAll(() => site.close());

const sheetsNamed = ({ sheets }: Printed, name: RegExp): readonly number[] =>
  sheets.flatMap((sheet, index) => (name.test(sheet) ? [index + 1] : []));
const within = (measured: number, wanted: number): boolean => Math.abs(measured - wanted) <= TOLERANCE;
const longest = (stretches: readonly (readonly [number, number])[]): number =>
  Math.max(...stretches.map(([from, to]) => to - from));

describe('the forms, printed', () => {
  // A4: 210 × 297 mm (ISO 216) = 595.28 × 841.89 pt. Letter: 8½ × 11 in = 612 × 792 pt.
  test('every page has the size of its paper', async () => {
    const sizes = async (forms: Printed): Promise<readonly (readonly number[])[]> =>
      [...(await infoOf(forms))]
        .filter(([name]) => /^Page (\d+ )?size$/.test(name))
        .map(([, size]) =>
          size
            .split(/[^\d.]+/)
            .slice(0, 2)
            .map((points) => (Number(points) * 25.4) / 72),
        );
    for (const [width, height] of await sizes(named))
      expect([within(width ?? 0, 210), within(height ?? 0, 297)]).toEqual([true, true]);
    for (const [width, height] of await sizes(letter))
      expect([within(width ?? 0, 215.9), within(height ?? 0, 279.4)]).toEqual([true, true]);
  });

  test('there are as many pages as sheets, none of them blank', async () => {
    for (const forms of [named, anonymous, letter]) {
      expect((await infoOf(forms)).get('Pages')).toBe(String(forms.sheets.length));
      for (const [index, name] of forms.sheets.entries())
        expect(await textOf(forms, index + 1)).toContain(name.replace(/\s+/g, ' '));
    }
  });

  test('all fonts are embedded', async () => {
    for (const forms of [named, anonymous, letter]) {
      const fonts = await fontsOf(forms);
      expect(fonts.length).toBeGreaterThan(1);
      expect(fonts.filter(({ embedded }) => !embedded)).toEqual([]);
    }
  });

  test('the rule at the foot of the sheet is 100 mm long', async () => {
    for (const [forms, height] of [
      [named, 297],
      [letter, 279.4],
    ] as const)
      for (const sheet of [1, 5, forms.sheets.length]) {
        const rule = longest(darkAlongRow(await dotsOf(forms, sheet), height - 8));
        expect(rule, `sheet ${sheet}`).toSatisfy((long: number) => within(long, 100));
      }
  });

  test('a label is as wide as the exhibit says', async () => {
    const [sheet = 0] = sheetsNamed(named, /^Labels/);
    const marks = darkAlongRow(await dotsOf(named, sheet), TOP - 2.2).map(([from, to]) => (from + to) / 2);
    expect(marks).toHaveLength(2);
    expect((marks[1] ?? 0) - (marks[0] ?? 0)).toSatisfy((wide: number) => within(wide, exhibit.label.width));
  });

  // 18 pt on 22.5 pt: 7.9375 mm from line to line, and 3 mm clear above and below.
  test('a label is as high as its lines, and the type is as large as the exhibit says', async () => {
    const [sheet = 0] = sheetsNamed(named, /^Labels/);
    const marks = darkDownColumn(await dotsOf(named, sheet), LEFT - 2.2).map(([from, to]) => (from + to) / 2);
    const high = (marks[1] ?? 0) - (marks[0] ?? 0);
    const words = (await wordsOf(named, sheet)).filter(({ top }) => top > TOP && top < TOP + high);
    const lines = [...new Set(words.map(({ bottom }) => bottom.toFixed(1)))].map(Number).sort((a, b) => a - b);
    expect(high).toSatisfy((measured: number) => within(measured, lines.length * 7.9375 + 6));
    for (const [index, line] of lines.slice(1).entries())
      expect(line - (lines[index] ?? 0)).toSatisfy((apart: number) => within(apart, 7.9375));
  });

  test('no word of a label leaves its label', async () => {
    for (const sheet of sheetsNamed(named, /^Labels/)) {
      const words = (await wordsOf(named, sheet)).filter(({ top }) => top > TOP && top < 280);
      expect(Math.min(...words.map(({ left }) => left))).toBeGreaterThan(LEFT + 3 - TOLERANCE);
      expect(Math.max(...words.map(({ right }) => right))).toBeLessThan(LEFT + exhibit.label.width - 3 + TOLERANCE);
    }
  });

  // Common practice: tickets of 24 to 45 mm.
  test('a ticket is round, and from 24 to 45 mm wide', async () => {
    const [sheet = 0] = sheetsNamed(named, /^Tickets/);
    const dots = await dotsOf(named, sheet);
    const [crest] = darkAlongRow(dots, TOP);
    const middle = crest === undefined ? 0 : (crest[0] + crest[1]) / 2;
    const wide = 2 * (middle - LEFT);
    expect(wide).toBeGreaterThan(24 - TOLERANCE);
    expect(wide).toBeLessThan(45 + TOLERANCE);
    const downwards = darkDownColumn(dots, middle).filter(([, to]) => to > TOP - 1 && to < TOP + wide + 1);
    expect((downwards.at(-1)?.[1] ?? 0) - (downwards[0]?.[0] ?? 0)).toSatisfy((high: number) => within(high, wide));
  });

  test('the sheets of a case plan, joined, are as wide and as high as the case', async () => {
    const { inside } = exhibit.cases[0] ?? expect.fail('no case');
    const row = sheetsNamed(named, /^Case 1 at true size: row 1,/);
    const widths = await Promise.all(row.map(async (sheet) => longest(darkAlongRow(await dotsOf(named, sheet), TOP))));
    expect(Math.abs(widths.reduce((sum, wide) => sum + wide, 0) - inside.width)).toBeLessThan(TOLERANCE * row.length);
    const column = sheetsNamed(named, /^Case 1 at true size: row \d+, column 1$/);
    const heights = await Promise.all(
      column.map(async (sheet) => longest(darkDownColumn(await dotsOf(named, sheet), LEFT))),
    );
    expect(Math.abs(heights.reduce((sum, high) => sum + high, 0) - inside.height)).toBeLessThan(
      TOLERANCE * column.length,
    );
  });

  test('the labels can be read out of the file, in the order of the exhibit', async () => {
    const text = (await Promise.all(sheetsNamed(named, /^Labels/).map((sheet) => textOf(named, sheet)))).join(' ');
    const at = piecesShown(exhibit).map(({ label }) => text.indexOf(label.replace(/\s+/g, ' ')));
    expect(at.filter((position) => position === -1)).toEqual([]);
    expect(at).toEqual(at.toSorted((a, b) => a - b));
  });

  test('the cards hold title, scope and every book', async () => {
    const text = await textOf(named);
    expect(text).toContain(exhibit.title);
    expect(text).toContain(exhibit.scope?.replace(/\s+/g, ' '));
    for (const { fields } of exhibit.bibliography) expect(text).toContain(fields.title);
  });
});

describe('the anonymous form', () => {
  test('carries the keeper’s name nowhere: not in the text, not in the properties, not in the page', async () => {
    const keeper = (await wholeCabinet('content')).lists.cabinet.keeper;
    const page = await readFile(`dist/${EXHIBIT}/print/anonymous/index.html`, 'utf8');
    const properties = [...(await infoOf(anonymous)).values()].join(' ');
    for (const name of keeper.split(' ')) {
      expect(await textOf(named)).toContain(name);
      for (const text of [await textOf(anonymous), properties, page]) expect(text).not.toContain(name);
    }
  });

  test('has no code, for the page it leads to names the keeper', async () => {
    const [sheet = 0] = sheetsNamed(anonymous, /^Set-up list/);
    await expect(codesOn(anonymous, sheet)).rejects.toThrow();
  });
});

describe('the codes of the set-up list', () => {
  const codes = async (forms: Printed): Promise<readonly string[]> =>
    (await Promise.all(sheetsNamed(forms, /^Set-up list/).map((sheet) => codesOn(forms, sheet)))).flat();

  test('lead to the page of every piece, each to its own', async () => {
    const found = await codes(named);
    const wanted = piecesShown(exhibit).map(({ piece }) => `https://example.org/pieces/${piece.id}/`);
    expect(found.toSorted()).toEqual(wanted.toSorted());
    for (const address of found) expect(existsSync(`dist${new URL(address).pathname}index.html`), address).toBe(true);
  });

  test('lead there under a sub-path too', async () => {
    const built = await buildInto({ cabinet: 'tests/cabinets/marked' });
    const under = await openSite(built, '/marked/');
    try {
      const found = await codes(await printed(under, 'exhibits/small-show/print/'));
      expect(found).toEqual(['https://example.org/marked/pieces/plain-penny/']);
      expect(existsSync(`${built}/pieces/plain-penny/index.html`)).toBe(true);
    } finally {
      await under.close();
    }
  });
});
