/** What a column can be read into: fields of the piece's form, by the names a keeper writes in a mapping file. */
export const FIELDS = [
  'id', 'number', 'title', 'kind', 'publish', 'status', 'ruler', 'realm', 'struck-for', 'issuer', 'mint', 'denomination',
  'date', 'date from', 'date to', 'dated', 'references', 'reference work', 'reference number', 'metal', 'fineness',
  'weight', 'diameter', 'height', 'width', 'thickness', 'axis', 'measures', 'made', 'faces', 'shape', 'treatments',
  'peculiarities', 'grade', 'grade-scale', 'graded-by', 'problem', 'obverse legend', 'obverse reading',
  'obverse design', 'reverse legend', 'reverse reading', 'reverse design', 'edge legend', 'edge reading',
  'edge design', 'makers', 'moneyer', 'engraver', 'medallist', 'die-sinker', 'artist', 'sure', 'tags', 'story',
  'provenance', 'found area', 'obverse die', 'reverse die',
] as const; // prettier-ignore
export type Field = (typeof FIELDS)[number];

/** Fields whose form knows `unknown` and `none`. */
export const WITH_BLANKS: ReadonlySet<string> = new Set<Field>([
  'ruler', 'mint', 'denomination', 'date', 'metal', 'fineness', 'weight', 'diameter', 'thickness',
]); // prettier-ignore

/** Units a heading may settle for every cell below it. */
export const UNITS: Readonly<Partial<Record<Field, readonly string[]>>> = {
  weight: ['g', 'gr', 'dwt', 'oz t', 'oz av', 'mg'],
  diameter: ['mm', 'cm', 'in'],
  height: ['mm', 'cm', 'in'],
  width: ['mm', 'cm', 'in'],
  thickness: ['mm', 'cm', 'in'],
  axis: ['h', '°'],
  fineness: ['thousandths', '%', 'ct'],
};

/** Columns of the ledger a sheet's column may be read into. */
export const LEDGER_FIELDS = [
  'cost', 'value', 'insured', 'storage', 'seller', 'find-spot', 'certificate', 'acquired', 'notes',
] as const; // prettier-ignore
export type LedgerField = (typeof LEDGER_FIELDS)[number];
export const SUMS: ReadonlySet<LedgerField> = new Set(['cost', 'value', 'insured']);

export function isField(name: string): name is Field {
  return FIELDS.some((field) => field === name);
}

export function isLedgerField(name: string): name is LedgerField {
  return LEDGER_FIELDS.some((field) => field === name);
}
