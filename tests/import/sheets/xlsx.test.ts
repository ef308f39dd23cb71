import { describe, expect, test } from 'vitest';
import { workbookOf, zipOf } from './make-workbook.ts';
import { headingsOf, readFileOf, readOne, textsOf } from './read-one.ts';

const HEAD =
  '<row r="1"><c r="A1" t="inlineStr"><is><t>No</t></is></c><c r="B1" t="inlineStr"><is><t>Title</t></is></c></row>';
const sheetOf = (rows: string, after = ''): string => `<sheetData>${HEAD}${rows}</sheetData>${after}`;

// Clauses are of ECMA-376 part 1, fifth edition.
describe('cells of a workbook made by hand', () => {
  test.for([
    ['a string by number (18.3.1.4)', '<c r="B2" t="s"><v>0</v></c>', 'Penny of York'],
    ['a string in runs, without how it is pronounced (18.4.8, 18.4.6)', '<c r="B2" t="s"><v>1</v></c>', '一朱銀'],
    [
      'an inline string in runs (18.3.1.53)',
      '<c r="B2" t="inlineStr"><is><r><t>Pen</t></r><r><rPr><b/></rPr><t>ny</t></r></is></c>',
      'Penny',
    ],
    [
      'a letter XML cannot hold (22.9.2.19)',
      '<c r="B2" t="inlineStr"><is><t>a_x000D_\nb _x005F_x0041_</t></is></c>',
      'a\nb _x0041_',
    ],
    [
      'the result of a formula that is a text (18.3.1.40)',
      '<c r="B2" t="str"><f>A2&amp;"x"</f><v>0123x</v></c>',
      '0123x',
    ],
    ['the result of a formula that is a number', '<c r="B2"><f>1+1</f><v>2</v></c>', '2'],
    ['a truth', '<c r="B2" t="b"><v>1</v></c>', 'TRUE'],
    ['an error', '<c r="B2" t="e"><v>#REF!</v></c>', '#REF!'],
    ['a day of ISO 8601 (18.18.11)', '<c r="B2" t="d" s="1"><v>2011-05-14T00:00:00</v></c>', '14/05/2011'],
    [
      'blanks kept and taken from the ends',
      '<c r="B2" t="inlineStr"><is><t xml:space="preserve">  a  b </t></is></c>',
      'a  b',
    ],
    [
      'markup and script',
      '<c r="B2" t="inlineStr"><is><t>&lt;script&gt;alert(1)&lt;/script&gt; &amp;amp;</t></is></c>',
      '<script>alert(1)</script> &amp;',
    ],
    ['a section of characters', '<c r="B2" t="inlineStr"><is><t><![CDATA[<b>]]></t></is></c>', '<b>'],
    ['a number too small for a cell', '<c r="B2"><v>1.3799999999999999</v></c>', '1.38'],
    ['a formula whose result was never stored', '<c r="B2"><f>A2*2</f></c>', '=A2*2'],
    [
      'a choice of markup, as it falls back',
      '<c r="B2" t="inlineStr"><mc:AlternateContent xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"><mc:Choice Requires="z"><v>9</v></mc:Choice></mc:AlternateContent><is><t>old</t></is></c>',
      'old',
    ],
  ] as const)('%s', async ([, cell, text]) => {
    const strings =
      '<si><t>Penny of York</t></si><si><r><t>一朱</t></r><r><t>銀</t></r><rPh sb="0" eb="2"><t>イッシュギン</t></rPh></si>';
    const bytes = workbookOf(sheetOf(`<row r="2"><c r="A2"><v>1</v></c>${cell}</row>`), {
      strings,
      formats: ['dd/mm/yyyy'],
    });
    expect(textsOf(await readOne(bytes))).toEqual([['1', text]]);
  });

  test('rows and cells without references follow one another', async () => {
    const bytes = workbookOf(
      '<sheetData><row><c t="inlineStr"><is><t>No</t></is></c><c t="inlineStr"><is><t>Title</t></is></c></row><row><c><v>1</v></c><c><v>2</v></c></row></sheetData>',
    );
    const sheet = await readOne(bytes);
    expect([headingsOf(sheet), textsOf(sheet), sheet.rows[0]?.row]).toEqual([['No', 'Title'], [['1', '2']], 2]);
  });

  test('days count from 1904 where the workbook says so (18.2.28)', async () => {
    const row = '<row r="2"><c r="A2"><v>1</v></c><c r="B2" s="1"><v>39215</v></c></row>';
    const of = (properties: string) => readOne(workbookOf(sheetOf(row), { formats: ['yyyy-mm-dd'], properties }));
    expect((await of('<workbookPr date1904="1"/>')).rows[0]?.cells[1]?.text).toBe('2011-05-14');
    expect((await of('<workbookPr/>')).rows[0]?.cells[1]?.text).toBe('2007-05-13');
  });

  test('a figure merged over rows stays in the first, and is told of', async () => {
    const rows =
      '<row r="2"><c r="A2"><v>1</v></c><c r="B2"><v>50</v></c></row><row r="3"><c r="A3"><v>2</v></c></row>';
    const sheet = await readOne(workbookOf(sheetOf(rows, '<mergeCells><mergeCell ref="B2:B3"/></mergeCells>')));
    expect(textsOf(sheet)).toEqual([
      ['1', '50'],
      ['2', ''],
    ]);
    expect(sheet.remarks).toEqual([
      {
        rows: [2, 3],
        says: 'B2:B3 is one cell merged over several rows. Its figure is in row 2 alone; write it into the others if it is theirs too.',
      },
    ]);
  });

  test('a title that runs across the columns between rows stands aside', async () => {
    const rows =
      '<row r="2"><c r="A2" t="inlineStr"><is><t>Edward I</t></is></c></row><row r="3"><c r="A3"><v>1</v></c><c r="B3"><v>2</v></c></row>';
    const sheet = await readOne(workbookOf(sheetOf(rows, '<mergeCells><mergeCell ref="A2:B2"/></mergeCells>')));
    expect(sheet.setAside).toEqual([
      { row: 2, text: 'Edward I', because: 'it is a title that runs across the columns', isHeading: true },
    ]);
  });

  test('a filter says where the headings are (18.3.1.2)', async () => {
    const rows =
      '<row r="2"><c r="A2" t="inlineStr"><is><t>Number</t></is></c><c r="B2" t="inlineStr"><is><t>Name</t></is></c></row><row r="3"><c r="A3"><v>1</v></c><c r="B3"><v>2</v></c></row>';
    expect((await readOne(workbookOf(sheetOf(rows, '<autoFilter ref="A2:B3"/>')))).headingRow).toBe(2);
    expect((await readOne(workbookOf(sheetOf(rows)))).headingRow).toBe(1);
  });

  test('columns and rows may be hidden (18.3.1.13, 18.3.1.73)', async () => {
    const rows = '<row r="2" hidden="1"><c r="A2"><v>1</v></c><c r="B2"><v>2</v></c></row>';
    const sheet = await readOne(workbookOf(`<cols><col min="2" max="16384" hidden="true"/></cols>${sheetOf(rows)}`));
    expect(sheet.columns.map(({ isHidden }) => isHidden)).toEqual([false, true]);
    expect(sheet.rows[0]?.isHidden).toBe(true);
  });

  test('an address in a HYPERLINK formula is a text in a column of links', async () => {
    const rows =
      '<row r="2"><c r="A2"><v>1</v></c><c r="B2" t="str"><f>HYPERLINK("https://example.org/1","here")</f><v>here</v></c></row>';
    const sheet = await readOne(workbookOf(sheetOf(rows)));
    expect(textsOf(sheet)).toEqual([['1', 'here', 'B: https://example.org/1']]);
  });
});

