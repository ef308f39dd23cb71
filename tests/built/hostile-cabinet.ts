import { LIST_ROWS } from '../../src/catalogue/fields/list-fields.ts';
import type { ListFile } from '../../src/catalogue/fields/list-fields.ts';
import { PIECE_ROWS } from '../../src/catalogue/fields/piece-fields.ts';
import type { FactsTable, FieldFacts } from '../../src/catalogue/fields/row.ts';
import type { CabinetFolder } from '../../src/catalogue/files.ts';
import type { Problem } from '../../src/catalogue/problem.ts';
import { formatYaml } from '../../src/catalogue/write/write-yaml.ts';
import type { Written } from '../../src/catalogue/yaml.ts';

/**
 * What a text may hold that a page, a script, a style, an address, a data file or a layout could take for its own. `@` is where
 * a script says its number. Sources: WHATWG HTML §13.2 (script data, foreign content), RFC 3986, CSS Syntax 3, YAML 1.2.2,
 * Unicode 16 (Cf, Cc, Bidi), CommonMark 0.31; the ways to smuggle a script are common knowledge of the web.
 */
const HOSTILE: readonly string[] = [
  '<script>hit(@)</script>', '</script><script>hit(@)</script>', '</title><script>hit(@)</script>', '</textarea><script>hit(@)</script>',
  '</style><script>hit(@)</script>', '--><script>hit(@)</script>', ']]><script>hit(@)</script>', '<!--<script>hit(@)', '<img src=x onerror=hit(@)>',
  '"><img src=x onerror=hit(@)>', "'><img src=x onerror=hit(@)>", '<svg onload=hit(@)>', '<svg><script>hit(@)</script></svg>',
  '<math><mtext><img src=x onerror=hit(@)></mtext></math>', '<iframe srcdoc="<script>parent.hit(@)</script>"></iframe>',
  '<iframe src="javascript:parent.hit(@)"></iframe>', '<object data="javascript:hit(@)"></object>', '<embed src="data:text/html,<script>hit(@)</script>">',
  '<a href="javascript:hit(@)">x</a>', '<body onload=hit(@)>', '<details open ontoggle=hit(@)>', '<input autofocus onfocus=hit(@)>',
  '<video><source onerror=hit(@)></video>', '<base href="https://example.net/">', '<meta http-equiv="refresh" content="0;url=https://example.net/">',
  '<link rel=stylesheet href="https://example.net/a.css">', '<img src="https://example.net/a.png">', '<form action="https://example.net/"><button>x</button></form>',
  '<style>*{background:url(https://example.net/a.png)}</style>', '<template><script>hit(@)</script></template>', '<noscript><img src=x onerror=hit(@)></noscript>',
  '<xmp><script>hit(@)</script>', '<plaintext>', '<p style="position:fixed;inset:0">', '" onmouseover="hit(@)" x="', "' onfocus='hit(@)' autofocus x='",
  '` onerror=`hit(@)`', '[x](javascript:hit(@))', '[x](JaVaScRiPt:hit(@))', '[x](java&#10;script:hit(@))', '[x](data:text/html,<script>hit(@)</script>)',
  '[x](vbscript:hit(@))', '![x](https://example.net/a.png)', '![x](javascript:hit(@))', '<javascript:hit(@)>', '[x]: javascript:hit(@)', '<https://example.net/?"onload=hit(@)>',
  'javascript:hit(@)', 'data:text/html;base64,PHNjcmlwdD5oaXQoMSk8L3NjcmlwdD4=', '//example.net/a.js', 'https://example.net/a.js', '../../../../etc/passwd', '..\\..\\x', '/absolute',
  'x{background:url(https://example.net/a)}', '}*{color:red}', 'expression(hit(@))', '@import "https://example.net/a.css";', 'url(javascript:hit(@))',
  '${hit(@)}', '`${hit(@)}`', '{{hit(@)}}', '{hit(@)}', '<%= hit(@) %>', '#{hit(@)}', '{{constructor.constructor("hit(@)")()}}', '$(hit @)', '`hit @`', '|hit(@)',
  '=HYPERLINK("https://example.net","x")', '+1+1', '-1+1', '@SUM(1)', '\\"+hit(@)+\\"', "\\'+hit(@)+\\'", '\\u003cscript\\u003ehit(@)\\u003c/script\\u003e', '&lt;script&gt;hit(@)&lt;/script&gt;',
  '&amp;lt;script&amp;gt;', '%3Cscript%3Ehit(@)%3C/script%3E', '+ADw-script+AD4-hit(@)+ADw-/script+AD4-', '\u2028hit(@)\u2029', '\u202Egpj.exe', '\u202Dabc\u202C', '\u2066abc', '\u2069abc', '\u200B\u200C\u200D\u2060\uFEFF',
  'a\u200Bb\u200Bc', '\u061C\u200E\u200F', '\u0000null', '\u0001\u0007\u0008', '\u001B[31mred\u001B[0m', '\u001B]0;title\u0007', '\u009B31m', '\u007F', '\uD800', '\uDFFF', '\uFFFE\uFFFF', '\u{E0041}\u{E0042}',
  `a${'\u0301'.repeat(60)}`, 'W'.repeat(10_000), '\u4E2D'.repeat(3_000), 'x-'.repeat(2_000), '\u00A0'.repeat(2_000), 'a\u00A0'.repeat(2_000), '_'.repeat(5_000), '\uFDFD'.repeat(300), '𒐫'.repeat(200), 'نص'.repeat(2_000), 'https://example.net/' + 'a'.repeat(3_000),
  '__proto__', 'constructor', 'toString', 'hasOwnProperty', 'null', 'undefined', 'true', 'no', '~', 'NaN', '[object Object]', '0x7F', '1e400', '0123', '-0', '1_000', '12:30:45', '2001-01-01', '.inf', '<<', '*a', '&a b', '!!js/function "hit(@)"', '!<tag:yaml.org,2002:js/undefined> x',
  '---', '...', '- a', '? a', ': b', 'a: b', '# c', "it's", '"quoted"', '{a: b}', '[a, b]', '|', '>', '%YAML 1.2', 'a\nb', 'a\n---\nb', 'a\r\nb', '\ta', '   ', '⁄../', 'con', 'aux', 'a/b', 'a?b#c', 'a%2Fb', '%', '%%', '%s%n', '\\', '\\n',
  '# Title', '* * *', '```\n<script>hit(@)</script>\n```', '<details><summary>', '| a | b |\n|---|---|\n| <script>hit(@)</script> | x |', '[^1]: <img src=x onerror=hit(@)>', '~~x~~<b>', '&#x6A;avascript:hit(@)', '&Tab;javascript:hit(@)', '<a\u000Bhref=javascript:hit(@)>x',
]; // prettier-ignore

