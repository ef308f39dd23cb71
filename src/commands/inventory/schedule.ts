import type { Catalogue, Piece } from '../../catalogue/catalogue.ts';
import { readCsv } from '../../catalogue/csv.ts';
import { LEDGER_NAMES, LEDGER_ROWS } from '../../catalogue/fields/ledger-columns.ts';
import type { LedgerColumn, Reader } from '../../catalogue/fields/ledger-columns.ts';
import { isBlank } from '../../catalogue/schema/fields.ts';
import type { PieceFields } from '../../catalogue/schema/piece.ts';
import { sumsOf } from '../../catalogue/ledger-totals.ts';
import { formatChain } from '../../core/provenance/format-chain.ts';
import type { Link } from '../../core/provenance/provenance.ts';

/** A heading and what stands under it. */
export type Entry = { readonly heading: string; readonly says: string };
export type ScheduledPiece = {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly entries: readonly Entry[];
  /** Files of photographs inside the cabinet. */
  readonly pictures: readonly string[];
};
export type Schedule = {
  readonly pieces: readonly ScheduledPiece[];
  /** What is insured and what it is worth, added up currency by currency: `GBP 1200.00`. */
  readonly totals: readonly Entry[];
};

const SUMMED: readonly LedgerColumn[] = ['value', 'insured'];

type Row = Readonly<Record<string, string>>;

/**
 * The schedule of a cabinet by the nine categories of Object ID (International Council of Museums): type, materials and
 * techniques, measurements, inscriptions and markings, distinguishing features, title, subject, date or period, maker;
 * then what the ledger has for this reader. What is not recorded has no entry. Pieces that have left are not in it.
 */
export function scheduleOf(catalogue: Catalogue, ledger: string, reader: Reader, only: readonly string[]): Schedule {
  const rows = readCsv(ledger).rows;
  const pieces = catalogue.pieces.filter(({ id, fields }) =>
    only.length > 0 ? only.includes(id) : ['kept', 'lent'].includes(fields.status),
  );
  const rowOf = ({ id }: Piece): Row => rows.find(({ piece }) => piece?.trim() === id) ?? {};
  const told = LEDGER_NAMES.filter((column) => LEDGER_ROWS[column].told.includes(reader));
  const totals = told
    .filter((column) => SUMMED.includes(column))
    .map((column) => ({
      heading: LEDGER_ROWS[column].heading,
      says: sumsOf(pieces.map((piece) => rowOf(piece)[column] ?? '')).join(' and '),
    }))
    .filter(({ says }) => says !== '');
  return {
    totals,
    pieces: pieces.map((piece) => ({
      id: piece.id,
      number: piece.fields.number,
      title: piece.fields.title,
      pictures: piece.pictures.map(({ file }) => file),
      entries: [
        ...objectId(piece, catalogue),
        ...told.map((column) => ({ heading: LEDGER_ROWS[column].heading, says: (rowOf(piece)[column] ?? '').trim() })),
      ].filter(({ says }) => says !== ''),
    })),
  };
}

function objectId({ fields, references, grade }: Piece, catalogue: Catalogue): readonly Entry[] {
  const named = (of: Readonly<Record<string, { fields: { name: string } }>>, id: string | undefined): string =>
    id === undefined || isBlank(id) ? '' : (of[id]?.fields.name ?? id);
  const rulers = fields.ruler === undefined || isBlank(fields.ruler) ? [] : fields.ruler;
  const people = (fields.makers ?? []).map(({ name, role }) => `${name} (${role})`);
  const sides = (['obverse', 'reverse', 'edge'] as const).flatMap((side) => {
    const legend = fields[side]?.legend?.text;
    return legend === undefined ? [] : [`${side}: ${legend}`];
  });
  const designs = (['obverse', 'reverse', 'edge'] as const).flatMap((side) => {
    const design = fields[side]?.design;
    return design === undefined ? [] : [`${side}: ${design}`];
  });
  const axis = fields.axis?.hours ?? null;
  return [
    {
      heading: 'Type of object',
      says: joined([fields.kind, named(catalogue.denominations, fields.denomination)], ', '),
    },
    { heading: 'Materials and techniques', says: joined([fields.metal, worded(fields.fineness), fields.made], ', ') },
    {
      heading: 'Measurements',
      says: joined(
        [
          worded(fields.weight),
          worded(fields.diameter),
          fields.thickness === undefined ? '' : `${worded(fields.thickness)} thick`,
          axis === null ? '' : `die axis ${axis}h`,
        ],
        ', ',
      ),
    },
    { heading: 'Inscriptions and markings', says: joined(sides, '; ') },
    {
      heading: 'Distinguishing features',
      says: joined(
        [grade?.text, fields.problem, ...(fields.treatments ?? []), ...(fields.peculiarities ?? []), changed(fields)],
        ', ',
      ),
    },
    { heading: 'Title', says: fields.title },
    { heading: 'Subject', says: joined([...designs, ...rulers.map((id) => named(catalogue.rulers, id))], '; ') },
    { heading: 'Date or period', says: worded(fields.date) },
    { heading: 'Maker', says: joined([...people, fields.issuer, named(catalogue.mints, fields.mint)], ', ') },
    { heading: 'Published as', says: references.map(({ text }) => text).join('; ') },
    { heading: 'Provenance', says: provenance(fields) },
  ];
}

function changed({ altered }: PieceFields): string {
  if (altered === undefined) return '';
  return `made from a ${altered.host}: ${altered.done.map(({ what, on }) => joined([what, on], ' on ')).join(', ')}`;
}

function provenance({ provenance: links = [] }: PieceFields): string {
  if (links.length === 0) return '';
  return formatChain(
    links.map(({ when, direct, possibly, dealer, ...link }): Link => {
      const kept = Object.fromEntries(Object.entries(link).filter(([, value]) => value !== undefined));
      return {
        ...kept,
        ...(when === undefined || isBlank(when) ? {} : { when }),
        ...(direct === 'yes' ? { direct: true } : {}),
        ...(possibly === 'yes' ? { possibly: true } : {}),
        ...(dealer === 'yes' ? { dealer: true } : {}),
      };
    }),
  );
}

function worded(value: { readonly text: string } | string | undefined): string {
  return value === undefined || isBlank(value) || typeof value === 'string' ? '' : value.text;
}

function joined(parts: readonly (string | undefined)[], by: string): string {
  return [...new Set(parts)].filter((part) => part !== undefined && part !== '').join(by);
}
