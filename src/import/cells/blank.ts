import { formatInLine } from '../../catalogue/write/write-yaml.ts';
import type { Mapping, Meaning } from '../columns/mapping.ts';
import type { Sheet, SheetRow } from '../sheets/sheet.ts';

/** Words for nothing, in the languages of the sheets, and which of the three blanks each of them is. */
const WORDS: Readonly<Record<Meaning, readonly string[]>> = {
  unknown: [
    '?', '??', '???', '(?)', 'unknown', 'unkn.', 'not known', 'uncertain', 'inconnu', 'inconnue', 'incertain', 'unbekannt', 'unbek.',
    'ungewiss', 'unsicher', 'sconosciuto', 'sconosciuta', 'ignoto', 'incerto', 'desconocido', 'desconocida', 'incierto', 'incierta',
    'onbekend', 'onzeker', 'uncertain mint', 'unknown mint', 'mint unknown', 'mint uncertain', 'uncertain ruler', 'unknown ruler',
    'uncertain king', 'unknown king', 'uncertain emperor', 'unbekannte münzstätte', 'unbestimmte münzstätte', 'münzstätte unbekannt',
    'unbek. mzst.', 'atelier incertain', 'atelier indéterminé', 'atelier inconnu', 'zecca incerta', 'zecca ignota', 'ceca incierta', 'onbekende munt',
  ],
  none: [
    'none', 'n/a', 'not applicable', 'aucun', 'aucune', 'néant', 'sans objet', 'keine', 'keiner', 'kein', 'entfällt', 'entf.',
    'nessuno', 'nessuna', 'ninguno', 'ninguna', 'no procede', 'geen', 'n.v.t.',
  ],
  'not recorded': [
    '-', '--', '---', '–', '—', '.', '..', '…', '/', '_', 'na', 'n.a.', '#n/a', 'k.a.', 'k/a', 'keine angabe', 'keine ang.', 'n.r.', 'n.b.', 'n.c.', 'tbd', 'tbc',
    'not recorded', 'not measured', 'not weighed', 'nicht erfasst', 'non renseigné', 'non pesé', 'no consta', 'niet genoteerd',
  ],
}; // prettier-ignore

const MEANT: ReadonlyMap<string, Meaning> = new Map(
  (['unknown', 'none', 'not recorded'] as const).flatMap((meaning) =>
    WORDS[meaning].map((word) => [word, meaning] as const),
  ),
);

/** Words and marks for what is in the row above. `s.o.` is the German *siehe oben*; in a French list, *sans objet*, the mapping says so. */
const AS_ABOVE: ReadonlySet<string> = new Set([
  'ditto', 'dito', 'do', 'dto', 'dtto', 'idem', 'ebenso', 'w.o', 'w. o', 's. o', 'siehe oben', 'derselbe', 'dieselbe', 'idem que', 'la même', 'id', 'same', 'same as above', 'as above', 'as before', 'see above', 'desgl', 'dgl', 'desgleichen',
  'dasselbe', 'wie oben', 'wie vor', 'wie vorher', 'wie zuvor', 's.o', 'comme ci-dessus', 'ci-dessus', 'le même', 'come sopra', 'c.s',
  'lo mismo', 'igual', 'als boven', 'idem dito', '"', '″', '〃', '„', '“', '”', "''", ',,', '-"-', '- " -', "-''-", '-„-', '" "',
]); // prettier-ignore

/** A word as the lists here have it: `n. a.` is `n.a.`. */
function plainWord(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replaceAll(/(?<=\p{L}\.) (?=\p{L})/gu, '');
}

/** Strokes and quotation marks with nothing between them but blanks, a wave or an arrow: `– „ –`, `"   "`, `~`, `↓`. */
const MARKS = /^[\s\-–—_.,]*(?:["″〃„“”»~↓]|''|,,)[\s\-–—_.,'"″〃„“”»~↓]*$/u;

/** Whether a cell says no more than that it is as the one above. */
export function isAsAbove(text: string): boolean {
  const word = plainWord(text);
  return AS_ABOVE.has(word) || (/\.$/.test(word) && AS_ABOVE.has(word.slice(0, -1))) || MARKS.test(word);
}

/** Which blank a cell is; null when it says something. The keeper's own words go first. */
export function blankIn(text: string, own: Readonly<Record<string, Meaning>>): Meaning | null {
  const word = text.trim().toLowerCase();
  if (word === '') return 'not recorded';
  const kept = Object.entries(own).find(([each]) => each.trim().toLowerCase() === word)?.[1];
  return kept ?? MEANT.get(word) ?? MEANT.get(plainWord(text)) ?? null;
}

/** Why a ditto is not read, and the line of the mapping that reads it. */
export function pointsAbove(text: string, heading: string): string {
  return `"${text}" points to the row above, which may be another by now. Write out what it stands for, or, where the rows still stand as they did, write dittos: [${formatInLine(heading)}] on a line of its own in the mapping.`;
}

/** The columns of these headings. */
function columnsOf(headings: readonly string[], keys: readonly string[]): readonly number[] {
  const wanted = new Set(headings.map((heading) => heading.replace(/\s+/g, ' ').trim()));
  return keys.flatMap((key, at) => (wanted.has(key) ? [at] : []));
}

/** The rows with what stands above in the columns of which the keeper says so; a heading between the rows begins anew. */
export function asAbove(sheet: Sheet, keys: readonly string[], mapping: Mapping): readonly SheetRow[] {
  const [blanks, dittos] = [columnsOf(mapping.asAbove, keys), columnsOf(mapping.dittos, keys)];
  const columns = [...new Set([...blanks, ...dittos])];
  if (columns.length === 0) return sheet.rows;
  const headings = sheet.setAside.filter(({ isHeading }) => isHeading === true).map(({ row }) => row);
  const last = new Map<number, SheetRow['cells'][number]>();
  let before = 0;
  return sheet.rows.map((row) => {
    if (headings.some((one) => one > before && one < row.row)) last.clear();
    before = row.row;
    const cells = [...row.cells];
    for (const at of columns) {
      const cell = cells[at];
      const above = last.get(at);
      if (cell !== undefined && cell.text !== '' && !isAsAbove(cell.text)) last.set(at, cell);
      // What is below an empty cell points to nothing.
      else if (cell?.text === '' && !blanks.includes(at)) last.delete(at);
      else if (above !== undefined) cells[at] = above;
    }
    return { ...row, cells };
  });
}
