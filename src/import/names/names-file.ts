import { z } from 'zod';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { readForm } from '../../catalogue/read-fields.ts';
import { id, words } from '../../catalogue/schema/fields.ts';
import { editFields } from '../../catalogue/write/edit-fields.ts';
import type { ListKind } from '../../catalogue/write/write-piece.ts';
import type { NameQuestion, SaidNames } from './name.ts';

/** What a keeper has said of the names in a sheet, list by list. */
export type SaidOfLists = { readonly [kind in ListKind]: SaidNames };

export const NOTHING_SAID: SaidOfLists = { rulers: {}, mints: {}, denominations: {}, works: {} };

const spellings = z.record(id, z.array(words)).default({});
const form = z.strictObject({ rulers: spellings, mints: spellings, denominations: spellings, works: spellings });

const TOP = `# Names that the sheet spells in several ways. Each line is one file of a list, and the spellings that are meant by it.
# Two that are not the same: take the spelling out and give it a line of its own, like  edward-iii: [Edward III]
# Square brackets tell those of one name apart, by the realm or by the years of their pieces; a name without them means them all.
`;

/** Reads a names file; the first thing wrong with it is the sentence. */
export function parseNames(text: string): Outcome<SaidOfLists> {
  const { fields, problems } = readForm(form, text, 'names');
  const [first] = problems;
  if (fields === null || first !== undefined)
    return refuse(`${first?.line === null || first === undefined ? '' : `Line ${first.line}: `}${first?.says ?? ''}`);
  return good(fields);
}

/** A names file with what is asked put in; lines, comments and order of one that is there stay. Null when nothing is asked. */
export function formatNames(before: string | null, questions: readonly NameQuestion[]): string | null {
  if (questions.length === 0) return before;
  const said = before === null ? null : parseNames(before);
  const now = said?.ok === true ? said.value : NOTHING_SAID;
  // Each spelling of a known name is a question of its own, and they share one line.
  const changes = questions.map(({ kind, id: file }) => {
    const spelled = questions.filter((one) => one.kind === kind && one.id === file).flatMap((one) => one.spelled);
    return { path: [kind, file], value: [...new Set([...(now[kind][file] ?? []), ...spelled])] };
  });
  const edited = editFields(before ?? TOP, changes, []);
  return edited.ok ? edited.value : before;
}
