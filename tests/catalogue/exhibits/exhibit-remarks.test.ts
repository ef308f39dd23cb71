import { describe, expect, test } from 'vitest';
import { exhibitRemarks } from '../../../src/catalogue/exhibits/exhibit-remarks.ts';
import { readFolder } from '../../../src/catalogue/files.ts';
import { linkRecords } from '../../../src/catalogue/link.ts';
import { readCabinet } from '../../../src/catalogue/read-cabinet.ts';
import { publicPieces } from '../../../src/publish/public-piece.ts';
import { setStates } from '../../../src/publish/set-states.ts';
import type { Change } from '../small-cabinet.ts';
import { changed, markedCabinet } from '../small-cabinet.ts';

const SHOW = 'exhibits/small-show/exhibit.md';
const PENNY = 'pieces/plain-penny/piece.md';
const MEDAL = 'pieces/old-medal/piece.md';
const TWO_SCALES =
  '{ piece: plain-penny, label: "A penny. VF." }\n          - { piece: old-medal, label: "A medal. ss." }';
const STATEMENT = Array.from({ length: 4 }, () => 'This is a sentence of six words.').join(' ');

/** The small show with this in its front matter, its group and the entry of its one piece. */
function show(
  {
    entry = 'plain-penny',
    fields = '',
    text = 'There is one.',
    inside = '300 x 200 x 40 mm',
    scope = 'One penny.',
  } = {},
  statement = STATEMENT,
): string {
  return `---\ntitle: A small show\nscope: ${scope}\nresearch: none\n${fields}cases:\n  - inside: ${inside}\n    groups:\n      - title: The penny\n        text: "${text}"\n        pieces:\n          - ${entry}\nbibliography: [plain-book]\n---\n${statement}\n`;
}
const labelled = (label: string): string => show({ entry: `{ piece: plain-penny, label: "${label}" }` });
const fact = (line: string) => (text: string) => text.replace(/^---\n/, `---\n${line}\n`);
const without = (pattern: RegExp) => (text: string) => {
  expect(text).toMatch(pattern);
  return text.replace(pattern, '');
};
const words = (count: number): string =>
  Array.from({ length: count / 10 }, () => `Word ${'word '.repeat(9).trim()}.`).join(' ');

async function remarksOn(change: Change): Promise<readonly { line: number | null; says: string; source: string }[]> {
  const folder = changed(await markedCabinet(), change);
  const { records, problems } = readCabinet(folder);
  expect(problems).toEqual([]);
  const catalogue = linkRecords(records);
  return exhibitRemarks(records, folder, setStates(catalogue, publicPieces(catalogue)));
}

const REFERENCES = /^references: .*\n/m;