describe('packages of other makers', () => {
  const S = 'http://purl.oclc.org/ooxml/spreadsheetml/main';
  const R = 'http://purl.oclc.org/ooxml/officeDocument/relationships';
  const P = 'http://schemas.openxmlformats.org/package/2006/relationships';

  test('strict names, other prefixes, targets from the root, parts that are missing, sheets in another order', async () => {
    const sheet = (word: string): string =>
      `<x:worksheet xmlns:x="${S}"><x:sheetData><x:row r="1"><x:c r="A1" t="inlineStr"><x:is><x:t>${word}</x:t></x:is></x:c></x:row></x:sheetData></x:worksheet>`;
    const bytes = zipOf({
      '[Content_Types].xml': '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
      '_rels/.rels': `<p:Relationships xmlns:p="${P}"><p:Relationship Id="a" Type="${R}/officeDocument" Target="/book/main.xml"/></p:Relationships>`,
      'book/main.xml': `<x:workbook xmlns:x="${S}" xmlns:q="${R}"><x:sheets><x:sheet name="Second" q:id="two" state="veryHidden"/><x:sheet name="First" q:id="one"/><x:sheet name="Chart" q:id="three"/></x:sheets></x:workbook>`,
      'book/_rels/main.xml.rels': `<Relationships xmlns="${P}"><Relationship Id="one" Type="${R}/worksheet" Target="../Sheets/ONE.xml"/><Relationship Id="two" Type="${R}/worksheet" Target="/sheets/two.xml"/><Relationship Id="three" Type="${R}/chartsheet" Target="/sheets/two.xml"/></Relationships>`,
      'Sheets/one.xml': sheet('one'),
      'sheets/two.xml': sheet('two'),
      '../../etc/passwd': 'nothing is written anywhere',
    });
    const { sheets } = await readFileOf(bytes, 'book.xlsx');
    expect(sheets.map(({ name, isHidden, columns }) => [name, isHidden, columns[0]?.heading])).toEqual([
      ['Second', true, 'two'],
      ['First', false, 'one'],
    ]);
  });

  test('comments, threads of them, links and pictures hang on a sheet', async () => {
    const M = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
    const T = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
    const rows =
      '<row r="2"><c r="A2"><v>1</v></c><c r="B2"><v>2</v></c></row><row r="3"><c r="A3"><v>2</v></c><c r="B3" t="e" vm="1"><v>#VALUE!</v></c></row>';
    const bytes = workbookOf(sheetOf(rows, '<hyperlinks><hyperlink ref="A2" r:id="h"/></hyperlinks>'), {
      parts: {
        'xl/worksheets/_rels/sheet1.xml.rels': `<Relationships xmlns="${P}"><Relationship Id="c" Type="${T}/comments" Target="../comments1.xml"/><Relationship Id="t" Type="http://schemas.microsoft.com/office/2017/10/relationships/threadedComment" Target="../threadedComments/threadedComment1.xml"/><Relationship Id="h" Type="${T}/hyperlink" Target="https://example.org/1" TargetMode="External"/><Relationship Id="d" Type="${T}/drawing" Target="../drawings/drawing1.xml"/></Relationships>`,
        'xl/comments1.xml': `<comments xmlns="${M}"><commentList><comment ref="A2"><text><r><t>Bought of </t></r><r><t>an aunt</t></r></text></comment><comment ref="B2"><text><t>[old form]</t></text></comment></commentList></comments>`,
        'xl/threadedComments/threadedComment1.xml':
          '<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="B2" id="1"><text>Weighed again</text></threadedComment></ThreadedComments>',
      },
    });
    const sheet = await readOne(bytes);
    expect(headingsOf(sheet)).toEqual(['No', 'Title', 'Comments on cells', 'Links of cells']);
    expect(textsOf(sheet)).toEqual([
      ['1', '2', 'B: Weighed again\nA: Bought of an aunt', 'A: https://example.org/1'],
      ['2', '', '', ''],
    ]);
    expect(sheet.remarks?.[0]).toEqual({
      rows: [3],
      says: 'Pictures or charts lie on this sheet. They are not imported; save them as files of their own.',
    });
  });
});

