import { expect, test } from 'vitest';
import { privateNoteRemarks, speaksPrivately } from '../../src/privacy/private-notes.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { changed, markedCabinet, problemsOf } from '../catalogue/small-cabinet.ts';
import type { Change } from '../catalogue/small-cabinet.ts';

const PENNY = 'pieces/plain-penny/piece.md';
const MEDAL = 'pieces/old-medal/piece.md';
const fact = (line: string) => (text: string) =>
  text.replace(new RegExp(`^${line.split(':')[0] ?? ''}:.*\n`, 'm'), '').replace(/^kind:/m, `${line}\nkind:`);

/** What check says of a ledger with notes, a fact of the penny, and what has been answered. */
async function told(notes: string, line: string, answers = '', more: Change = {}) {
  const folder = changed(await markedCabinet(), {
    'private/ledger.csv': `piece,notes,from whom\n${notes}\n`,
    ...(answers === '' ? {} : { 'private/not-secret.csv': `column,value,date\n${answers}\n` }),
    [PENNY]: fact(line),
    ...more,
  });
  return problemsOf(folder).filter(({ kind }) => kind === 'told-twice' || kind === 'private-in-text');
}

test('notes that are word for word a public fact of the piece are asked about, once for two columns', async () => {
  const twice = await told('plain-penny,Vera,\nold-medal,Ned,', 'issuer: Vera', '', { [MEDAL]: fact('issuer: ned') });
  expect(twice).toMatchObject([{ kind: 'told-twice', file: PENNY, field: 'issuer' }]);
  expect(twice[0]?.says).toContain('"notes in issuer" as the column');
  expect(await told('plain-penny,,Vera', 'issuer: VERA')).toMatchObject([{ kind: 'told-twice' }]);
  expect(await told('plain-penny,Drawer four,', 'problem: drawer four')).toMatchObject([{ kind: 'told-twice' }]);
  expect(await told('plain-penny,Vera,', 'tags: [first, vera]')).toMatchObject([{ kind: 'told-twice' }]);
  // The words of a piece elsewhere, of a name in the lists, or of a fault are there by right.
  expect(await told('old-medal,Vera,', 'issuer: Vera')).toEqual([]);
  expect(await told('plain-penny,Plain Town,', 'issuer: Plain Town')).toEqual([]);
  expect(await told('plain-penny,Holed twice,', 'problem: holed twice')).toEqual([]);
  expect(await told('plain-penny,Kratzer,', 'problem: Kratzer')).toEqual([]);
});

test.for([
  ['issuer', 'issuer: Vera 7'],
  ['problem', 'problem: Vera 7'],
  ['peculiarities', 'peculiarities: [off-centre, vera 7]'],
  ['treatments', 'treatments: [Vera 7]'],
  ['made', 'made: Vera 7'],
  ['shape', 'shape: – Vera 7'],
  ['dated', 'dated: "Vera 7"'],
  ['tags', 'tags: [Vera 7]'],
] as const)('notes that are the %s of the piece are asked about', async ([field, line]) => {
  expect(await told(' plain-penny , – Vera 7 ,', line)).toMatchObject([{ kind: 'told-twice', field }]);
});

test('a seller is no note, a piece that is not published tells nothing, and another answer answers nothing', async () => {
  const seller = { 'private/ledger.csv': 'piece,seller\nplain-penny,Vera\n' };
  expect((await told('', 'issuer: Vera', '', seller)).map(({ kind }) => kind)).not.toContain('told-twice');
  const hidden = { [PENNY]: (text: string) => fact('publish: no')(fact('issuer: Vera')(text)) };
  expect(await told('plain-penny,Vera,', '', '', hidden)).toEqual([]);
  expect(await told('plain-penny,Vera,', 'issuer: Vera', 'notes,Ned,2026-11-30')).toHaveLength(1);
  expect(await told('plain-penny,Vera,', 'issuer: Vera', 'notes in issuer,Ned,2026-11-30')).toHaveLength(1);
});

