import { good, refuse } from '../../../core/outcome.ts';
import type { Outcome } from '../../../core/outcome.ts';
import { numberFormat } from '../formats/show-cell.ts';
import type { NumberFormat } from '../formats/show-cell.ts';
import { LIMITS, tooManyLetters } from '../limits.ts';
import { hasPart, readPart } from '../package/read-part.ts';
import type { Package } from '../package/read-part.ts';
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
  /** The colour each cell style fills its cells with: `#FFC7CE`, or the number of one of the theme's; null for none. */
  readonly fills: readonly (string | null)[];
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
  const styles = readStyles(from, partOf('styles'));
  return styles.ok ? good({ sheets, is1904, strings: strings.value, ...styles.value }) : styles;
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

/** The number format and the filling of each cell style (ECMA-376 part 1, 18.8.10, 18.8.20 and 18.8.45). */
function readStyles(from: Package, part: string | undefined): Outcome<Pick<Workbook, 'formats' | 'fills'>> {
  if (part === undefined) return good({ formats: [], fills: [] });
  const codes = new Map<number, string>();
  const formats: NumberFormat[] = [];
  const ready = new Map<number, NumberFormat>();
  const colours: (string | null)[] = [];
  const fills: (string | null)[] = [];
  let within: 'cellXfs' | 'fills' | 'solid' | null = null;
  const read = readPart(from, part, {
    open(name, attributes) {
      const id = Number(attributes['numFmtId'] ?? '0');
      if (name === 'cellXfs' || name === 'fills') within = name;
      if (name === 'numFmt') codes.set(id, attributes['formatCode'] ?? 'General');
      if (name === 'fill' && within !== null) colours.push(null);
      if (name === 'patternFill' && within === 'fills' && attributes['patternType'] === 'solid') within = 'solid';
      if (name === 'fgColor' && within === 'solid') colours[colours.length - 1] = colourOf(attributes);
      if (name !== 'xf' || within !== 'cellXfs') return;
      const format = ready.get(id) ?? numberFormat(codes.get(id) ?? builtInFormat(id));
      ready.set(id, format);
      formats.push(format);
      fills.push(colours[Number(attributes['fillId'] ?? '0')] ?? null);
    },
    close(name) {
      if (name === 'patternFill' && within === 'solid') within = 'fills';
      if (name === 'cellXfs' || name === 'fills') within = null;
    },
  });
  return read.ok ? good({ formats, fills }) : read;
}

/** White says nothing; a colour of the theme is told by its number. */
function colourOf({ rgb, theme, indexed }: Readonly<Record<string, string | undefined>>): string | null {
  if (rgb !== undefined) return /^(?:FF)?FFFFFF$/i.test(rgb) ? null : `#${rgb.slice(-6).toUpperCase()}`;
  if (theme !== undefined) return theme === '0' ? null : `colour ${theme} of the theme`;
  return indexed === undefined || indexed === '9' || indexed === '65' ? null : `colour ${indexed} of the palette`;
}

/**
 * Formats a workbook names by number alone (ECMA-376 part 1, 18.8.30). Those that each country fills in its own way are
 * given as it is safe to show them: days as ISO writes them, sums without a sign.
 */
const BUILT_IN: Readonly<Record<number, string>> = {
  0: 'General', 1: '0', 2: '0.00', 3: '#,##0', 4: '#,##0.00', 5: '#,##0', 6: '#,##0', 7: '#,##0.00', 8: '#,##0.00', 9: '0%',
  10: '0.00%', 11: '0.00E+00', 12: '# ?/?', 13: '# ??/??', 14: 'yyyy-mm-dd', 15: 'd-mmm-yy', 16: 'd-mmm', 17: 'mmm-yy',
  18: 'h:mm AM/PM', 19: 'h:mm:ss AM/PM', 20: 'h:mm', 21: 'h:mm:ss', 22: 'yyyy-mm-dd h:mm', 37: '#,##0;(#,##0)',
  38: '#,##0;(#,##0)', 39: '#,##0.00;(#,##0.00)', 40: '#,##0.00;(#,##0.00)', 41: '#,##0', 42: '#,##0', 43: '#,##0.00',
  44: '#,##0.00', 45: 'mm:ss', 46: '[h]:mm:ss', 47: 'mm:ss.0', 48: '##0.0E+0', 49: '@',
}; // prettier-ignore

export function builtInFormat(id: number): string {
  if ((id >= 27 && id <= 36) || (id >= 50 && id <= 58)) return 'yyyy-mm-dd';
  return BUILT_IN[id] ?? 'General';
}