const FRAMES: readonly ((text: string) => string)[] = [
  (text) => text,
  (text) => `A ${text} z`,
  (text) => `${text}${text}`,
  (text) => `“${text}”`,
];

/** Five hundred hostile strings, each with a number of its own. */
export const HOSTILE_STRINGS: readonly string[] = FRAMES.flatMap((frame) => HOSTILE.map(frame))
  .filter((text) => text.length <= 20_000)
  .slice(0, 500)
  .map((text, at) => text.replaceAll('@', String(at)));

type Facts = Record<string, Written>;
type File = { facts: Facts; story: string; readonly isMarkdown: boolean };
/** A cabinet in which every text is hostile, still to be changed. */
export type HostileCabinet = ReadonlyMap<string, File>;

/** What the lists are called that pieces name, and the books. */
const NAMED: Readonly<Record<string, string>> = { rulers: 'king', mints: 'town', denominations: 'penny', works: 'book', sets: 'set', pieces: 'piece' }; // prettier-ignore
/** Texts that are no words of a page: an address is one of ours or none. */
const FIXED: Readonly<Record<string, string>> = { publish: 'yes', demo: 'yes', address: 'https://example.org/hostile/', language: 'en', currency: 'GBP', robots: 'all', kind: 'coin', status: 'kept', 'one-per': 'ruler', ends: 'inclusive', 'aim-scale': 'uk', year: '1900' }; // prettier-ignore
const LEFT = new Set(['where', 'not', 'formerly', 'type', 'as-written', 'grid', 'series', 'level', 'count', 'dates', 'accept', 'gaps', 'sure', 'applies-to', 'photographs']); // prettier-ignore

