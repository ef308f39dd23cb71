import { denominationSchema, mintSchema, rulerSchema, workSchema } from '../schema/lists.ts';
import { pieceSchema } from '../schema/piece.ts';
import type { Written } from '../yaml.ts';
import { formatYaml } from './write-yaml.ts';

export type WrittenFields = Readonly<Record<string, Written>>;

/** The lists that a new piece may want a file in. */
export type ListKind = 'rulers' | 'mints' | 'denominations' | 'works';

/** The fields of `piece.md` in the order of the form. */
export const PIECE_ORDER: readonly string[] = Object.keys(pieceSchema().shape);

/** The fields of a list file in the order of its form. */
export const LIST_ORDER: Readonly<Record<ListKind, readonly string[]>> = {
  rulers: Object.keys(rulerSchema.shape),
  mints: Object.keys(mintSchema.shape),
  denominations: Object.keys(denominationSchema.shape),
  works: Object.keys(workSchema.shape),
};

/** A `piece.md` as a person would have written it: the facts in the order of the form, and the story below. */
export function formatPieceFile(fields: WrittenFields, story: string): string {
  const text = story.replace(/\r\n?/g, '\n').trim();
  return `---\n${formatYaml(inOrder(fields, PIECE_ORDER))}---\n${text === '' ? '' : `\n${text}\n`}`;
}

/** The file of a ruler, mint, denomination or work. */
export function formatListFile(kind: ListKind, fields: WrittenFields): string {
  return formatYaml(inOrder(fields, LIST_ORDER[kind]));
}

/** Fields in the order of a form; a field the form does not know comes last. */
function inOrder(fields: WrittenFields, order: readonly string[]): WrittenFields {
  const place = (name: string): number => (order.includes(name) ? order.indexOf(name) : order.length);
  return Object.fromEntries(Object.entries(fields).sort(([a], [b]) => place(a) - place(b)));
}
