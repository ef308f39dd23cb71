import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { formatHolder } from '../../src/core/cases/furniture.ts';
import { overlapOf } from '../../src/core/cases/boxes.ts';
import type { Box } from '../../src/core/cases/boxes.ts';
import { setCase } from '../../src/site/models/exhibit/planned-case.ts';
import type { SetCase } from '../../src/site/models/exhibit/planned-case.ts';
import { shownExhibit } from '../../src/site/models/exhibit/shown-exhibit.ts';
import type { ShownExhibit } from '../../src/site/models/exhibit/shown-exhibit.ts';
import { buildInto } from '../built/build-into.ts';
import { wholeCabinet } from '../site/whole-cabinet.ts';
import { openSite } from './open-site.ts';
import type { OpenSite } from './open-site.ts';
import { darkAlongRow, darkDownColumn, dotsOf, infoOf, POINT, printed, textOf, wordsOf } from './printed.ts';
import type { Printed, PrintedWord } from './printed.ts';

vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

/**
 * A show as a club has it: thirty pieces in two cases of the size that clubs lend (32¾ × 20¾ × 2¾ inches inside: common
 * practice), eight in slabs, twenty in 2 × 2 holders, two bare, with labels made from the pieces.
 */
const CABINET = 'tests/cabinets/club-show';
const SHOW = 'exhibits/shillings';
/** Half the thickness of a printed line and a dot of the scan, in millimetres. */
const TOLERANCE = 0.3;
/** From the edge of the sheet to what is printed, in millimetres. */
const [LEFT, TOP] = [9, 14];
const INCH = 25.4;
const CASE = { width: 32.75 * INCH, height: 20.75 * INCH } as const;

let site: OpenSite;
let forms: Printed;
let exhibit: ShownExhibit;
let cases: readonly SetCase[];
let told: readonly string[];

beforeAll(async () => {
  site = await openSite(await buildInto({ cabinet: CABINET }));
  forms = await printed(site, `${SHOW}/print/`);
  const page = await site.browser.newPage();
  await page.goto(`${site.address}${SHOW}/print/`);
  told = await page.locator('label:has(input:checked), option:checked').allInnerTexts();
  await page.close();
  const cabinet = await wholeCabinet(CABINET);
  const [first] = cabinet.lists.exhibits;
  if (first === undefined) throw new Error('The cabinet has no exhibit.');
  exhibit = shownExhibit(cabinet, first);
  cases = exhibit.cases.map((one) => setCase(one, exhibit.label));
});
afterAll(async () => {
  await site.close();
});

const within = (measured: number, wanted: number): boolean => Math.abs(measured - wanted) <= TOLERANCE;
const sheetsNamed = (name: RegExp): readonly number[] =>
  forms.sheets.flatMap((sheet, at) => (name.test(sheet) ? [at + 1] : []));
const cellsOf = (set: SetCase): SetCase['groups'][number]['cells'] => set.groups.flatMap(({ cells }) => cells);
const isIn = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left &&
  inner.top >= outer.top &&
  inner.left + inner.width <= outer.left + outer.width + 1e-6 &&
  inner.top + inner.height <= outer.top + outer.height + 1e-6;

describe('the plan', () => {
  test('has thirty pieces in two cases, each with the room of its holder', () => {
    const held = cases.flatMap((set) => cellsOf(set).map(({ shown: { holder } }) => formatHolder(holder)));
    const count = (name: string): number => held.filter((one) => one === name).length;
    expect([held.length, count('slab 60 x 86 x 7 mm'), count('2x2'), count('none')]).toEqual([30, 8, 20, 2]);
    expect(cases.map((set) => cellsOf(set).length)).toEqual([15, 15]);
    for (const { faces, shown } of cases.flatMap(cellsOf)) {
      const size = [faces[0]?.holder?.box.width ?? 0, faces[0]?.holder?.box.height ?? 0];
      const wanted = shown.holder === null ? [0, 0] : shown.holder.kind === 'slab' ? [60, 86] : [2 * INCH, 2 * INCH];
      expect(size, shown.piece.id).toEqual(wanted);
    }
  });

  test('fits: nothing lies on anything else or reaches out of its case', () => {
    for (const set of cases) {
      expect(set.misfits).toEqual([]);
      const boxes = set.groups.flatMap(({ headingBox, text, cells }) => [
        headingBox,
        ...(text === null ? [] : [text.box]),
        ...cells.flatMap(({ labelBox, faces }) => [labelBox, ...faces.map(({ box, holder }) => holder?.box ?? box)]),
      ]);
      const inside = { left: 0, top: 0, ...CASE };
      for (const [at, box] of boxes.entries()) {
        expect(isIn(box, inside)).toBe(true);
        for (const other of boxes.slice(at + 1)) expect(overlapOf(box, other)).toBe(null);
      }
    }
  });
});

