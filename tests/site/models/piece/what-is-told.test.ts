import { describe, expect, test } from 'vitest';
import { linkRecords } from '../../../../src/catalogue/link.ts';
import { readCabinet } from '../../../../src/catalogue/read-cabinet.ts';
import { publicPieces } from '../../../../src/publish/public-piece.ts';
import { attributionRows } from '../../../../src/site/models/piece/attribution.ts';
import { measureRows } from '../../../../src/site/models/piece/measures.ts';
import { asksFor1970, chainOf } from '../../../../src/site/models/piece/provenance.ts';
import { rulersPage } from '../../../../src/site/models/rulers/rulers-page.ts';
import { pieceWords } from '../../../../src/site/words/piece.ts';
import { changed, markedCabinet } from '../../../catalogue/small-cabinet.ts';

/** 243 pence to the Tower pound of 5,400 grains, of silver 925 in 1000: Challis, A New History of the Royal Mint (1992). */
const PENNY = `name: penny
plural: pennies
standards:
  - { from: 1279, to: 1343, weight: 22 2/9 grains, fineness: 925/1000, metal: silver, source: Challis 1992 }
`;

async function cabinetWith(files: Readonly<Record<string, string>>) {
  const { pieces: linked, ...lists } = linkRecords(readCabinet(changed(await markedCabinet(), files)).records);
  const pieces = publicPieces({ ...lists, pieces: linked });
  return { lists, pieces, listed: pieces, photographs: {}, changed: {} };
}

describe('what the page says of weight and fineness', () => {
  async function notesOf(facts: string, date = '1280'): Promise<Readonly<Record<string, string | undefined>>> {
    const cabinet = await cabinetWith({
      'denominations/penny.yaml': PENNY,
      'pieces/one/piece.md': `---\nnumber: "1"\ntitle: One\nkind: coin\ndenomination: penny\ndate: ${date}\nmetal: silver\n${facts}---\nA story.\n`,
    });
    const piece = cabinet.pieces.find(({ id }) => id === 'one');
    if (piece === undefined) throw new Error('The piece was not read.');
    return Object.fromEntries(
      [...measureRows(piece, cabinet), ...attributionRows(piece)].map(({ name, note }) => [name, note]),
    );
  }

  test('a weight in grains is told in grams, and one in grams in grains', async () => {
    // 21.6 grains of 0.06479891 g (Weights and Measures Act 1878) are 1.3997 g.
    expect((await notesOf('weight: 21.6 grains\n'))['Weight']).toBe('1.40 g');
    expect((await notesOf('weight: 1.40 g\n'))['Weight']).toBe('21.6 grains');
  });
  test('a fineness that is the standard’s is no measurement; an assayed range is', async () => {
    expect((await notesOf('weight: 1.40 g\nfineness: 925/1000\n'))['Fineness']).toContain('not a measurement');
    expect((await notesOf('weight: 1.40 g\nfineness: 0.90/0.93\n'))['Fineness'] ?? '').not.toContain('measurement');
  });
  test('what is recorded is quoted where it is words, and never where an import put the sign of an era to figures', async () => {
    const quoted = async (date: string) => (await notesOf('', date))[pieceWords.field.date] ?? '';
    expect(await quoted('AD 154-155')).toBe('');
    expect(await quoted('c. AD 140-144')).toBe('');
    expect(await quoted('57-38 BC')).toBe('');
    expect(await quoted('157X')).toBe('');
    expect(await quoted('Ende 14. Jh.')).toContain('Ende 14. Jh.');
    expect(await quoted('um 1280')).toContain('um 1280');
  });
  test('only what has an uncertainty is said to have one', async () => {
    const fine = async (facts: string) => (await notesOf(facts))['Fine metal'] ?? '';
    expect(await fine('weight: 1.40 g\nfineness: 910/1000\n')).not.toContain('uncertainty');
    expect(await fine('weight: 1.40 g ± 0.01\nfineness: 910/1000\n')).toContain('the uncertainty of the weight');
    expect(await fine('weight: 1.40 g ± 0.01\nfineness: 0.90/0.93\n')).toContain('the uncertainty of both');
  });
  test('a fineness that only the law gives makes no fine metal, unless the keeper asks for its value', async () => {
    const facts = 'weight: 1.40 g\nfineness: 925/1000\n';
    expect(Object.keys(await notesOf(facts))).not.toContain('Fine metal');
    expect(Object.keys(await notesOf(`${facts}metal-value: yes\n`))).toContain('Fine metal');
  });
});

// 19 U.S.C. 2601(2)(i): an object of archaeological interest is at least 250 years old. The Convention is of 14 November 1970.
test('1970 is asked of what was found or is old, and not of modern pieces', () => {
  const made = (low: number) => ({ low, high: low });
  expect(asksFor1970({ kind: 'coin', years: made(1280), found: null })).toBe(true);
  expect(asksFor1970({ kind: 'coin', years: null, found: null })).toBe(true);
  expect(asksFor1970({ kind: 'coin', years: made(1872), found: null })).toBe(false);
  expect(asksFor1970({ kind: 'coin', years: made(1872), found: { area: 'Yorkshire' } })).toBe(true);
  expect(asksFor1970({ kind: 'replica', years: null, found: null })).toBe(false);
});

test('that nothing proves a date before 1970 is told of finds alone; a proof is told of any old piece', async () => {
  const chainSays = async (facts: string, when: string) => {
    const chain = `provenance: [{ when: ${when}, how: purchase, evidence: ticket }]\n`;
    const piece = `---\nnumber: "1"\ntitle: One\nkind: coin\ndate: 1280\n${facts}${chain}---\nA story.\n`;
    const one = (await cabinetWith({ 'pieces/one/piece.md': piece })).pieces.find(({ id }) => id === 'one');
    if (one === undefined) throw new Error('The piece was not read.');
    return chainOf(one)?.proves.join(' ') ?? '';
  };
  expect(await chainSays('', '1934')).toContain('That is before 14 November 1970');
  expect(await chainSays('', '1990')).not.toContain('1970');
  expect(await chainSays('found: { area: East Riding }\n', '1990')).toContain(
    'No record of it from before 14 November 1970',
  );
});

test('drawings are credited as drawings', () => {
  expect(pieceWords.photographs('the keeper', 'CC0-1.0', 'drawing')).toBe('Drawings: the keeper; free for any use.');
  expect(pieceWords.photographs('the keeper', 'all rights reserved')).toBe(
    'Photographs: the keeper; all rights reserved.',
  );
  expect(pieceWords.photographs('the keeper', null)).toBe('Photographs: the keeper.');
});

test('within a year rulers stand by the day they began, and what is about right says so', async () => {
  const ruler = (name: string, from: string, to: string) =>
    `name: ${name}\nrealm: Albion\nreigns: [{ from: ${from}, to: ${to} }]\n`;
  // Harold II from 6 January 1066, Edgar chosen in October: Handbook of British Chronology, 3rd edition (1986).
  const cabinet = await cabinetWith({
    'rulers/a-edgar.yaml': ruler('Edgar', '1066-10', '1066-12'),
    'rulers/b-harold.yaml': ruler('Harold', '1066-01-06', '1066-10-14'),
    'rulers/c-cnut.yaml': ruler('Cnut', '0895~', '0905~'),
  });
  const rows = rulersPage(cabinet).realms.find(({ realm }) => realm === 'Albion')?.lines[0]?.line.rows ?? [];
  expect(rows.map(({ name }) => name)).toEqual(['Cnut', 'Harold', 'Edgar']);
  expect(rows[0]?.years).toMatch(/^about /u);
});
