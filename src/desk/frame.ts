import { html } from 'hono/html';
import type { HtmlEscapedString } from 'hono/utils/html';

export type Html = HtmlEscapedString | Promise<HtmlEscapedString>;

/** What every page of the desk has around it. */
export type Frame = {
  readonly title: string;
  /** The title of the cabinet. */
  readonly cabinet: string;
  /** What was done just now; null for nothing. */
  readonly told?: string | null;
  readonly body: Html;
};

const PLACES: readonly (readonly [string, string])[] = [
  ['/', 'Pieces'],
  ['/new', 'New piece'],
  ['/lists', 'Lists, sets and exhibits'],
  ['/life', 'Came and left'],
  ['/totals', 'Totals'],
  ['/tickets', 'Tickets'],
  ['/undo', 'Undo'],
  ['/site', 'Check and build'],
];

/** A page of the desk. */
export function frame({ title, cabinet, told = null, body }: Frame): Html {
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>${title} – the desk of ${cabinet}</title>
        <link rel="stylesheet" href="/desk.css" />
        <script src="/desk.js" defer></script>
      </head>
      <body>
        <header class="desk">
          <p class="where">The desk of <b>${cabinet}</b>: for you alone, on this machine</p>
          <nav aria-label="The desk">${PLACES.map(([to, name]) => html`<a href="${to}">${name}</a>`)}</nav>
        </header>
        <main>
          <h1>${title}</h1>
          ${told === null ? '' : html`<p class="told" role="status">${told}</p>`} ${body}
        </main>
      </body>
    </html>`;
}

export type FormOptions = {
  readonly withFiles?: true;
  /** The folder of the file it is about; a piece's where nothing is said. */
  readonly kind?: string;
  /** The address under which what was typed is kept. */
  readonly draft?: string;
  /** Where is asked, while it is typed, for what is shown in the element with the id `shows`. */
  readonly asks?: string;
  readonly shows?: string;
};

/** A form that changes something; it carries the desk's token. */
export function postForm(to: string, token: string, body: Html, options: FormOptions = {}): Html {
  return html`<form
    method="post"
    action="${to}"
    ${options.withFiles === true ? html`enctype="multipart/form-data"` : ''}
    ${options.kind === undefined ? '' : html`data-kind="${options.kind}"`}
    ${options.draft === undefined ? '' : html`data-draft="${options.draft}"`}
    ${options.asks === undefined ? '' : html`data-asks="${options.asks}"`}
    ${options.shows === undefined ? '' : html`data-shows="${options.shows}"`}
  >
    <input type="hidden" name="form-token" value="${token}" />
    ${body}
  </form>`;
}
