import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { piecesShown, shownExhibit } from '../../src/site/models/exhibit/shown-exhibit.ts';
import type { ShownExhibit } from '../../src/site/models/exhibit/shown-exhibit.ts';
import { buildInto } from '../built/build-into.ts';
import { wholeCabinet } from '../site/whole-cabinet.ts';
import { openSite } from './open-site.ts';
import type { OpenSite } from './open-site.ts';
import {
  codesOn,
  darkAlongRow,
  darkDownColumn,
  dotsOf,
  fontsOf,
  infoOf,
  printed,
  rulesOf,
  textOf,
  wordsOf,
} from './printed.ts';
import type { Printed } from './printed.ts';

// Printing and scanning dozens of sheets takes a busy machine its time.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const EXHIBIT = 'exhibits/struck-in-york';
/** Half the thickness of a printed line and a dot of the scan: what a ruler held to the paper would show. */
const TOLERANCE = 0.3;
/** From the edge of the sheet to what is printed, in millimetres. */
const [LEFT, TOP] = [9, 14];

/** A keeper of three names, labels in six scripts, an address under a path: tests/cabinets/printed. */
const SCRIPTS = 'exhibits/scripts';
const UNDER = '/sub/path/';

let site: OpenSite;
let under: OpenSite;
let built: string;
let scripts: Printed;
let nameless: Printed;
let named: Printed;
let anonymous: Printed;
let letter: Printed;
let exhibit: ShownExhibit;

beforeAll(async () => {
  site = await openSite('dist');
  named = await printed(site, `${EXHIBIT}/print/`);
  anonymous = await printed(site, `${EXHIBIT}/print/anonymous/`);
  letter = await printed(site, `${EXHIBIT}/print/letter/`);
  built = await buildInto({ cabinet: 'tests/cabinets/printed' });
  under = await openSite(built, UNDER);
  scripts = await printed(under, `${SCRIPTS}/print/`);
  nameless = await printed(under, `${SCRIPTS}/print/anonymous/`);
  const cabinet = await wholeCabinet('content');
  const [first] = cabinet.lists.exhibits;
  if (first === undefined) throw new Error('The demo has no exhibit.');
  exhibit = shownExhibit(cabinet, first);
});
afterAll(async () => {
  await site.close();
  await under.close();
});

const sheetsNamed = ({ sheets }: Printed, name: RegExp): readonly number[] =>
  sheets.flatMap((sheet, index) => (name.test(sheet) ? [index + 1] : []));
const within = (measured: number, wanted: number): boolean => Math.abs(measured - wanted) <= TOLERANCE;
const longest = (stretches: readonly (readonly [number, number])[]): number =>
  Math.max(...stretches.map(([from, to]) => to - from));