/** What a judge would remark on, and where the rule is printed. */
const ROWS: readonly { readonly when: string; readonly change: Change; readonly says: RegExp; readonly source: RegExp; readonly line?: number }[] = [
  { when: 'a label of 400 words', change: { [SHOW]: labelled(words(400)) }, says: /^This label has 400 words; at most 100 are read\.$/, source: /Smithsonian/, line: 11 },
  { when: 'a sentence of 30 words', change: { [SHOW]: labelled(`${'word '.repeat(30).trim()}.`) }, says: /has 30 words; at most 25/, source: /Smithsonian/, line: 11 },
  { when: 'a text of 160 words with a group', change: { [SHOW]: show({ text: words(160) }) }, says: /^This text has 160 words; at most 150/, source: /Serrell/, line: 9 },
  { when: 'a statement of 310 words', change: { [SHOW]: show({}, words(310)) }, says: /^This statement has 310 words; at most 300/, source: /Serrell/, line: 14 },
  { when: 'no statement', change: { [SHOW]: show({}, '') }, says: /has no statement/, source: /Serrell/ },
  { when: 'no scope', change: { [SHOW]: show().replace('scope: One penny.\n', '') }, says: /Add a line scope:/, source: /our own judgement/ },
  { when: 'a title of eight words', change: { [SHOW]: show().replace('A small show', 'One two three four five six seven eight') }, says: /has 8 words; at most 7/, source: /Serrell/, line: 2 },
  { when: 'lines of more than 55 letters', change: { [SHOW]: show({ fields: 'label: { width: 200 mm }\n' }) }, says: /holds \d+ letters; at most 55/, source: /Smithsonian/, line: 5 },
  { when: 'type of 12 pt', change: { [SHOW]: show({ fields: 'label: { text: 12 pt }\n' }) }, says: /12 pt is hard to read/, source: /our own judgement/, line: 5 },
  { when: 'a case smaller than its largest piece', change: { [SHOW]: show({ inside: '18 x 18 mm' }) }, says: /^“Penny of a plain king” is itself larger than the case, by 0\.6 mm\. It fits if you take a case of at least/, source: /true size/, line: 11 },
  { when: 'a case that is too low', change: { [SHOW]: show({ inside: '300 x 40 mm', fields: 'label: { stand: below }\n' }) }, says: /^The case is too low by [\d.]+ mm for what it holds\. It fits if you/, source: /true size/ },
  { when: 'a piece thicker than the case is deep', change: { [SHOW]: show({ inside: '300 x 200 x 2 mm' }), [PENNY]: fact('thickness: 3.5 mm') }, says: /too thick for the case by 1\.5 mm.*at least 3\.5 mm deep/, source: /true size/, line: 11 },
  { when: 'a fixed position outside the case', change: { [SHOW]: show({ entry: '{ piece: plain-penny, at: 400 20 mm }' }) }, says: /reaches out of the case, by [\d.]+ mm at the right.*Write at: [\d.]+ 20 mm\.$/, source: /true size/, line: 11 },
  { when: 'a label higher than the keeper wants', change: { [SHOW]: show({ entry: `{ piece: plain-penny, label: "${words(40)}" }`, fields: 'label: { height: 20 mm }\n' }) }, says: /higher than 20 mm by [\d.]+ mm\. Shorten it/, source: /true size/ },
  { when: 'a piece without a diameter', change: { [SHOW]: show(), [PENNY]: without(/^diameter: .*\n/m) }, says: /its place in the plan is a guess/, source: /our own judgement/, line: 11 },
  { when: 'a certain attribution without a book', change: { [SHOW]: show(), [PENNY]: (text) => without(REFERENCES)(without(/^sure: .*\n/m)(text)) }, says: /^plain-penny is attributed as certain and names no book/, source: /our own judgement/, line: 11 },
  { when: 'a doubted one without a book', change: { [SHOW]: show(), [PENNY]: without(REFERENCES) }, says: /^plain-penny names no book/, source: /our own judgement/ },
  { when: 'a claim without a book', change: { [SHOW]: labelled('The only known one.'), [PENNY]: without(REFERENCES) }, says: /^“The only known” is a claim/, source: /our own judgement/, line: 11 },
  { when: 'a claim of few, whatever the piece cites', change: { [SHOW]: labelled('Only three are known.') }, says: /^“Only three are known” is a claim.*in the label/, source: /our own judgement/, line: 11 },
  { when: 'no word of research', change: { [SHOW]: show().replace('research: none\n', '') }, says: /own research.*Add a line research:/, source: /common practice/ },
  { when: 'a ruler of the scope who is not shown', change: { [SHOW]: show({ scope: 'From Plain king to Second king.' }) }, says: /^The scope names Second king, and no piece of Second king/, source: /pieces in the cases/, line: 3 },
  { when: 'a piece of another ruler than the scope', change: { [SHOW]: show({ scope: 'The money of Second king.' }) }, says: /^Outside the scope: plain-penny\./, source: /pieces in the cases/, line: 11 },
  { when: 'a piece of other years than the scope', change: { [SHOW]: show({ scope: 'Coins of 1300 to 1400.' }) }, says: /^Outside the scope: plain-penny\./, source: /pieces in the cases/, line: 11 },
  { when: 'a scope that is not in English', change: { [SHOW]: show({ scope: 'Von Plain king bis Second king.' }), 'cabinet.yaml': (text) => `${text}language: de\n` }, says: /only where they are in English, and this cabinet is in “de”/, source: /pieces in the cases/, line: 3 },
  { when: 'a number of pennies that is not shown', change: { [SHOW]: show({ scope: 'Thirty-one pennies.' }) }, says: /says “Thirty-one pennies”, and 1 is shown/, source: /pieces in the cases/, line: 3 },
  { when: 'a number of pieces in figures', change: { [SHOW]: show({ text: 'These 31 coins are all.' }) }, says: /says “31 coins”, and 1 is shown/, source: /pieces in the cases/, line: 9 },
  { when: 'a number beyond the last of a book', change: { [SHOW]: show(), 'works/plain-book.yaml': (text) => `${text}last: 11\n` }, says: /^“plain-book 12” of plain-penny is beyond the last number of that book, 11/, source: /works\/plain-book/, line: 11 },
  { when: 'a replica whose title does not say so', change: { [SHOW]: labelled('A penny.'), [PENNY]: (text) => text.replace('kind: coin', 'kind: replica') }, says: /does not say that it is a copy/, source: /16 CFR 304/, line: 11 },
  { when: 'a replica whose label does not say so', change: { [SHOW]: labelled('A penny.'), [PENNY]: (text) => text.replace('kind: coin', 'kind: replica') }, says: /put before your words/, source: /16 CFR 304/, line: 11 },
  { when: 'a complete set that is none', change: { [SHOW]: show({ fields: 'sets: [plain-set]\n', text: 'A complete set of kings.' }) }, says: /says “A complete set”, and the set “.*” has \d+ of \d+\. Write/, source: /rule of the set/, line: 10 },
  { when: 'a complete set of nothing that is named', change: { [SHOW]: show({ text: 'A complete set of kings.' }) }, says: /names no set.*Add a line sets:/, source: /rule of the set/, line: 9 },
  { when: 'a count that is not the set’s', change: { [SHOW]: show({ fields: 'sets: [plain-set]\n', text: 'Here are 40 of 42 kings.' }) }, says: /says “40 of 42”/, source: /rule of the set/, line: 10 },
  { when: 'a name nearly spelt', change: { [SHOW]: labelled('From the Kingdum of the west.'), 'rulers/plain-king.yaml': (text) => text.replace(/name: .*/, 'name: Kingdom Come') }, says: /^“Kingdum” is nearly Kingdom, as in rulers\/plain-king\.yaml\. Write Kingdom/, source: /your own list files/, line: 11 },
  { when: 'a mint as certain that the piece calls probable', change: { [SHOW]: labelled('A penny of Plain town. It may be the first.') , 'mints/plain-town.yaml': (text) => text.replace(/name: .*/, 'name: Plain town') }, says: /^The label says “Plain town” as certain, and of plain-penny sure: says mint: probable\. Write “probably”/, source: /our own judgement/, line: 11 },
  { when: 'a year as certain that the piece calls possible', change: { [SHOW]: labelled('A penny of 1281.'), [PENNY]: (text) => text.replace('mint: probable', 'date: possible') }, says: /^The label says “1281” as certain.*date: possible/, source: /our own judgement/, line: 11 },
  { when: 'grades on two scales', change: { [SHOW]: show({ entry: TWO_SCALES }), [MEDAL]: (text) => text.replace('grade: not graded', 'grade: ss\ngrade-scale: de') }, says: /^The labels give grades on 2 scales \(British, German\).*: old-medal\. Say them all on one scale\.$/, source: /our own judgement/ },
]; // prettier-ignore