/** Fills every field of a table with strings; `next` gives the next one. */
function fill(rows: FactsTable, at: number, next: () => string): Facts {
  const value = (name: string, row: FieldFacts): Written | undefined => {
    if (LEFT.has(name)) return undefined;
    if (name === 'periods') return [{ id: 'early', name: next(), from: '1300', to: '1400', note: next() }];
    if (FIXED[name] !== undefined) return FIXED[name];
    if (row.control === 'name' && row.list !== undefined) {
      const named = `${NAMED[row.list] ?? ''}-${at}`;
      return row.several === true ? [named] : named;
    }
    if (row.control === 'choice') return row.choices?.[at % row.choices.length];
    if (row.control === 'lines') return name === 'references' ? [`book-${at} ${next()}`] : [next(), next()];
    if (row.control === 'pairs') return { nomisma: next(), wikidata: next() };
    if (row.control === 'parts') return row.parts === undefined ? undefined : fill(row.parts, at, next);
    if (row.control === 'rows') return [fill(row.parts ?? {}, at, next), fill(row.parts ?? {}, at, next)];
    if (row.control === 'each') return Object.fromEntries((row.choices ?? []).map((choice) => [choice, fill(row.parts ?? {}, at, next)])); // prettier-ignore
    return row.control === 'table' ? undefined : next();
  };
  return Object.fromEntries(Object.entries(rows).flatMap(([name, row]) => {
    const held = value(name, row);
    return held === undefined ? [] : [[name, held]];
  })); // prettier-ignore
}

/** A cabinet of so many pieces and a few of everything else, with the hostile strings in turn in every field, whatever it is for. */
export function hostileCabinet(pieces: number): HostileCabinet {
  const files = new Map<string, File>();
  let turn = 0;
  // Another step than one for each piece: a field has another string in each of them.
  const next = (): string => HOSTILE_STRINGS[turn++ % HOSTILE_STRINGS.length] ?? '';
  const lists = Math.max(2, Math.ceil(pieces / 8));
  for (let at = 0; at < pieces; at += 1) {
    const facts = fill(PIECE_ROWS, at % lists, next);
    Object.assign(facts, { number: `${at} ${next()}` });
    files.set(`pieces/piece-${at}/piece.md`, { facts, story: `${next()}\n\n${next()}`, isMarkdown: true });
    if ((turn + 1) % HOSTILE_STRINGS.length === 0) next();
  }
  const put = (kind: ListFile, file: string, at: number): void => {
    const isMarkdown = kind === 'exhibits';
    files.set(file, { facts: fill(LIST_ROWS[kind], at, next), story: isMarkdown ? next() : '', isMarkdown });
  };
  for (let at = 0; at < lists; at += 1) {
    for (const kind of ['rulers', 'mints', 'denominations', 'works', 'eras', 'sets'] as const)
      put(kind, `${kind}/${NAMED[kind] ?? 'era'}-${at}.yaml`, at);
    const file = `exhibits/show-${at}/exhibit.md`;
    put('exhibits', file, at);
    const group = { title: next(), text: next(), pieces: [`piece-${at}`, { piece: `piece-${(at + 1) % pieces}`, side: 'reverse', label: next() }] }; // prettier-ignore
    Object.assign(files.get(file)?.facts ?? {}, { cases: [{ title: next(), inside: '800 x 500 x 60 mm', groups: [group] }] }); // prettier-ignore
  }
  put('cabinet', 'cabinet.yaml', 0);
  // One that no other text holds: a label with the keeper's name in it is rightly refused in the form without a name.
  Object.assign(files.get('cabinet.yaml')?.facts ?? {}, {
    keeper: `"><script>hit(${HOSTILE_STRINGS.length})</script>`,
  });
  return files;
}