/** A text as paper has it: single spaces, and the apostrophes of a book where a word goes on behind them. */
const asPrinted = (text: string): string =>
  text.replace(/\s+/g, ' ').replace(/(?<=\p{Ll}|\p{Lu}{2})'(?=\p{Ll})/gu, '’');

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

  test('the rule at the foot of every sheet is 100 mm long', async () => {
    for (const [forms, height] of [
      [named, 297],
      [letter, 279.4],
    ] as const) {
      const rules = await rulesOf(forms, height);
      expect(rules).toHaveLength(forms.sheets.length);
      for (const [at, rule] of rules.entries())
        expect(rule, forms.sheets[at]).toSatisfy((long: number) => within(long, 100));
    }
  });

  test('a label is as wide as the exhibit says, and 9 mm from the next', async () => {
    const [sheet = 0] = sheetsNamed(named, /^Labels/);
    const marks = darkAlongRow(await dotsOf(named, sheet), TOP - 2.2).map(([from, to]) => (from + to) / 2);
    for (const at of [0, 2])
      expect((marks[at + 1] ?? 0) - (marks[at] ?? 0)).toSatisfy((wide: number) => within(wide, exhibit.label.width));
    expect((marks[2] ?? 0) - (marks[0] ?? 0)).toSatisfy((pitch: number) => within(pitch, exhibit.label.width + 9));
  });

  // 18 pt on 22.5 pt: 7.9375 mm from line to line, and 3 mm clear above and below.
  test('a label is as high as its lines, and the type is as large as the exhibit says', async () => {
    const [sheet = 0] = sheetsNamed(named, /^Labels/);
    const marks = darkDownColumn(await dotsOf(named, sheet), LEFT - 2.2).map(([from, to]) => (from + to) / 2);
    const high = (marks[1] ?? 0) - (marks[0] ?? 0);
    const words = (await wordsOf(named, sheet)).filter(
      ({ top, left }) => top > TOP && top < TOP + high && left < LEFT + exhibit.label.width,
    );
    const lines = [...new Set(words.map(({ bottom }) => bottom.toFixed(1)))].map(Number).sort((a, b) => a - b);
    expect(high).toSatisfy((measured: number) => within(measured, lines.length * 7.9375 + 6));
    for (const [index, line] of lines.slice(1).entries())
      expect(line - (lines[index] ?? 0)).toSatisfy((apart: number) => within(apart, 7.9375));
  });

  test('no word of a label leaves its label', async () => {
    const wide = exhibit.label.width;
    for (const sheet of sheetsNamed(named, /^Labels/)) {
      const foot = named.across[sheet - 1] === true ? 210 : 297;
      const words = (await wordsOf(named, sheet)).filter(({ top }) => top > TOP - 1 && top < foot - 17);
      expect(words.length).toBeGreaterThan(5);
      for (const { text, left, right } of words) {
        const cell = Math.floor((left - LEFT) / (wide + 9)) * (wide + 9) + LEFT;
        expect(left, text).toBeGreaterThan(cell + 3 - TOLERANCE);
        expect(right, text).toBeLessThan(cell + wide - 3 + TOLERANCE);
      }
    }
  });

  // Common practice: tickets of 24 to 45 mm.
  test('a ticket is round, and from 24 to 45 mm wide', async () => {
    const [sheet = 0] = sheetsNamed(named, /^(?:Round t|T)ickets/);
    const dots = await dotsOf(named, sheet);
    const [crest] = darkAlongRow(dots, TOP);
    const middle = crest === undefined ? 0 : (crest[0] + crest[1]) / 2;
    const wide = 2 * (middle - LEFT);
    expect(wide).toBeGreaterThan(24 - TOLERANCE);
    expect(wide).toBeLessThan(45 + TOLERANCE);
    const downwards = darkDownColumn(dots, middle).filter(([, to]) => to > TOP - 1 && to < TOP + wide + 1);
    expect((downwards.at(-1)?.[1] ?? 0) - (downwards[0]?.[0] ?? 0)).toSatisfy((high: number) => within(high, wide));
  });

  test('the sheets of a case plan meet where they say, and none is empty', async () => {
    const row = sheetsNamed(named, /^Case 1 at true size: row 1,/);
    const said = await Promise.all(
      row.map(async (sheet) => /is ([\d.]+) mm from the left/.exec(await textOf(named, sheet))?.[1]),
    );
    const corners = said.map(Number);
    expect(corners.length).toBeGreaterThan(2);
    for (const [at, corner] of corners.slice(0, 2).entries()) {
      const wide = longest(darkAlongRow(await dotsOf(named, row[at] ?? 0), TOP));
      expect(corner + wide).toSatisfy((next: number) => within(next, corners[at + 1] ?? 0));
    }
    for (const sheet of sheetsNamed(named, /at true size/)) {
      const lines = await wordsOf(named, sheet);
      expect(lines.filter(({ top, bottom }) => top > TOP && bottom < 280).length, `sheet ${sheet}`).toBeGreaterThan(0);
    }
  });

  test('the labels can be read out of the file, in the order of the exhibit', async () => {
    const text = (await Promise.all(sheetsNamed(named, /^Labels/).map((sheet) => textOf(named, sheet)))).join(' ');
    const at = piecesShown(exhibit).map(({ label }) => text.indexOf(asPrinted(label)));
    expect(at.filter((position) => position === -1)).toEqual([]);
    expect(at).toEqual(at.toSorted((a, b) => a - b));
  });

  test('the cards hold title, scope and every book', async () => {
    const text = await textOf(named);
    expect(text).toContain(exhibit.title);
    expect(text).toContain(asPrinted(exhibit.scope ?? '-'));
    for (const { fields } of exhibit.bibliography) expect(text).toContain(asPrinted(fields.title));
  });
});