test('a name of the lists is told by right, whatever sign stands before it', async () => {
  const town = { 'mints/x.yaml': 'name: – Wenlock\n' };
  expect(await told('plain-penny,Wenlock,', 'issuer: Wenlock', '', town)).toEqual([]);
});

test('that is answered once for all of a column, and a sentence with it', async () => {
  const sentence = ['plain-penny,Not to be shown to anybody,', 'problem: Not to be shown to anybody'] as const;
  expect((await told(...sentence)).map(({ kind }) => kind).sort()).toEqual(['private-in-text', 'told-twice']);
  expect(await told(...sentence, 'notes in problem,*,2026-11-30')).toEqual([]);
  expect(await told(...sentence, 'notes in issuer,*,2026-11-30')).toHaveLength(2);
  expect(await told('plain-penny,Vera,', 'issuer: Vera', 'notes,Vera,2026-11-30')).toEqual([]);
});

// As collectors write such notes, from memory, in five languages.
test.for([
  ['show to nobody', 'secrecy'], ['Nicht zeigen!', 'secrecy'], ['ne pas montrer', 'secrecy'], ['PRIVÉ', 'secrecy'], ['niet laten zien', 'secrecy'],
  ['bought off Ned', 'buying'], ['inherited', 'buying'], ['gift of V.', 'buying'], ['gekauft 1998', 'buying'], ['achetée à Lyon', 'buying'],
  ['gekregen van Jan', 'buying'], ['drawer 4', 'keeping'], ['Tray B12', 'keeping'], ['Schublade 3', 'keeping'], ['tiroir n° 2', 'keeping'],
  ['doos 7', 'keeping'], ['in the bank', 'keeping'], ['au coffre', 'keeping'], ['im Tresor', 'keeping'], ['in de kluis', 'keeping'],
  ['behind the clock', 'keeping'], ['my first', 'persons'], ['Opa', 'persons'], ['vera@example.org', 'addresses'], ['Tel. 0123 45', 'addresses'],
] as const)('%s speaks of %s', ([text, of]) => expect(speaksPrivately(text)).toBe(of)); // prettier-ignore

// Issuers, faults and forms as books print them, from memory.
test.for([
  'Bank of England', 'Banque de France', 'Archbishop of York', 'Privy Council', 'Private mint of the Duchy', 'private token issue', 'a secret mark in the T', 'point secret', 'Royal Mint', 'pierced', 'holed twice',
  'Kratzer', 'trouée', 'octagonal', 'in collar', 'Stadt Köln', 'States of Holland', 'Mine d’or', 'Tresor public', 'Safavid', 'Boxed flan', 'AV 12',
] as const)('%s is no private note', (text) => expect(speaksPrivately(text)).toBeNull()); // prettier-ignore

test('a fact that speaks so is remarked on once for its field, until it is answered', async () => {
  const change = { [PENNY]: fact('issuer: bought off Ned'), [MEDAL]: fact('issuer: drawer 4') };
  const folder = changed(await markedCabinet(), change);
  const remarks = privateNoteRemarks(readCabinet(folder).records, folder);
  expect(remarks).toEqual([
    expect.stringMatching(/: its issuer speaks of (buying|keeping) .* So do those of 1 more\./),
  ]);
  const answered = changed(await markedCabinet(), { ...change, 'private/not-secret.csv': 'column,value,date\nissuer,*,2026-11-30\n' }); // prettier-ignore
  expect(privateNoteRemarks(readCabinet(answered).records, answered)).toEqual([]);
  const hidden = changed(await markedCabinet(), { [PENNY]: (text: string) => fact('publish: no')(fact('issuer: drawer 4')(text)) }); // prettier-ignore
  expect(privateNoteRemarks(readCabinet(hidden).records, hidden)).toEqual([]);
});
