import { columnKeys, readingsOf } from '../../import/columns/column-key.ts';
import type { Mapping } from '../../import/columns/mapping.ts';
import type { Sheet } from '../../import/sheets/sheet.ts';
import { shorten } from './tell-columns.ts';

/** Columns that are told; the rest is counted. */
const TOLD = 20;

type Looked = { readonly form: RegExp; readonly mark: RegExp };
const SUM: Looked = {
  form: /^[£€$]? ?\d[\d.,' ]*(?:[£€$p]|[A-Z]{2,3}|,-)?$/,
  mark: /[£€$]|\d (?:EUR|DM|GBP|USD|CHF)\b|,-/,
};
const DAY: Looked = {
  form: /^(?:\d{1,2}[./-]\d{1,2}[./-]\d{2,4}|\d{4}-\d\d-\d\d|(?:\d{1,2}\.? )?\p{L}{3,9}\.? \d{2,4}|(?:19|20)\d\d)$/u,
  mark: /^\d{1,2}[./-]\d{1,2}[./-]\d{2,4}$|^\d{4}-\d\d-\d\d$|^\d{1,2}\.? \p{L}+\.? (?:19|20)\d\d$/u,
};

/** What the cells of a column look like, with what it may be good for; the first that fits. */
const LOOKS: readonly {
  readonly fits: (texts: readonly string[], distinct: number) => boolean;
  readonly says: string;
  readonly worth: number;
}[] = [
  { fits: every(/^https?:\/\/|^www\./i), says: 'addresses', worth: 1 },
  { fits: every(/^-?\d{1,3}\.\d{3,}$/), says: 'figures of many places: coordinates are better kept private', worth: 1 },
  { fits: every(/^(?:c\.? ?|ca\.? ?)?-?\d{3,4}(?:\s*[-–/]\s*\d{1,4})?$/), says: 'years: date, date from or date to', worth: 9 },
  { fits: every(/^\d+[.,]\d+(?: ?g)?$/), says: 'figures with a fraction: weight or diameter', worth: 9 },
  { fits: every(/^\d{1,3}$/), says: 'whole figures: diameter, axis, or pages', worth: 3 },
  { fits: mostly(SUM), says: 'sums: ledger cost or ledger value (private)', worth: 7 },
  { fits: mostly(DAY), says: 'days: ledger acquired (private)', worth: 7 },
  { fits: every(/^[\d\s.,£€$-]+$/), says: 'figures', worth: 2 },
  { fits: (texts) => texts.filter((text) => text.length > 60).length * 2 > texts.length, says: 'sentences: story, obverse design, reverse design or ledger notes', worth: 6 },
  { fits: (texts, distinct) => distinct * 4 <= texts.length, says: 'words that repeat: ruler, realm, mint, mint area, issuer, denomination, kind, metal or tags', worth: 8 },
  { fits: (texts, distinct) => distinct === texts.length && texts.every((text) => /\d/.test(text)), says: 'a number for each row: number, references or ledger certificate', worth: 4 },
  { fits: () => true, says: 'words', worth: 5 },
]; // prettier-ignore

/** A heading over how many were struck of a type: a fact of the type, for which a piece has no field. */
const MINTAGES =
  /^(?:mintages?|auflagen?|pr[äa]gezahl(?:en)?|gepr[äa]gt|tirages?|tiratura|oplagen?|tirada|acuñaci[oó]n)(?!\p{L})/iu;
const MINTAGE = {
  says: 'how many were struck: a piece has no field for it; write story where it is to be published',
  worth: 3,
};

/** Whether four in five are so, and one at least bears the mark of it. */
function mostly({ form, mark }: Looked): (texts: readonly string[]) => boolean {
  return (texts) =>
    texts.some((text) => mark.test(text)) && texts.filter((text) => form.test(text)).length * 5 >= texts.length * 4;
}

function every(form: RegExp): (texts: readonly string[]) => boolean {
  return (texts) => texts.every((text) => form.test(text));
}

/** Columns that go to the ledger under their own heading, most useful first, each with its first values and what they look like. */
export function tellUnnamed(sheet: Sheet, mapping: Mapping): string {
  const readings = readingsOf(sheet, mapping);
  const columns = columnKeys(sheet).flatMap((key, at) => {
    const [only, ...more] = readings[at] ?? [];
    if (more.length > 0 || only?.kind !== 'ledger' || only.column !== undefined) return [];
    const texts = sheet.rows.map(({ cells }) => cells[at]?.text ?? '').filter((text) => text !== '');
    const first = [...new Set(texts)];
    const look = MINTAGES.test(key) ? MINTAGE : LOOKS.find(({ fits }) => fits(texts, first.length));
    if (look === undefined || texts.length === 0) return [];
    const values = first.slice(0, 3).map((text) => `"${shorten(text.replace(/\s+/g, ' '), 24)}"`);
    const line = `  ${shorten(key, 28)}, ${texts.length} ${texts.length === 1 ? 'cell' : 'cells'}: ${values.join(', ')} – ${look.says}`;
    return [{ line, worth: (look.worth * texts.length) / sheet.rows.length }];
  });
  if (columns.length === 0) return '';
  const lines = columns.toSorted((a, b) => b.worth - a.worth).map(({ line }) => line);
  return [
    'Private until you name them, most useful first (all targets: npm run import -- --targets):',
    ...lines.slice(0, TOLD),
    ...(lines.length > TOLD ? [`  … and ${lines.length - TOLD} more`] : []),
  ].join('\n');
}
