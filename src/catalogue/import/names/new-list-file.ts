import { parseDate } from '../../../core/dating/parse-date.ts';
import type { ListKind, WrittenFields } from '../../write/write-piece.ts';
import { formatListFile } from '../../write/write-piece.ts';
import type { NewName } from './join-names.ts';

/** A file of the cabinet that is to be written. */
export type NewFile = { readonly file: string; readonly text: string };

/** The file of a name that the sheet brings: its name, other spellings, and the reign if the sheet says one; nothing besides. */
export function newListFile(kind: ListKind, { id, name, otherNames, years }: NewName): NewFile {
  return { file: `${kind}/${id}.yaml`, text: formatListFile(kind, fieldsOf(kind, name, otherNames, years)) };
}

function fieldsOf(kind: ListKind, name: string, others: readonly string[], years: string | null): WrittenFields {
  if (kind === 'works') return { title: name, short: name };
  if (kind === 'mints')
    return { name, ...(others.length === 0 ? {} : { names: others.map((other) => ({ name: other })) }) };
  if (kind === 'denominations') return { name };
  const reign = years === null ? null : reignFrom(years);
  return {
    name,
    ...(others.length === 0 ? {} : { 'other-names': others }),
    ...(reign === null ? {} : { reigns: [reign] }),
  };
}

/** `1272-1307` as the two ends of a reign; null when it has no two ends that can be read. */
function reignFrom(years: string): { from: string; to: string } | null {
  const [, from, to] = /^(.+?)\s*(?:\/|[-–—]|\bto\b|\bbis\b)\s*(.+)$/u.exec(years.trim()) ?? [];
  if (from === undefined || to === undefined) return null;
  const era = /\b(?:BC|B\.C\.|BCE|v\. ?Chr\.?)$/i.exec(to)?.[0];
  const whole = era !== undefined && /^[\d~c. ]+$/.test(from) ? `${from} ${era}` : from;
  return parseDate(whole).ok && parseDate(to).ok ? { from: whole, to } : null;
}
