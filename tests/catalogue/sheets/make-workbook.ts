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