describe('the forms', () => {
  test('come out in as many sheets as the page tells beforehand', async () => {
    // What is ticked, with its count; holders of tickets say theirs in the choice.
    const counts = told.flatMap((says) => {
      const [, sheets] = /\((\d+) sheets?\)$/.exec(says.trim()) ?? [];
      return sheets === undefined ? [] : [Number(sheets)];
    });
    expect(counts.length).toBeGreaterThan(4);
    const sum = counts.reduce((total, sheets) => total + sheets, 0);
    expect((await infoOf(forms)).get('Pages')).toBe(String(sum));
    expect(forms.sheets).toHaveLength(sum);
  });

  test('draw every piece in its holder at its true size and place', async () => {
    let measured = 0;
    for (const [at, set] of cases.entries())
      for (const { sheet, corner, size } of await tilesOf(at + 1)) {
        const dots = await dotsOf(forms, sheet);
        for (const { faces, shown } of cellsOf(set)) {
          const box = faces[0]?.holder?.box;
          if (box === undefined || !isIn(box, { ...corner, ...size })) continue;
          measured += 1;
          const [left, top] = [LEFT + box.left - corner.left, TOP + box.top - corner.top];
          // Beside what lies in it, and beside its corners.
          const across = darkAlongRow(dots, top + 1.5).flatMap(([from, to]) => [(from + to) / 2]);
          const down = darkDownColumn(dots, left + 1.5).flatMap(([from, to]) => [(from + to) / 2]);
          for (const wanted of [left, left + box.width])
            expect(across, `${shown.piece.id} at ${wanted}`).toSatisfy((all: number[]) => all.some((x) => within(x, wanted))); // prettier-ignore
          for (const wanted of [top, top + box.height])
            expect(down, `${shown.piece.id} at ${wanted}`).toSatisfy((all: number[]) => all.some((y) => within(y, wanted))); // prettier-ignore
        }
      }
    // A cut may go through some.
    expect(measured).toBeGreaterThan(20);
  });

  // The plan has each label's number and as much of the title as it holds; the labels themselves are printed apart.
  test('name every label where the plan has it, within its card', async () => {
    for (const [at, set] of cases.entries()) {
      const words = await wordsInCase(at + 1);
      for (const { labelBox, shown } of cellsOf(set)) {
        const here = words.filter((word) => isMiddleIn(word, labelBox));
        expect(here.length, shown.piece.id).toBeGreaterThan(0);
        for (const word of here) {
          expect(word.left).toBeGreaterThan(labelBox.left - TOLERANCE);
          expect(word.right).toBeLessThan(labelBox.left + labelBox.width + TOLERANCE);
          expect(word.bottom).toBeLessThan(labelBox.top + labelBox.height + TOLERANCE);
        }
        const said = here.map(({ text }) => text).join(' ');
        expect(said, shown.piece.id).toContain(`${shown.key}. ${shown.piece.title.split(' ').slice(0, 2).join(' ')}`);
      }
    }
  });

  test('print every label whole, in the order of the cases', async () => {
    const text = (await Promise.all(sheetsNamed(/^(?:Long l|L)abels/).map((sheet) => textOf(forms, sheet)))).join(' ');
    const at = cases.flatMap(cellsOf).map(({ shown }) => text.indexOf(shown.label));
    expect(at).not.toContain(-1);
    expect(at).toEqual(at.toSorted((a, b) => a - b));
  });

  test('print every label to be cut out at the size it has in the plan', async () => {
    const [sheet = 0] = sheetsNamed(/^Labels/);
    const marks = darkAlongRow(await dotsOf(forms, sheet), TOP - 2.2).map(([from, to]) => (from + to) / 2);
    expect((marks[1] ?? 0) - (marks[0] ?? 0)).toSatisfy((wide: number) => within(wide, exhibit.label.width));
    const all = (await Promise.all(sheetsNamed(/^(?:Long l|L)abels/).map((one) => wordsOf(forms, one)))).flat();
    // A line of 18 points is 7.9 mm high; the letters of a word are measured from its highest to its lowest.
    const high = all.filter(({ text }) => text === 'Shilling').map(({ top, bottom }) => (bottom - top) / POINT);
    expect(high.length).toBeGreaterThanOrEqual(20);
    for (const one of high) expect(one / (high[0] ?? 1)).toBeCloseTo(1, 2);
  });
});

type Tile = { readonly sheet: number; readonly corner: { left: number; top: number }; readonly size: { width: number; height: number } }; // prettier-ignore

/** The sheets of a case at true size, where each begins in the case, and how much of the case it shows: to the next, or to the end. */
async function tilesOf(number: number): Promise<readonly Tile[]> {
  const begun = await Promise.all(
    sheetsNamed(new RegExp(`^Case ${number} at true size: row`)).map(async (sheet) => {
      const words = (await wordsOf(forms, sheet)).map(({ text }) => text).join(' ');
      const [, left, top] = /is ([\d.]+) mm from the left and ([\d.]+) mm from the top/.exec(words) ?? [];
      return { sheet, corner: { left: Number(left), top: Number(top) } };
    }),
  );
  const next = (all: readonly number[], from: number, end: number): number =>
    Math.min(end, ...all.filter((at) => at > from + 1)) - from;
  return begun.map(({ sheet, corner }) => ({
    sheet,
    corner,
    size: {
      width: next(
        begun.map(({ corner: { left } }) => left),
        corner.left,
        CASE.width,
      ),
      height: next(
        begun.map(({ corner: { top } }) => top),
        corner.top,
        CASE.height,
      ),
    },
  }));
}

/** The words of a case where they stand in it, each once though a cut goes through it. */
async function wordsInCase(number: number): Promise<readonly PrintedWord[]> {
  const all: PrintedWord[] = [];
  for (const { sheet, corner, size } of await tilesOf(number))
    for (const { text, left, right, top, bottom } of await wordsOf(forms, sheet)) {
      if (top < TOP - 1 || bottom > TOP + size.height + 1) continue;
      const [across, down] = [corner.left - LEFT, corner.top - TOP];
      all.push({ text, left: left + across, right: right + across, top: top + down, bottom: bottom + down });
    }
  return all;
}

function isMiddleIn({ left, right, top, bottom }: PrintedWord, box: Box): boolean {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  return x > box.left && x < box.left + box.width && y > box.top && y < box.top + box.height;
}
