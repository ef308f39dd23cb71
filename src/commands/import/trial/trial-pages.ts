import type { Trial, TrialRow } from './trial-rows.ts';

const STYLE = `body{font:16px/1.45 system-ui,sans-serif;margin:1.5rem auto;max-width:70rem;padding:0 1rem;color:#222;background:#fff}
h1{font-size:1.4rem}h2{font-size:1.1rem}article{border-top:1px solid #bbb;padding:.6rem 0}table{border-collapse:collapse;width:100%}
td,th{text-align:left;vertical-align:top;padding:.1rem .6rem .1rem 0;font-weight:400}th{color:#555;width:14rem}td:last-child{color:#555}
pre{white-space:pre-wrap;font:inherit}.asked{background:#fff3d6;padding:.3rem .6rem;margin:.3rem 0}.was{text-decoration:line-through}
#only:checked~article:not(.look){display:none}nav a{margin-right:.6rem}`;

function page(title: string, body: string): string {
  return `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="robots" content="noindex"><title>${escaped(title)}</title><style>${STYLE}</style>\n<h1>${escaped(title)}</h1>\n${body}\n</html>\n`;
}

/** The first page: what is asked, then what the sheet comes to, then where each row is. */
export function questionsPage({ sheet, plan, questions }: Trial, rows: readonly TrialRow[], perPage: number): string {
  const asked = questions.filter((text) => text !== '');
  const count = (state: string): number => plan.pieces.filter((piece) => piece.state === state).length;
  const figures = [
    `${rows.length} rows`,
    `${count('new')} new pieces`,
    `${count('changed')} changed`,
    `${count('same')} as they were`,
    `${plan.setAside.length} rows that become no piece`,
    `${plan.unread.length} cells that could not be read`,
    `${rows.filter(isToLookAt).length} rows to be looked at`,
  ];
  return page(
    `Trial of ${sheet.name}`,
    [
      '<p>Nothing of this has been written to the cabinet. These pages hold private cells; show them to nobody.</p>',
      '<h2>What is asked</h2>',
      asked.length === 0
        ? '<p>Nothing.</p>'
        : asked.map((text) => `<pre class="asked">${escaped(text)}</pre>`).join('\n'),
      `<h2>What the sheet comes to</h2>\n<ul>${figures.map((figure) => `<li>${figure}</li>`).join('')}</ul>`,
      plan.remarks.length === 0
        ? ''
        : `<h2>To look at</h2>\n<ul>${plan.remarks.map((remark) => `<li>${escaped(remark)}</li>`).join('')}</ul>`,
      `<h2>Every row</h2>\n<nav>${pageLinks(rows, perPage)}</nav>`,
    ].join('\n'),
  );
}

function pageLinks(rows: readonly TrialRow[], perPage: number): string {
  const pages = Array.from({ length: Math.ceil(rows.length / perPage) }, (_, at) => at);
  return pages
    .map((at) => {
      const some = rows.slice(at * perPage, (at + 1) * perPage);
      const look = some.filter(isToLookAt).length;
      return `<a href="rows-${at + 1}.html">rows ${some[0]?.row ?? ''} to ${some.at(-1)?.row ?? ''}${look === 0 ? '' : ` (${look} to be looked at)`}</a>`;
    })
    .join('\n');
}

/** Up to 500 rows, each with its cells, what they become, and what is asked. */
export function rowsPage(rows: readonly TrialRow[], at: number, pages: number): string {
  const links = [
    '<a href="index.html">Questions</a>',
    at > 1 ? `<a href="rows-${at - 1}.html">Earlier rows</a>` : '',
    at < pages ? `<a href="rows-${at + 1}.html">Later rows</a>` : '',
  ].join('');
  const filter = '<input type="checkbox" id="only"> <label for="only">Only what is to be looked at</label>';
  const title = `Rows ${rows[0]?.row ?? ''} to ${rows.at(-1)?.row ?? ''}`;
  return page(title, `<nav>${links}</nav>\n${filter}\n${rows.map(rowInWords).join('\n')}`);
}

function isToLookAt({ asked, because, facts }: TrialRow): boolean {
  return asked.length > 0 || because !== '' || facts.some(({ was }) => was !== null);
}

function rowInWords(row: TrialRow): string {
  const becomes = row.piece === null ? `no piece: ${row.because}` : `${row.piece.id} (${row.piece.state})`;
  const cells = row.cells.map(
    (one) => `<tr><th>${escaped(one.heading)}<td>${escaped(one.text)}<td>${escaped(one.becomes)}`,
  );
  const facts = row.facts.map(
    ({ field, value, was }) =>
      `<tr><th>${escaped(field)}<td>${was === null ? '' : `<span class="was">${escaped(was)}</span> `}${escaped(value)}`,
  );
  const tables = [
    `<table>${cells.join('')}</table>`,
    facts.length === 0 ? '' : `<h3>What will be in the cabinet</h3><table>${facts.join('')}</table>`,
  ];
  return `<article${isToLookAt(row) ? ' class="look"' : ''}><h2>Row ${row.row}: ${escaped(becomes)}</h2>${row.asked
    .map((text) => `<p class="asked">${escaped(text)}</p>`)
    .join('')}${tables.join('')}</article>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
