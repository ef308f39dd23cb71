import { describe, expect, test } from 'vitest';
import { decodeText } from '../../../../src/import/sheets/text/decode-text.ts';
import { decodeAs } from '../../../../src/import/sheets/text/encodings.ts';
import { bytesOf, problemOf, publishedSheet, readFileOf } from '../read-one.ts';

const FILES = [
  'windows-1250',
  'windows-1251',
  'windows-1252',
  'windows-1253',
  'windows-1256',
  'macintosh',
  'utf-16le',
  'utf-16be',
];

describe('files that iconv made', () => {
  test.for(FILES)('%s is found and read letter by letter', async (encoding) => {
    const meant = new TextDecoder().decode(await publishedSheet(`encodings/${encoding}.utf-8.csv`));
    const decoded = decodeText(await publishedSheet(`encodings/${encoding}.csv`), 'coins.csv');
    expect(decoded).toMatchObject({ ok: true, value: { encoding, text: meant } });
  });

  test.for(FILES)('%s is read as the keeper says', async (encoding) => {
    const meant = new TextDecoder().decode(await publishedSheet(`encodings/${encoding}.utf-8.csv`));
    const decoded = decodeText(await publishedSheet(`encodings/${encoding}.csv`), 'coins.csv', encoding);
    expect(decoded).toMatchObject({ ok: true, value: { text: meant, doubts: [] } });
  });
});

describe('doubts', () => {
  test('two readings that differ in a letter are both shown, the likelier first', async () => {
    const bytes = Uint8Array.from([...bytesOf('a;b\n1;caf'), 0xe9, ...bytesOf(' pr'), 0xe8, ...bytesOf('s York\n')]);
    expect((await readFileOf(bytes, 'a.csv')).reading).toEqual({
      kind: 'text',
      encoding: 'windows-1252',
      separator: ';',
      doubts: [
        { encoding: 'windows-1252', preview: '1;café près York' },
        { encoding: 'windows-1250', preview: '1;café prčs York' },
      ],
    });
  });

  test('readings that agree in every letter leave none', async () => {
    const bytes = Uint8Array.from([...bytesOf('a;b\n1;M'), 0xfc, ...bytesOf('ller\n')]);
    expect((await readFileOf(bytes, 'a.csv')).reading).toMatchObject({ encoding: 'windows-1252', doubts: [] });
  });

  test('a sign in the midst of a word is a letter misread', async () => {
    const bytes = Uint8Array.from([...bytesOf('a;b\n1;pi'), 0xea, 0xe6, ...bytesOf(' z'), 0xb3, ...bytesOf('otych\n')]);
    expect((await readFileOf(bytes, 'a.csv')).sheets[0]?.rows[0]?.cells[1]?.text).toBe('pięć złotych');
    const word = Uint8Array.from([...bytesOf('a;b\n1;z'), 0xb3, ...bytesOf('oty\n')]);
    expect((await readFileOf(word, 'a.csv')).reading).toMatchObject({ encoding: 'windows-1250', doubts: [] });
  });

  test('an encoding that has no letter for a byte is not the one', async () => {
    const bytes = Uint8Array.from([
      ...bytesOf('a;b\n1;'),
      0xc9,
      ...bytesOf('TAIN '),
      0xc9,
      ...bytesOf('TAIN '),
      0x81,
      10,
    ]);
    const { reading } = await readFileOf(bytes, 'a.csv');
    expect(JSON.stringify(reading)).not.toContain('windows-1252');
  });

  test('Thorn and Eth are letters of a legend, and Polish and Turkish ones are shown beside them', async () => {
    const { reading } = await readFileOf(await publishedSheet('encodings/windows-1252.csv'), 'a.csv');
    const previews = reading.kind === 'text' ? reading.doubts.map(({ preview }) => preview) : [];
    expect(previews.slice(0, 2)).toEqual([
      '1;Penny of Æthelred II;ÆÞELRED REX ANGLO – “York”;£12',
      '1;Penny of Æthelred II;ÆŞELRED REX ANGLO – “York”;£12',
    ]);
    expect(previews).toContain('1;Penny of Ćthelred II;ĆŢELRED REX ANGLO – “York”;Ł12');
  });
});

// Encoding Standard, index windows-1252: the bytes 80 to 9F, which ISO-8859-1 has as control signs.
test('windows-1252 has its signs between 80 and 9F on every Node', () => {
  const between = Uint8Array.from({ length: 32 }, (_, at) => 0x80 + at);
  expect(decodeAs(between, 'windows-1252')).toBe('€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ');
});

test('a mark at the beginning is no letter of the first heading', async () => {
  for (const mark of ['\uFEFF', '']) {
    const file = await readFileOf(`${mark}No;Title\n1;Łódź\n`, 'a.csv');
    expect(file.sheets[0]?.columns[0]?.heading).toBe('No');
  }
  const wide = new Uint8Array([0xff, 0xfe, ...Buffer.from('No;Title\n1;Łódź\n', 'utf16le')]);
  expect((await readFileOf(wide, 'a.csv')).sheets[0]?.columns[0]?.heading).toBe('No');
});

test('a file that is UTF-8 but for one line is told of by that line', async () => {
  const bytes = Uint8Array.from([...bytesOf('No;Title\n1;Æthelred, Łódź, Kőszeg, Þór\n2;caf'), 0xe9, ...bytesOf('\n')]);
  expect(await problemOf(bytes, 'a.csv')).toBe(
    'Line 3 of a.csv is not UTF-8, though the rest is ("2;caf\uFFFD"). Fix the letters shown as \uFFFD there and save the file as UTF-8, or name another encoding.',
  );
});

test('an encoding nobody knows is told of', async () => {
  expect(await problemOf('a;b', 'a.csv', { encoding: 'klingon' })).toMatch(
    /^No encoding is called "klingon"\. Write one of utf-8,/,
  );
  expect((await readFileOf('a;b\n1;2', 'a.csv', { encoding: 'MacRoman' })).reading).toMatchObject({
    encoding: 'macintosh',
  });
  expect((await readFileOf('a;b\n1;2', 'a.csv', { encoding: 'cp1250' })).reading).toMatchObject({
    encoding: 'windows-1250',
  });
});
