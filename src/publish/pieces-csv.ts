import { writeCsv } from '../catalogue/csv.ts';
import { PIECE_ROWS } from '../catalogue/fields/piece-fields.ts';
import type { PieceRows } from '../catalogue/fields/piece-fields.ts';
import { DATA_ROWS } from './public-facts.ts';
import type { PublicFacts } from './public-facts.ts';

/** The columns of `pieces.csv`, in the order of the table of fields. */
export const COLUMNS: readonly string[] = ['id', ...DATA_ROWS.flatMap(({ columns }) => columns), 'edtf', 'address'];

/** One row a piece, every cell in the keeper's words; several values in a cell are separated by `; `. */
export function piecesCsv(facts: readonly PublicFacts[]): string {
  return writeCsv(
    COLUMNS,
    facts.map((piece) => COLUMNS.map((column) => cell(column.split(' ').reduce<unknown>(within, piece)))),
  );
}

/** What each column is called and holds, in the keeper's words. */
const SAYS: Readonly<Record<string, string>> = {
  id: 'The permanent name of the piece, the last part of its address.',
  edtf: 'The date it was made as Extended Date/Time Format (Library of Congress, 2019).',
  address: 'The address of its page.',
  ...Object.fromEntries(
    DATA_ROWS.flatMap(({ name, columns }) =>
      columns.map((column) => [column, PIECE_ROWS[name as keyof PieceRows].says]),
    ),
  ),
};

/**
 * What `pieces.csv` is, as a file beside it. Source: W3C, Metadata Vocabulary for Tabular Data (17 December 2015); a name of a
 * column has no blank there (§5.6.1, RFC 6570).
 */
export function csvwMetadata(about: {
  readonly title: string;
  readonly description: string;
  readonly page: string;
  readonly language: string;
  readonly licence: string | null;
}): object {
  return {
    '@context': ['http://www.w3.org/ns/csvw', { '@language': 'en' }],
    url: 'pieces.csv',
    'dc:title': about.title,
    'dc:description': about.description,
    'dc:source': { '@id': about.page },
    ...(about.licence === null ? {} : { 'dc:license': { '@id': about.licence } }),
    dialect: { header: true, delimiter: ',', encoding: 'utf-8' },
    tableSchema: {
      lang: about.language,
      columns: COLUMNS.map((column) => ({
        name: column.replaceAll(/[^A-Za-z0-9]/g, '_'),
        titles: column,
        'dc:description': SAYS[column] ?? column,
        datatype: column === 'address' ? 'anyURI' : 'string',
        required: ['id', 'number', 'title', 'kind', 'address'].includes(column),
      })),
      primaryKey: 'id',
    },
  };
}

function within(held: unknown, field: string): unknown {
  return typeof held === 'object' && held !== null ? (held as Readonly<Record<string, unknown>>)[field] : undefined;
}

function cell(value: unknown): string {
  if (value === undefined || value === null) return '';
  if (Array.isArray(value)) return value.map(cell).join('; ');
  if (typeof value === 'object')
    return Object.entries(value)
      .map(([name, held]) => `${name}: ${cell(held)}`)
      .join(', ');
  return typeof value === 'string' ? value : JSON.stringify(value);
}