/** The cabinet as it would be read from a disk. */
export function asFolder(cabinet: HostileCabinet): CabinetFolder {
  const files = [...cabinet].map(([file, { facts, story, isMarkdown }]) => ({
    file,
    text: isMarkdown ? `---\n${formatYaml(facts)}---\n${story}\n` : formatYaml(facts),
  }));
  return { at: '/nowhere', files: files.sort((a, b) => (a.file < b.file ? -1 : 1)) };
}

/** What stands in the place of a text that is refused, where something must. */
const PLAIN: Readonly<Record<string, string>> = {
  title: 'A plain title', name: 'Plain', label: 'Plain', from: '1300', to: '1400', id: 'plain', is: 'king-0', date: '1300', price: '24.10 GBP',
  metal: 'silver', source: 'A list', weight: '1.4 g', fineness: '925/1000', legend: 'REX', number: '7', role: 'moneyer', what: 'engraved', work: 'book-0', host: 'A plain penny',
}; // prettier-ignore
/** Signs that no text may hold, which are told of by their line and not by their field. */
const CONTROL = /[^\P{Cc}\t\n\r]|[\u202a-\u202e\u2066-\u2069\ud800-\udfff\ufffe\uffff]/gu;

/** Takes out what a problem refuses, or puts something plain in its place. */
export function takeOut(cabinet: HostileCabinet, { kind, file, field }: Problem): void {
  const held = cabinet.get(file);
  if (held === undefined) return;
  if (kind === 'control-character') {
    held.facts = clean(held.facts) as Facts;
    return;
  }
  if (field === null) held.story = '';
  const path = (field ?? '').split('.');
  const last = path.pop() ?? '';
  let at: Written | undefined = held.facts;
  for (const step of path) at = typeof at === 'object' ? (at as Facts)[step] : undefined;
  if (typeof at !== 'object') return;
  const inner = at as Facts;
  // Either end may be a date that a string happens to be.
  if (kind === 'range-reversed') {
    Object.assign(inner, { from: PLAIN['from'], to: PLAIN['to'] });
    return;
  }
  const plain = PLAIN[last];
  if (plain !== undefined && inner[last] !== plain) inner[last] = plain;
  else if (Array.isArray(at)) (at as Written[]).splice(Number(last), 1);
  else Reflect.deleteProperty(inner, last);
}

function clean(held: Written): Written {
  if (typeof held === 'string') return held.replace(CONTROL, '') || 'x';
  if (Array.isArray(held)) return (held as readonly Written[]).map(clean);
  return Object.fromEntries(Object.entries(held as Facts).map(([name, one]) => [name, clean(one)]));
}

/** A hostile cabinet of so many pieces without what check refuses, and how many texts that was; throws where it refuses no end. */
export function acceptedCabinet(
  pieces: number,
  problemsOf: (folder: CabinetFolder) => readonly Problem[],
): { readonly folder: CabinetFolder; readonly refused: number } {
  const cabinet = hostileCabinet(pieces);
  for (let refused = 0, round = 0; round < 12; round += 1) {
    const folder = asFolder(cabinet);
    const problems = problemsOf(folder);
    if (problems.length === 0) return { folder, refused };
    refused += problems.length;
    // From the end, so that what stands in a list keeps its place; each once.
    const spots = new Map(problems.map((one) => [`${one.file} ${one.field ?? one.kind}`, one]));
    for (const one of [...spots.values()].toReversed()) takeOut(cabinet, one);
  }
  throw new Error('There is no end of problems.');
}