describe('a half-used sheet', () => {
  const OTHERS = { 'print-plans': false, 'print-set-up': false, 'print-title': false, 'print-headings': false, 'print-books': false } as const; // prettier-ignore
  let later: Printed;
  beforeAll(async () => {
    later = await printed(site, `${EXHIBIT}/print/`, {
      ...OTHERS,
      'begin-labels': 4,
      'choose-tickets': 'square-50',
      'begin-square-50': 6,
    });
  });

  test('begins at the cell that was chosen, and nothing is printed before it', async () => {
    const [sheet = 0] = sheetsNamed(later, /^Labels/);
    const words = (await wordsOf(later, sheet)).filter(({ top }) => top > TOP - 1 && top < 193);
    const [first] = piecesShown(exhibit)[0]?.label.split(' ') ?? [];
    const begins = words.find(({ text }) => text === first) ?? expect.fail('the first label is not there');
    // Cell 4 of two columns: the second of the second row.
    expect(begins.left).toSatisfy((left: number) => within(left, LEFT + exhibit.label.width + 9 + 3));
    expect(Math.min(...words.map(({ top }) => top))).toBeGreaterThan(TOP + 30);
  });

  test('loses no label, and takes a sheet more only where it must', async () => {
    const text = (await Promise.all(sheetsNamed(later, /^Labels/).map((sheet) => textOf(later, sheet)))).join(' ');
    const at = piecesShown(exhibit).map(({ label }) => text.indexOf(asPrinted(label)));
    expect(at).toEqual(at.toSorted((a, b) => a - b));
    expect(at).not.toContain(-1);
    expect(text.lastIndexOf(asPrinted(piecesShown(exhibit)[0]?.label ?? '-'))).toBe(at[0]);
    const [first = 0] = sheetsNamed(named, /^Labels/);
    const onFirst = await textOf(named, first);
    const cells = piecesShown(exhibit).filter(({ label }) => onFirst.includes(asPrinted(label))).length;
    expect(sheetsNamed(later, /^Labels/)).toHaveLength(Math.ceil((piecesShown(exhibit).length + 3) / cells));
  });

  // The square pockets that are sold measure 2 inches: 50.8 mm. Common practice.
  test('a square ticket is 50.8 mm wide on both sides, and folds in the middle', async () => {
    const [sheet = 0] = sheetsNamed(later, /^(?:Round t|T)ickets/);
    const dots = await dotsOf(later, sheet);
    // Cell 6 of two columns and three rows: 4 mm from cell to cell.
    const top = TOP + 2 * 54.8;
    const left = LEFT + 105.6;
    const lines = darkAlongRow(dots, top + 2).map(([from, to]) => (from + to) / 2);
    expect(lines[0]).toSatisfy((x: number) => within(x, left));
    expect((lines.at(-1) ?? 0) - (lines[0] ?? 0)).toSatisfy((wide: number) => within(wide, 101.6));
    expect((lines[1] ?? 0) - (lines[0] ?? 0)).toSatisfy((wide: number) => within(wide, 50.8));
    const down = darkDownColumn(dots, left + 2)
      .map(([from, to]) => (from + to) / 2)
      .filter((y) => y < top + 60);
    expect((down.at(-1) ?? 0) - (down.at(-2) ?? 0)).toSatisfy((high: number) => within(high, 50.8));
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

  const SAID = /layerthorpe|hester|h\.\s?m\./i;
  test('carries no part of it that was in titles, labels, thanks, books, or the name of the cabinet', async () => {
    expect(await textOf(scripts)).toMatch(SAID);
    const pages = ['print/anonymous', 'print/letter/anonymous', 'print/set-up'];
    for (const page of pages)
      expect(await readFile(`${built}/${SCRIPTS}/${page}/index.html`, 'utf8')).not.toMatch(SAID);
    expect(await textOf(nameless)).not.toMatch(SAID);
    expect([...(await infoOf(nameless)).values()].join(' ')).not.toMatch(SAID);
    const page = await readFile(`${built}/${SCRIPTS}/print/anonymous/index.html`, 'utf8');
    expect(page).toContain('the acknowledgements');
    expect(page).toContain('the title or facts of piece 1');
  });

  test('has codes that lead to a page without a name, each to its own piece', async () => {
    const found = await codes(nameless);
    const page = await readFile(`${built}/${SCRIPTS}/print/set-up/index.html`, 'utf8');
    expect(found.toSorted()).toEqual(
      Array.from({ length: 7 }, (_, at) => `https://example.org${UNDER}${SCRIPTS}/print/set-up/#piece-${at + 1}`),
    );
    for (const address of found) expect(page).toContain(`id="${new URL(address).hash.slice(1)}"`);
    expect(/<title>(.*?)<\/title>/.exec(page)?.[1]).toBe('Six scripts of the exhibitor: setting up');
  });
});

describe('the codes of the set-up list', () => {
  test('lead to the page of every piece, each to its own', async () => {
    const found = await codes(named);
    const wanted = piecesShown(exhibit).map(({ piece }) => `https://example.org/pieces/${piece.id}/`);
    expect(found.toSorted()).toEqual(wanted.toSorted());
    for (const address of found) expect(existsSync(`dist${new URL(address).pathname}index.html`), address).toBe(true);
  });

  test('lead there under a sub-path too', async () => {
    const found = await codes(scripts);
    expect(found).toHaveLength(7);
    for (const address of found) {
      const { pathname } = new URL(address);
      expect(pathname.startsWith(`${UNDER}pieces/`)).toBe(true);
      expect(existsSync(`${built}/${pathname.slice(UNDER.length)}index.html`), address).toBe(true);
    }
  });
});

describe('labels in other scripts', () => {
  test('can be read out of the file, and every font lies in it', async () => {
    const text = await textOf(scripts);
    for (const says of ['ΒΑΣΙΛΕΩΣ', 'ΑΛΕΞΑΝΔΡΟΥ', 'МОНЕТА', 'Петербург', 'ירושלים', 'ישראל', 'الله'])
      expect(text).toContain(says);
    expect((await fontsOf(scripts)).filter(({ embedded }) => !embedded)).toEqual([]);
    // The codes of the letters alone: a font that has a letter gives it back, one that lacks it draws a box.
    expect(text).not.toContain('\uFFFD');
  });

  test('those that run leftward end at the right margin', async () => {
    const [sheet = 0] = sheetsNamed(scripts, /^Labels/);
    const words = (await wordsOf(scripts, sheet)).filter(({ text }) => /\p{Script=Hebrew}/u.test(text));
    const right = Math.max(...words.map((word) => word.right));
    const column = Math.floor((right - LEFT) / 99);
    expect(right).toSatisfy((end: number) => within(end, LEFT + column * 99 + 90 - 3));
  });

  test('a label of 400 words is cut off at the sheet and says so, in type of the same size', async () => {
    const [sheet = 0] = sheetsNamed(scripts, /^Long labels/);
    expect(await textOf(scripts, sheet)).toContain('Cut off here: this is 90 ×');
    const lines = [...new Set((await wordsOf(scripts, sheet)).filter(({ top }) => top > TOP - 1 && top < 200).map(({ bottom }) => bottom.toFixed(1)))].map(Number).sort((a, b) => a - b); // prettier-ignore
    for (const [at, line] of lines.slice(1).entries())
      expect(line - (lines[at] ?? 0)).toSatisfy((apart: number) => within(apart, 7.9375));
    const page = await readFile(`${built}/${SCRIPTS}/print/index.html`, 'utf8');
    expect(page).toContain('larger than the sheet, so it is cut off there');
  });

  test('what has no room for its label is on a key', async () => {
    const [sheet = 0] = sheetsNamed(scripts, /^Key to the numbers/);
    expect(await textOf(scripts, sheet)).toContain('7. Its label has no room by it.');
  });
});

async function codes(forms: Printed): Promise<readonly string[]> {
  return (await Promise.all(sheetsNamed(forms, /^Set-up list/).map((sheet) => codesOn(forms, sheet)))).flat();
}
