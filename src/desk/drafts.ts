import { mkdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Hono } from 'hono';
import { html } from 'hono/html';
import { PRIVATE_FILE, writeWhole } from '../catalogue/keep/flush.ts';
import { FORBIDDEN, text } from './route-helpers.ts';
import type { Desk } from './route-helpers.ts';
import type { Posted } from './form/leaves.ts';
import { postForm } from './frame.ts';
import type { Html } from './frame.ts';
import { isListFile } from './save-list-file.ts';

/** Words of a form that were typed and not saved. */
export type Draft = { readonly when: string; readonly fields: Readonly<Record<string, string>> };

const FOLDER = join('private', 'desk');

/** Keeps the words of a form while they are typed, so that a window that closes loses nothing. */
export function draftRoutes(app: Hono, desk: Desk): void {
  app.post('/draft', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const of = text(form, 'draft-of') ?? '';
    const file = draftFile(desk, of);
    if (file === null) return c.notFound();
    if (text(form, 'do') === 'forget') {
      await forgetDraft(desk, of);
      return c.redirect(of, 303);
    }
    const fields: Record<string, string> = {};
    form.forEach((value, name) => {
      if (typeof value === 'string' && !['form-token', 'draft-of'].includes(name)) fields[name] = value;
    });
    await mkdir(join(desk.state.at, FOLDER), { recursive: true, mode: 0o700 });
    await writeWhole(file, JSON.stringify({ when: new Date().toISOString(), fields }), PRIVATE_FILE);
    return c.json({ kept: true });
  });
}

/** The draft of the form at an address; null when there is none. */
export async function draftOf(desk: Desk, of: string): Promise<Draft | null> {
  const file = draftFile(desk, of);
  const held = file === null ? null : await readFile(file, 'utf8').catch(() => null);
  if (held === null) return null;
  try {
    return JSON.parse(held) as Draft;
  } catch {
    return null;
  }
}

export async function forgetDraft(desk: Desk, of: string): Promise<void> {
  const file = draftFile(desk, of);
  if (file !== null) await rm(file, { force: true });
}

export function postedDraft({ fields }: Draft): Posted {
  return { get: (name) => (Object.hasOwn(fields, name) ? (fields[name] ?? null) : null) };
}

/** Says that there are words that were not saved, and offers them. */
export function draftNote(desk: Desk, of: string, draft: Draft | null, isShown: boolean): Html | '' {
  if (draft === null) return '';
  const when = new Date(draft.when).toLocaleString('en-GB');
  return html`<div class="told">
    <p>
      ${isShown ? `The form holds what you typed until ${when}. It is not saved yet.` : `There are words in this form from ${when} that were not saved.`}
    </p>
    <div class="doing">
      ${isShown ? '' : html`<a href="${of}?draft=yes">Put them into the form</a>`}
      ${postForm(
        '/draft',
        desk.token,
        html`<input type="hidden" name="draft-of" value="${of}" /><button name="do" value="forget">
            Throw them away
          </button>`,
      )}
    </div>
  </div>`;
}

/** Where the draft of a form is kept; null for an address that is no form of this cabinet. */
function draftFile({ state }: Desk, of: string): string | null {
  const { named } = state.records();
  const [, first = '', second = '', third = '', more] = of.split('/');
  const isPiece = first === 'pieces' && third === '' && named.pieces.includes(second);
  const isList =
    first === 'lists' && more === undefined && isListFile(second) &&
    (second === 'cabinet' ? third === 'cabinet' : named[second].includes(third)); // prettier-ignore
  if (!isPiece && !isList) return null;
  return join(state.at, FOLDER, `${isPiece ? `pieces ${second}` : `${second} ${third}`}.json`.replace(' ', '--'));
}
