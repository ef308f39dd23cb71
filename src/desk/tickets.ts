import { html } from 'hono/html';
import { linkRecords } from '../catalogue/link.ts';
import type { FiledPiece, Records } from '../catalogue/records.ts';
import { publicPieces } from '../publish/public-piece.ts';
import { placeOf } from '../site/models/paper/cells.ts';
import { A4, across, furniture, LETTER } from '../site/models/paper/paper.ts';
import type { Paper } from '../site/models/paper/paper.ts';
import { TICKET_SIZES, ticketChoice } from '../site/models/paper/tickets.ts';
import type { TicketChoice } from '../site/models/paper/tickets.ts';
import { paperWords } from '../site/words/paper.ts';
import { asset } from './assets.ts';
import { drawMarks } from './draw-marks.ts';
import type { Html } from './frame.ts';

/** What tickets can be cut for, with the words for each. */
export const TICKET_CHOICES: readonly { readonly id: string; readonly name: string }[] = TICKET_SIZES.map(
  ({ id, shape, across: wide }) => ({ id, name: paperWords.ticketsFor(shape, wide) }),
);
export const PAPERS = { a4: A4, letter: LETTER } as const;
export type PaperName = keyof typeof PAPERS;

/** Tickets on their sheets, and what found no room on them. */
export type Tickets = { readonly sheets: Html; readonly count: number; readonly reports: readonly string[] };

/** The tickets of these pieces, hidden ones too: paper of the keeper's own is not published. */
export function ticketsOf(records: Records, pieces: readonly FiledPiece[], size: string, paper: PaperName): Tickets {
  const shown = pieces.map((piece) => ({ ...piece, fields: { ...piece.fields, publish: 'yes' as const } }));
  const byId = new Map(publicPieces(linkRecords({ ...records, pieces: shown })).map((piece) => [piece.id, piece]));
  const ordered = pieces.flatMap(({ id }) => byId.get(id) ?? []);
  const holder = TICKET_SIZES.find(({ id }) => id === size) ?? { id: 'fit', shape: 'round', across: null };
  const choice = ticketChoice(ordered, holder, PAPERS[paper]);
  return { sheets: drawSheets(choice, PAPERS[paper]), count: choice.count, reports: choice.reports };
}

function drawSheets({ sheets, grid }: TicketChoice, paper: Paper): Html {
  const printed = sheets.filter(({ isSpare }) => isSpare !== true);
  return html`${printed.map(({ name, marks, isAcross = false, cells = [] }, index) => {
    const head = furniture(isAcross ? across(paper) : paper, name, paperWords.sheet(index + 1, printed.length));
    const turned = isAcross ? `translate(${paper.width} 0) rotate(90)` : '';
    return html`<figure class="paper" aria-label="${paperWords.sheet(index + 1, printed.length)}">
      <svg
        width="${paper.width}mm"
        height="${paper.height}mm"
        viewBox="0 0 ${paper.width} ${paper.height}"
        role="img"
        aria-label="${name}"
      >
        <g transform="${turned}">
          ${drawMarks([...head, ...marks])}
          ${cells.map(({ at, marks: own }) => {
            if (grid === null || at < 0 || own === null) return '';
            const { x, y } = placeOf(at, grid);
            return html`<g transform="translate(${x} ${y})">${drawMarks(own)}</g>`;
          })}
        </g>
      </svg>
    </figure>`;
  })}`;
}

/** How a sheet is printed at true size. */
export function paperStyle(paper: PaperName): string {
  const { width, height } = PAPERS[paper];
  return `@page{size:${width}mm ${height}mm;margin:0}.paper{contain:size;overflow:hidden;inline-size:${width}mm;block-size:${height}mm}`;
}

/** The tickets as a file of its own, which opens and prints without the desk. */
export async function ticketsFile(title: string, { sheets }: Tickets, paper: PaperName): Promise<string> {
  const style = await withFonts(`${new TextDecoder().decode(await asset('desk.css'))}${paperStyle(paper)}`);
  const page = await html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <title>${title}</title>
        <style>
          PUT THE STYLE HERE
        </style>
      </head>
      <body>
        <main>
          <div class="not-printed">
            <h1>${title}</h1>
            ${paperWords
              .how(PAPERS[paper].name)
              .slice(1, 2)
              .map((says) => html`<p>${says}</p>`)}
            <p>${paperWords.foldHow}</p>
          </div>
          ${sheets}
        </main>
      </body>
    </html>`;
  return page.toString().replace('PUT THE STYLE HERE', () => style);
}

/** The faces that tickets are set in, within the style itself. */
async function withFonts(style: string): Promise<string> {
  const names = [...new Set([...style.matchAll(/\/(fonts\/[\w.-]+\.woff2)/g)].map(([, name = '']) => name))];
  const files = await Promise.all(
    names.map(async (name) => [name, Buffer.from(await asset(name)).toString('base64')] as const),
  );
  return files.reduce((now, [name, data]) => now.replaceAll(`/${name}`, `data:font/woff2;base64,${data}`), style);
}
