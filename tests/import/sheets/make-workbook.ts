import { zipSync } from 'fflate';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';

export function zipOf(parts: Readonly<Record<string, string | Uint8Array>>): Uint8Array {
  const bytesOf = (part: string | Uint8Array): Uint8Array =>
    typeof part === 'string' ? new TextEncoder().encode(part) : part;
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, part]) => [name, bytesOf(part)])));
}

export function escapeXml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}

/** The smallest workbook of one sheet (ECMA-376 part 1, 12.2), its `sheetData` and what follows given as XML. */
export function workbookOf(
  sheet: string,
  more: {
    readonly formats?: readonly string[];
    readonly strings?: string;
    readonly properties?: string;
    readonly parts?: Readonly<Record<string, string>>;
  } = {},
): Uint8Array {
  const codes = more.formats ?? [];
  const styles = `<styleSheet xmlns="${MAIN}"><numFmts>${codes
    .map((code, at) => `<numFmt numFmtId="${170 + at}" formatCode="${escapeXml(code)}"/>`)
    .join(
      '',
    )}</numFmts><fonts><font/></fonts><fills><fill/></fills><borders><border/></borders><cellStyleXfs><xf/></cellStyleXfs><cellXfs><xf numFmtId="0"/>${codes
    .map((_, at) => `<xf numFmtId="${170 + at}" applyNumberFormat="1"/>`)
    .join('')}</cellXfs></styleSheet>`;
  return zipOf({
    '[Content_Types].xml': `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/><Override PartName="/xl/sharedStrings.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml"/></Types>`,
    '_rels/.rels': `<Relationships xmlns="${PACKAGE}"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}">${more.properties ?? ''}<sheets><sheet name="Coins" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${PACKAGE}"><Relationship Id="rId1" Type="${OFFICE}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${OFFICE}/styles" Target="styles.xml"/><Relationship Id="rId3" Type="${OFFICE}/sharedStrings" Target="sharedStrings.xml"/></Relationships>`,
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}">${sheet}</worksheet>`,
    'xl/styles.xml': styles,
    'xl/sharedStrings.xml': `<sst xmlns="${MAIN}">${more.strings ?? ''}</sst>`,
    ...more.parts,
  });
}

const NAMES =
  'xmlns:o="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:t="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:draw="urn:oasis:names:tc:opendocument:xmlns:drawing:1.0" xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"';

/** The smallest OpenDocument workbook (OpenDocument 1.3 part 2, 3), under prefixes of its own. */
export function odsOf(rows: string, before = '', after = ''): Uint8Array {
  return zipOf({
    mimetype: 'application/vnd.oasis.opendocument.spreadsheet',
    'content.xml': `<?xml version="1.0"?><o:document-content ${NAMES}><o:body><o:spreadsheet>${before}<t:table t:name="Coins">${rows}</t:table>${after}</o:spreadsheet></o:body></o:document-content>`,
  });
}
