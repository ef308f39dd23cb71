import type { Context } from 'hono';
import type { Problem } from '../catalogue/problem.ts';
import type { Outcome } from '../core/outcome.ts';
import type { CabinetState } from './cabinet-state.ts';
import type { FileChange } from './cabinet-files.ts';
import type { Html } from './frame.ts';
import type { Posted } from './form/leaves.ts';
import { readPiece } from './save-piece.ts';
import type { PieceOnDesk } from './save-piece.ts';
import type { DeskTools } from './tools.ts';

/** What every route is given. */
export type Desk = {
  readonly state: CabinetState;
  readonly token: string;
  readonly tools: DeskTools;
  readonly page: (
    c: Context,
    title: string,
    body: Html,
    status?: 200 | 404 | 409 | 422,
    told?: string | null,
  ) => Promise<Response>;
  /** The form that was posted; null when it does not carry the desk's token. */
  readonly form: (c: Context) => Promise<FormData | null>;
  /** Writes files as one stroke of the journal, and takes them up. */
  readonly write: (changes: readonly FileChange[]) => Promise<Outcome<null>>;
};

export const FORBIDDEN = 'This form was not made by this desk, or by one that has been closed. Open the page again.';

/** Writes what `check` has nothing against; a sentence otherwise. */
export async function writeUnlessWrong({ state, write }: Desk, changes: readonly FileChange[]): Promise<string | null> {
  const problems = state.problemsOf(changes);
  if (problems.length > 0) return problems.map(({ field, says }) => `${field ?? ''}: ${says}`).join(' ');
  const done = await write(changes);
  return done.ok ? null : done.problem;
}

const TOLD: Readonly<Record<string, string>> = {
  saved: 'Saved.',
  made: 'The piece has been made. Now say what it is, and save.',
  nothing: 'Nothing was changed, and nothing was written.',
  undone: 'Undone.',
  deleted: 'Deleted. It can be taken back under Undo.',
  new: 'It has been made.',
  copied: 'The photographs have been copied.',
  'group-gone': 'Saved. The group it was in had no piece left and was taken out.',
  'case-gone': 'Saved. The case it was in had no piece left and was taken out.',
};

export function told(c: Context): string | null {
  return TOLD[c.req.query('told') ?? ''] ?? null;
}

export async function pieceNamed(state: CabinetState, id: string): Promise<PieceOnDesk | null> {
  return state.records().named.pieces.includes(id) ? readPiece(state, id) : null;
}

export function foundIn(state: CabinetState, file: string): readonly Problem[] {
  return (state.found()?.problems ?? []).filter((one) => one.file === file);
}

export function text(form: FormData, name: string): string | null {
  const held = form.get(name);
  return typeof held === 'string' ? held : null;
}

export function texts(form: FormData, name: string): readonly string[] {
  return form.getAll(name).filter((one) => typeof one === 'string');
}

export function postedOf(form: FormData): Posted {
  return { get: (name) => text(form, name) };
}