describe('a judge remarks on', () => {
  test.for(ROWS)('$when', async ({ change, says, source, line }) => {
    const remarks = await remarksOn(change);
    const found = remarks.filter((remark) => says.test(remark.says));
    expect(remarks.map((remark) => remark.says).join('\n')).toMatch(new RegExp(says.source, 'm'));
    expect(found).toHaveLength(1);
    expect(found[0]?.source).toMatch(source);
    if (line !== undefined) expect(found[0]?.line).toBe(line);
  });
});

describe('a judge is silent', () => {
  test.for<{ readonly on: string; readonly change: Change }>([
    { on: 'a small show with nothing wrong', change: { [SHOW]: show() } },
    {
      on: 'grades on two scales that no label tells',
      change: {
        [SHOW]: show(),
        [MEDAL]: (text) => text.replace('grade: not graded', 'grade: ss\ngrade-scale: de'),
      },
    },
    {
      on: 'a claim with its book in the label',
      change: { [SHOW]: labelled('The only known one (A plain book, 12).') },
    },
    {
      on: 'two numbers of which one is shown here',
      change: { [SHOW]: show({ text: 'The hoard had 500 pennies. One penny is shown here.' }) },
    },
    {
      on: 'a scope that allows a few others',
      change: { [SHOW]: show({ scope: 'Coins of 1300 to 1400, with a few earlier.' }) },
    },
    {
      on: 'a ruler whom the scope leaves out',
      change: { [SHOW]: show({ scope: 'One penny. It leaves out Second king.' }) },
    },
    {
      on: 'a last number that is not passed',
      change: { [SHOW]: show(), 'works/plain-book.yaml': (text) => `${text}last: 12\n` },
    },
    {
      on: 'a list of references left empty on purpose',
      change: { [SHOW]: show(), [PENNY]: (text) => text.replace(REFERENCES, 'references: []\n') },
    },
    {
      on: 'a first reign, and what is at last',
      change: {
        [SHOW]: labelled('From the first reign, at last. The last of the year.'),
        [PENNY]: (text) => text.replace(REFERENCES, 'references: []\n'),
      },
    },
    {
      on: 'a set that is said to be far from complete',
      change: { [SHOW]: show({ text: 'This is not a complete set.' }) },
    },
    {
      on: 'a doubt that the label keeps',
      change: { [SHOW]: labelled('A penny, probably of Plain town.') },
    },
    { on: 'some of the pieces in a case', change: { [SHOW]: show({ text: 'Look at 2 of 3 of them.' }) } },
  ])('on $on', async ({ change }) => {
    expect(await remarksOn(change)).toEqual([]);
  });

  // The demo has been looked at as a judge would, and what was right in the remarks has been fixed in its files.
  test('on the demo exhibit', async () => {
    const folder = await readFolder('content');
    if (folder === null) throw new Error('There is no demo.');
    const { records, problems } = readCabinet(folder);
    expect([problems, records.exhibits.length]).toEqual([[], 1]);
    const catalogue = linkRecords(records);
    expect(exhibitRemarks(records, folder, setStates(catalogue, publicPieces(catalogue)))).toEqual([]);
  });
});
