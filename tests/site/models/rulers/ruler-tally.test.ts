import { expect, test, vi } from 'vitest';
import { NO_ADDRESSES } from '../../../../src/catalogue/addresses.ts';
import { handOver } from '../../../../src/catalogue/handed-over.ts';
import { readCabinet } from '../../../../src/catalogue/read-cabinet.ts';
import { loadCabinet } from '../../../../src/site/cabinet.ts';
import { piecesOfRuler, tallyOfRuler } from '../../../../src/site/models/rulers/pieces-of-ruler.ts';
import { rulerPage } from '../../../../src/site/models/rulers/ruler-page.ts';
import { rulersPage } from '../../../../src/site/models/rulers/rulers-page.ts';
import { facetPaths } from '../../../../src/site/models/find/find-page.ts';
import { mintPaths } from '../../../../src/site/models/mints/mint-page.ts';
import { tallyOfMint } from '../../../../src/site/models/mints/mints-page.ts';
import { countWords } from '../../../../src/site/words/counts.ts';
import { rulersWords } from '../../../../src/site/words/rulers.ts';
import { changed, markedCabinet } from '../../../catalogue/small-cabinet.ts';

// An immobilised coinage as the English short-cross pence were: HENRICVS under Henry, Richard and John (common practice).
const KINGS = ['henry', 'richard', 'john', 'anlaf'];
const PIECES: Readonly<Record<string, string>> = {
  own: 'ruler: henry',
  'for-richard': 'ruler: henry\nstruck-for: richard',
  'for-john': 'ruler: henry\nstruck-for: john',
  half: 'ruler: henry\nstruck-for: [henry, richard, john]\nsure: { struck-for: possible }',
  copy: 'ruler: anlaf\nkind: replica',
  doubtful: 'ruler: john\nmint: town\nsure: { ruler: probable, mint: possible }',
  // Common practice: the archbishop's penny is in the king's name, the styca in his own.
  'by-bishop': 'ruler: richard\nstatus: sold\nissuer: Bishop Odo\nmint: town',
  'in-own-name': 'ruler: wigmund\nissuer: Archbishop Wigmund\nmint: town',
  'by-king': 'ruler: henry\nstatus: sold\nissuer: The king\nmint: elsewhere',
  sold: 'ruler: richard\nstatus: sold\nmint: town',
};

const piece = (id: string, fields: string, at: number): string =>
  `---\nnumber: "90${String(at)}"\ntitle: ${id}\n${fields.includes('kind:') ? '' : 'kind: coin\n'}${fields}\n---\nA test.\n`;

const folder = changed(await markedCabinet(), {
  ...Object.fromEntries(
    KINGS.map((king, at) => [
      `rulers/${king}.yaml`,
      `name: ${king}\nrealm: England\nreigns: [{ from: 1${String(at)}00, to: 1${String(at)}50 }]\n`,
    ]),
  ),
  'rulers/eadwulf.yaml': 'name: eadwulf\nrealm: England\nreigns: [{ from: 1500, to: 1501, coins: no }]\n',
  'rulers/wigmund.yaml': 'name: Wigmund\nrole: archbishop\n',
  'mints/town.yaml': 'name: Town\n',
  'mints/elsewhere.yaml': 'name: Elsewhere\n',
  ...Object.fromEntries(
    Object.entries(PIECES).map(([id, fields], at) => [`pieces/${id}/piece.md`, piece(id, fields, at)]),
  ),
});
vi.stubEnv('SITE', 'https://example.org');
handOver({ records: readCabinet(folder).records, photographs: '', hasAddress: true, addresses: NO_ADDRESSES });
const cabinet = await loadCabinet();

test.for([
  ['henry', '1 to 2 pieces, 1 no longer here; 2 more in this name, struck for others'],
  ['richard', '1 to 2 pieces, 2 no longer here; struck in another name'],
  ['john', '1 to 3 pieces; 1 to 2 of them in another name'],
  ['anlaf', 'no piece, 1 modern copy'],
] as const)('%s: %s', ([king, says]) => {
  expect(rulersWords.count(tallyOfRuler(piecesOfRuler(cabinet, king)))).toBe(says);
});

test('what is drawn agrees with what is counted', () => {
  const rows = rulersPage(cabinet).realms.flatMap(({ lines }) => lines.flatMap(({ line }) => line.rows));
  const kindOf = (name: string) => rows.find((row) => row.name === name)?.bars.map(({ kind }) => kind);
  expect(KINGS.map(kindOf)).toEqual([['sure'], ['sure'], ['sure'], ['gap']]);
  expect(rows.find(({ name }) => name === 'eadwulf')?.note).toBe(rulersWords.noCoins);
});

test('a mint counts as a ruler does', () => {
  expect(countWords.tally(tallyOfMint(cabinet, 'town'))).toBe('1 to 2 pieces, 2 no longer here');
});

test('who is named and did not rule, and who issues in another name, are apart from the rulers', async () => {
  const realms = rulersPage(cabinet).realms;
  const namesUnder = (title: string) =>
    realms.find(({ realm }) => realm === title)?.lines.flatMap(({ line }) => line.rows.map(({ name }) => name));
  expect(namesUnder(rulersWords.notRulers)).toEqual(['Wigmund']);
  const issuers = namesUnder(rulersWords.issuers);
  expect(issuers).toContain('Bishop Odo');
  expect(issuers?.filter((name) => /Wigmund|king/.test(name))).toEqual([]);
  expect(namesUnder('England')).not.toContain('Wigmund');
  const [town] = (await mintPaths()).filter(({ params }) => params.id === 'town');
  const page = await town?.props.page();
  expect(page?.rulers.map(({ name }) => name)).toContain('Wigmund');
  expect(page?.issuers.map(({ name }) => name)).toEqual(['Bishop Odo']);
});

test('the page of a king says for whom else a piece may have been struck', async () => {
  const rows = (await rulerPage(cabinet, 'henry')).line?.rows ?? [];
  const noteOf = (name: string) => rows.find((row) => row.name === name)?.note;
  expect(noteOf('half')).toBe('perhaps struck for richard or for john');
  expect(noteOf('for-john')).toBe('struck for john');
  expect(noteOf('own')).toBeNull();
});

test('the list of a ruler or a mint says what it comes to, where that is not its length', async () => {
  const says = async (facet: string, value: string) =>
    (await (await facetPaths()).find(({ params }) => params.facet === facet && params.value === value)?.props.page())
      ?.says;
  expect(await says('ruler', 'henry')).toMatch(/^All \d pieces\. Counted: 1 to 2 pieces/);
  expect(await says('ruler', 'anlaf')).toMatch(/Counted: no piece, 1 modern copy$/);
  expect(await says('mint', 'town')).toMatch(/Counted: 1 to 2 pieces, 2 no longer here$/);
  expect(await says('ruler', 'wigmund')).not.toContain('Counted');
});