/** Fills as 18.8.20 and 18.8.32 have them: the first two are none and a pattern of dots, as every workbook has. */
test('colours that mark some rows are told with their rows; stripes, headings and white are not', async () => {
  const filling = (inside: string): string =>
    `<fill><patternFill patternType="solid">${inside}<bgColor indexed="64"/></patternFill></fill>`;
  const fills = [
    '<fgColor rgb="FFFFC7CE"/>',
    '<fgColor theme="4"/>',
    '<fgColor rgb="FFFFFFFF"/>',
    '<fgColor rgb="FFDDDDDD"/>',
  ];
  const styles = `<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><fills><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>${fills.map(filling).join('')}</fills><cellStyleXfs><xf fillId="2"/></cellStyleXfs><cellXfs><xf/>${fills.map((_, at) => `<xf fillId="${at + 2}"/>`).join('')}</cellXfs></styleSheet>`;
  const styleOf = (row: number): number => ({ 9: 1, 13: 1, 15: 2, 17: 3 })[row] ?? (row % 2 === 0 ? 4 : 0);
  const rows = Array.from({ length: 20 }, (_, at) => at + 2)
    .map((row) => `<row r="${row}"><c r="A${row}" s="${styleOf(row)}"><v>${row}</v></c></row>`)
    .join('');
  const sheet = await readOne(workbookOf(sheetOf(rows), { parts: { 'xl/styles.xml': styles } }));
  const told = (sheet.remarks ?? []).map(({ says }) => says).filter((says) => says.includes('colour'));
  expect(told).toHaveLength(1);
  expect(told[0]).toMatch(
    /^Cells are filled with colours: #FFC7CE in rows 9 and 13; colour 4 of the theme in row 15\. /,
  );
});
