import { good, refuse, type Outcome } from '../../../core/outcome.ts';
import { builtInFormat } from '../formats/built-in.ts';
import { numberFormat, type NumberFormat } from '../formats/show-cell.ts';
import { LIMITS, tooManyLetters } from '../limits.ts';
import { hasPart, readPart, type Package } from '../package/read-part.ts';
import { readRelations } from './relations.ts';
import { cellText, textCollector } from './rich-text.ts';

/** What the sheets of a workbook share. */
export type Workbook = {
  readonly sheets: readonly { readonly name: string; readonly part: string; readonly isHidden: boolean }[];
  readonly is1904: boolean;
  /** The strings that cells name by number. */
  readonly strings: readonly string[];
  /** The number format of each cell style. */
  readonly formats: readonly NumberFormat[];
};

const MAIN = 'xl/workbook.xml';

/** Reads a workbook's list of sheets, its strings and its number formats; parts that are missing are empty. */
export function readWorkbook(from: Package): Outcome<Workbook> {
  const root = readRelations(from, '');
  if (!root.ok) return root;
  const part = root.value.find(({ type }) => type === 'officeDocument')?.target ?? MAIN;
  if (!hasPart(from, part) || /\.bin$/i.test(part)) {
    return refuse(
      `${from.name} holds no sheets that can be read. Open it in a spreadsheet program and save it as .xlsx.`,
    );
  }
  const relations = readRelations(from, part);
  if (!relations.ok) return relations;

  const named: { name: string; id: string; isHidden: boolean }[] = [];
  let is1904 = false;
  const read = readPart(from, part, {
    open(name, attributes) {
      if (name === 'workbookPr') is1904 = isOn(attributes['date1904']);
      if (name !== 'sheet') return;
      const state = attributes['state'] ?? 'visible';
      named.push({ name: attributes['name'] ?? '', id: attributes['r:id'] ?? '', isHidden: state !== 'visible' });
    },
  });
  if (!read.ok) return read;
  const sheets = named.flatMap(({ name, id, isHidden }) => {
    const relation = relations.value.find((known) => known.id === id && known.type === 'worksheet');
    return relation === undefined ? [] : [{ name, part: relation.target, isHidden }];
  });
  if (sheets.length === 0) {
    return refuse(
      `${from.name} holds no sheet with cells. Open it in a spreadsheet program and save it again as .xlsx.`,
    );
  }
  const partOf = (type: string): string | undefined => relations.value.find((known) => known.type === type)?.target;
  const strings = readStrings(from, partOf('sharedStrings'));
  if (!strings.ok) return strings;
  const formats = readFormats(from, partOf('styles'));
  return formats.ok ? good({ sheets, is1904, strings: strings.value, formats: formats.value }) : formats;
}

export function isOn(attribute: string | undefined): boolean {
  return attribute === '1' || attribute === 'true' || attribute === 'on';
}

function readStrings(from: Package, part: string | undefined): Outcome<readonly string[]> {
  if (part === undefined) return good([]);
  const strings: string[] = [];
  const collector = textCollector();
  let letters = 0;
  const read = readPart(
    from,
    part,
    {
      open(name) {
        if (name === 'si') collector.begin();
        collector.open(name);
      },
      close(name) {
        collector.close(name);
        if (name !== 'si') return;
        const text = cellText(collector.text());
        letters += text.length;
        strings.push(text);
      },
      text: collector.take,
    },
    () => (letters > LIMITS.letters ? tooManyLetters(from.name) : null),
  );
  return read.ok ? good(strings) : read;
}

function readFormats(from: Package, part: string | undefined): Outcome<readonly NumberFormat[]> {
  if (part === undefined) return good([]);
  const codes = new Map<number, string>();
  const formats: NumberFormat[] = [];
  const ready = new Map<number, NumberFormat>();
  let isInStyles = false;
  const read = readPart(from, part, {
    open(name, attributes) {
      const id = Number(attributes['numFmtId'] ?? '0');
      if (name === 'cellXfs') isInStyles = true;
      if (name === 'numFmt') codes.set(id, attributes['formatCode'] ?? 'General');
      if (name !== 'xf' || !isInStyles) return;
      const format = ready.get(id) ?? numberFormat(codes.get(id) ?? builtInFormat(id));
      ready.set(id, format);
      formats.push(format);
    },
    close(name) {
      if (name === 'cellXfs') isInStyles = false;
    },
  });
  return read.ok ? good(formats) : read;
}
