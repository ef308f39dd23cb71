import { describe, expect, test } from 'vitest';
import { PROBLEMS } from '../../src/catalogue/problems.ts';
import type { ProblemKind } from '../../src/catalogue/problem.ts';
import type { Change } from './small-cabinet.ts';
import { changed, markedCabinet, problemsOf } from './small-cabinet.ts';

const PENNY = 'pieces/plain-penny/piece.md';
const MEDAL = 'pieces/old-medal/piece.md';
const GROAT = 'pieces/unlisted-groat/piece.md';
const SHOW = 'exhibits/small-show/exhibit.md';
const ERAS = 'eras/plain-eras.yaml';
const LEDGER = 'private/ledger.csv';
const GUIDE = 'private/guide.csv';
const LIFE = 'private/life.csv';

const SERIES = {
  'types/plain/series.yaml': 'title: Plain types\n',
  'types/plain/types.csv': 'id,label\np-1,First\n',
};

const MARK = '<svg viewBox="0 0 9 9"><path d="M1 1L8 8"/></svg>';

const put = (from: string | RegExp, to: string) => (text: string) => {
  const after = text.replace(from, to);
  if (after === text) throw new Error(`The marked cabinet no longer holds ${String(from)}.`);
  return after;
};
const fact = (line: string) => (text: string) => text.replace(/^---\n/, `---\n${line}\n`);

type Row = { readonly kind: ProblemKind; readonly change: Change; readonly line?: number; readonly says: string };

/** Each slip of the pen, and the words a keeper is told. */
const ROWS: readonly Row[] = [
  { kind: 'file-not-utf-8', change: { 'rulers/plain-king.yaml': null, 'rulers/latin.yaml': '\u0000' }, says: 'save it again as UTF-8' },
  { kind: 'file-unknown', change: { 'pieces/plain-penny/notes.txt': null, 'coins/penny.md': 'x' }, says: 'Nothing reads a file called "penny.md"' },
  { kind: 'file-missing', change: { 'cabinet.yaml': null }, says: 'There is no cabinet.yaml here' },
  { kind: 'folder-name', change: { 'rulers/Plain King.yaml': 'name: X\nrealm: Y\nreigns: [{ from: 1000, to: 1001 }]' }, says: 'Write "plain-king"' },
  { kind: 'front-matter-missing', change: { [PENNY]: 'Only a story.' }, line: 1, says: 'Begin it with a line ---' },
  { kind: 'yaml-unreadable', change: { [PENNY]: put('tags: [first]', 'tags: [first') }, says: 'Check the indentation' },
  { kind: 'field-twice', change: { [PENNY]: fact('mint: plain-town') }, says: 'stands here twice' },
  { kind: 'field-misspelt', change: { [PENNY]: put('weight:', 'wieght:') }, line: 12, says: 'Write weight.' },
  { kind: 'field-missing', change: { [PENNY]: put('kind: coin\n', '') }, says: 'The field "kind" is wanted' },
  { kind: 'choice-unknown', change: { [PENNY]: put('kind: coin', 'kind: coyn') }, line: 4, says: 'Write coin.' },
  { kind: 'form-wrong', change: { [PENNY]: put('title: Penny of a plain king', 'title: [a, b]') }, line: 3, says: 'wants plain text' },
  { kind: 'value-wrong', change: { 'cabinet.yaml': put('https://example.org/marked/', 'example.org') }, line: 4, says: 'https://example.org/coins/' },
  { kind: 'value-wrong', change: { 'cabinet.yaml': (text) => `${text.replace(/^language:.*\n/m, '')}language: yorkish\n` }, says: 'This one is not known' },
  { kind: 'value-wrong', change: { 'mints/plain-town.yaml': 'name: Plain Town\nnames: [{ name: Planum, lang: Old English }]\n' }, says: 'like la, ang or sr-Latn' },
  { kind: 'form-wrong', change: { [PENNY]: put(/provenance:[\s\S]*?formerly/, 'provenance: bought at a fair\nformerly') }, says: '{ when: 1934, how: auction' },
  { kind: 'field-misspelt', change: { [PENNY]: put('grade: VF', 'graed: VF') }, line: 15, says: 'Write grade.' },
  { kind: 'yaml-unreadable', change: { [PENNY]: put('title: Penny of a plain king', 'title: "Penny of a plain king') }, line: 3, says: 'a quotation mark is not closed' },
  { kind: 'yaml-unreadable', change: { [PENNY]: put('title: Penny of a plain king', 'title: Penny: of a plain king') }, line: 3, says: 'holds a colon' },
  { kind: 'life-impossible', change: { [LIFE]: 'piece,date,event\nplain-penny,2003,lent\nplain-penny,2004,sold' }, line: 3, says: 'Write returned first' },
  { kind: 'life-impossible', change: { [LIFE]: 'piece,date,event,amount,deal\nplain-penny,2003,sold,10 GBP,lot 1\n,,,12 GBP,lot 1' }, line: 3, says: 'do not come to its price' },
  { kind: 'life-status', change: { [LIFE]: 'piece,date,event\nplain-penny,2003,sold', [PENNY]: fact('status: kept') }, says: 'says that this piece is sold' },
  { kind: 'life-ledger', change: { [LIFE]: 'piece,date,event,amount\nplain-penny,2001-05,bought,10 GBP' }, line: 2, says: 'another cost' },
  { kind: 'life-ledger', change: { [LIFE]: 'piece,date,event\nplain-penny,2003,bought' }, line: 2, says: 'another day' },
  { kind: 'column-missing', change: { [LEDGER]: put('piece,cost', 'cost,cost-2') }, line: 1, says: 'Put piece first' },
  { kind: 'row-uneven', change: { [LEDGER]: (text) => `${text.trimEnd()}\nplain-penny,,,,,,,,,cleaned, bent\n` }, says: 'Put a cell that holds a comma between quotation marks' },
  { kind: 'row-uneven', change: { [LEDGER]: (text) => `${text.trimEnd()}\nplain-penny,12 GBP\n` }, says: 'Write a comma for each cell that is empty.' },
  { kind: 'table-separator', change: { [LEDGER]: (text) => text.replaceAll(',', ';') }, line: 1, says: 'Save it again as CSV with commas.' },
  { kind: 'row-names-nothing', change: { [LEDGER]: put('\nplain-penny', '\n0001') }, line: 2, says: 'Write plain-penny, which has that number.' },
  { kind: 'private-in-text', change: { [PENNY]: (text) => `${text}\nIt cost me £431.17.` }, says: 'cost of private/ledger.csv' },
  { kind: 'private-in-text', change: { [PENNY]: (text) => `${text}\nIt lies in the mark-storage BANK BOX.` }, says: 'storage of private/ledger.csv' },
  { kind: 'told-twice', change: { [LEDGER]: 'piece,notes\nplain-penny,Vera\n', [PENNY]: fact('issuer: Vera') }, says: '"notes in issuer" as the column' },
  { kind: 'private-in-name', change: { 'pieces/plain-penny/detail-mark-storage-bank-box.jpg': '' }, says: 'storage of private/ledger.csv' },
  { kind: 'hidden-in-text', change: { [PENNY]: (text) => `${text}\nLike hidden-noble.` }, line: 29, says: 'tells of hidden-noble' },
  { kind: 'hidden-in-text', change: { [PENNY]: (text) => `${text}\nLike the *noble* that must NOT be seen.` }, line: 29, says: 'tells of hidden-noble' },
  { kind: 'hidden-in-text', change: { [PENNY]: put('tags: [first]', 'tags: [HIDDEN-0003]') }, line: 25, says: 'tells of hidden-noble' },
  { kind: 'hidden-in-text', change: { 'rulers/plain-king.yaml': (text) => `${text}\nnote: See [it](../../pieces/hidden%2Dnoble/).\n` }, says: 'tells of hidden-noble' },
  { kind: 'unlisted-in-text', change: { [SHOW]: (text) => `${text}\nMore at [the groat](../../pieces/unlisted-groat/).` }, says: 'names unlisted-groat' },
  { kind: 'path-in-text', change: { [PENNY]: (text) => `${text}\nThe list is file:///home/jane/coins/list.ods.` }, line: 29, says: 'a folder of a machine' },
  { kind: 'path-in-text', change: { [PENNY]: fact('issuer: "C:\\\\Users\\\\Jane\\\\list.xlsx"') }, line: 2, says: 'Take the path out' },
  { kind: 'link-rooted', change: { [PENNY]: (text) => `${text}See [the medal](/pieces/old-medal/).` }, line: 28, says: '../york-penny/' },
  { kind: 'type-unknown', change: { [PENNY]: fact('type: p-2'), ...SERIES }, line: 2, says: 'Write p-1.' },
  { kind: 'series-column', change: { ...SERIES, 'types/plain/types.csv': 'id,label,meatl\np-1,First,silver\n' }, line: 1, says: 'Write metal.' },
  { kind: 'drawing-missing', change: { ...SERIES, 'types/plain/series.yaml': 'title: Plain types\ncharacters:\n  - id: crown\n    states: [{ id: pearls, drawing: perls.svg }, plain]\n', 'types/plain/pearls.svg': MARK }, line: 4, says: 'Write pearls.svg.' },
  { kind: 'drawing-unreadable', change: { ...SERIES, 'types/plain/series.yaml': 'title: Plain types\ncharacters:\n  - id: crown\n    states: [{ id: pearls, drawing: pearls.svg }, plain]\n', 'types/plain/pearls.svg': MARK.replace('<path', '<script/><path') }, says: 'This drawing holds <script>' },
  { kind: 'drawing-unused', change: { ...SERIES, 'types/plain/pearls.svg': MARK }, says: 'Write drawing: pearls.svg' },
  { kind: 'cell-unreadable', change: { ...SERIES, 'types/plain/types.csv': 'id,label,date\n"p-1","First\nof all",1281\np-2,Second,128u\n' }, line: 4, says: '128X' },
  { kind: 'name-form', change: { [PENNY]: put('mint: plain-town', 'mint: Plain Town') }, line: 6, says: 'Write plain-town.' },
  { kind: 'date-unreadable', change: { [PENNY]: put('date: 1281', 'date: 1281/1279') }, line: 8, says: 'Write 1279/1281' },
  { kind: 'date-unreadable', change: { [PENNY]: put('date: 1281', 'date: 128u') }, line: 8, says: '128X' },
  { kind: 'weight-unreadable', change: { [PENNY]: put('1.38 g ± 0.01', '1.38') }, line: 12, says: '1.38 g' },
  { kind: 'weight-unreadable', change: { [PENNY]: put('1.38 g ± 0.01', '0.04 oz') }, line: 12, says: 'oz t' },
  { kind: 'size-unreadable', change: { [PENNY]: put('diameter: 18.6 mm', 'diameter: 18.6') }, line: 13, says: '18.6 mm' },
  { kind: 'length-unreadable', change: { [PENNY]: fact('thickness: thin') }, line: 2, says: 'thin' },
  { kind: 'fineness-unreadable', change: { [PENNY]: put('925/1000', '1925/1000') }, line: 11, says: '1925/1000' },
  { kind: 'axis-unreadable', change: { [PENNY]: put('axis: 6h', 'axis: 13h') }, line: 14, says: 'clock hour from 1h to 12h; this says "13h"' },
  { kind: 'legend-unreadable', change: { [PENNY]: put('+PLAIN REX', '+PLAIN [REX') }, line: 18, says: 'The bracket [ is never closed' },
  { kind: 'grade-unreadable', change: { [PENNY]: put('grade: VF', 'grade: splendid-ish') }, line: 15, says: 'splendid-ish' },
  { kind: 'crop-unreadable', change: { [PENNY]: fact('photographs: { obverse: { crop: 120 80 900 px } }'), 'pieces/plain-penny/obverse.jpg': '' }, line: 2, says: 'Write 120 80 900 900 px.' },
  { kind: 'money-unreadable', change: { 'cabinet.yaml': (text) => `${text}metal-prices:\n  - { metal: silver, price: dear, date: 2024, source: mine }\n` }, says: 'dear' },
  { kind: 'picture-name-unknown', change: { 'pieces/plain-penny/IMG_1234.jpg': null, 'pieces/plain-penny/front.jpg': '' }, says: 'obverse.jpg' },
  { kind: 'number-twice', change: { [MEDAL]: put('"0004"', '"0001"') }, says: 'already belongs to the piece' },
  { kind: 'name-unknown', change: { [PENNY]: put('ruler: plain-king', 'ruler: plane-king') }, line: 5, says: 'Write plain-king.' },
  { kind: 'work-unknown', change: { [PENNY]: put('plain-book 12', 'plain-bok 12') }, says: 'Write plain-book.' },
  { kind: 'reference-unreadable', change: { [PENNY]: put('plain-book 12', 'plain-book') }, says: 'plain-book' },
  { kind: 'made-in-future', change: { [PENNY]: put('date: 1281', 'date: AD 2300') }, line: 8, says: 'dated:' },
  { kind: 'made-in-future', change: { [PENNY]: put('date: 1281', 'date: AH 1500') }, line: 8, says: 'today is 2026-11-30' },
  { kind: 'made-in-future', change: { [PENNY]: put('date: 1281', 'date: struck 2027') }, line: 8, says: 'struck 2027' },
  { kind: 'date-in-future', change: { [PENNY]: put('when: 1934', 'when: 2026-12') }, says: 'take it out until then' },
  { kind: 'date-in-future', change: { [LEDGER]: put(',2001,', ',2031,') }, line: 2, says: 'still to come' },
  { kind: 'date-in-future', change: { [LIFE]: 'piece,date,event\nplain-penny,2027-01-04,lent' }, line: 2, says: 'still to come' },
  { kind: 'struck-for-same', change: { [PENNY]: fact('struck-for: plain-king') }, line: 2, says: 'Take the line out' },
  { kind: 'axis-on-uniface', change: { [MEDAL]: put('axis: none', 'axis: 6h') }, says: 'Write axis: none.' },
  { kind: 'reverse-on-uniface', change: { [MEDAL]: fact('reverse: { legend: ABC }') }, line: 2, says: 'faces: two' },
  { kind: 'photograph-missing', change: { [PENNY]: fact('photographs: { obverse: { by: me } }') }, says: 'Add obverse.jpg' },
  { kind: 'photograph-twice', change: { 'pieces/plain-penny/obverse.jpg': '', 'pieces/plain-penny/obverse.png': '' }, says: 'detail-1' },
  { kind: 'doubt-about-nothing', change: { [PENNY]: put('sure: { mint: probable }', 'sure: { issuer: possible }') }, says: 'issuer is not stated' },
  { kind: 'grade-on-ungraded', change: { [PENNY]: put('kind: coin', 'kind: ingot') }, line: 15, says: 'grade: not graded' },
  { kind: 'spot-too-exact', change: { [PENNY]: fact('found: { area: near SE 603 523 }') }, says: 'find-spot' },
  { kind: 'spot-too-exact', change: { [PENNY]: (text) => `${text}\nFound at 53.95812, -1.08034 in a field.` }, line: 29, says: '"··.·····, -·.·····" names an exact spot' },
  { kind: 'spot-too-exact', change: { [PENNY]: fact('issuer: a forger at SE 603 523') }, line: 2, says: '"SE ··· ···" names an exact spot' },
  { kind: 'spot-too-exact', change: { [SHOW]: (text) => `${text}\nAll of it was found at SE 603 523.` }, says: '"SE ··· ···" names an exact spot' },
  { kind: 'ledger-in-piece', change: { [PENNY]: fact('as-written: { ledger cost: DM 85 }') }, line: 2, says: 'private/ledger.csv' },
  { kind: 'range-reversed', change: { 'rulers/plain-king.yaml': put('from: 1272, to: 1307', 'from: 1307, to: 1272') }, line: 5, says: 'runs backwards' },
  { kind: 'formerly-itself', change: { [PENNY]: put('formerly: penny-one', 'formerly: plain-penny') }, says: 'not formerly itself' },
  { kind: 'formerly-in-use', change: { [PENNY]: put('formerly: penny-one', 'formerly: old-medal') }, says: 'old-medal is the id of another piece' },
  { kind: 'formerly-circular', change: { [PENNY]: put('formerly: penny-one', 'formerly: old-medal'), [MEDAL]: fact('formerly: plain-penny') }, says: 'each say they were formerly the other' },
  { kind: 'formerly-twice', change: { [MEDAL]: fact('formerly: penny-one') }, says: 'already leads to' },
  { kind: 'address-unreadable', change: { 'addresses.txt': 'pieces/plain-penny/ perhaps\n' }, line: 1, says: 'pieces/york-penny/ withdrawn' },
  { kind: 'address-lost-piece', change: { 'addresses.txt': '# a note\npieces/first-penny/ 2026-11-29 0123456789ab\n' }, line: 2, says: 'write formerly: first-penny in its file' },
  { kind: 'address-lost', change: { 'addresses.txt': 'sets/first-set/\n' }, line: 1, says: 'sets/first-set/ withdrawn' },
  { kind: 'address-hidden', change: { 'addresses.txt': 'pieces/hidden-noble/\n' }, line: 1, says: 'pieces/hidden-noble/ withdrawn' },
  { kind: 'address-leads-nowhere', change: { 'addresses.txt': 'sets/first-set/ now sets/last-set/\n' }, line: 1, says: 'leads to sets/last-set/' },
  { kind: 'period-reversed', change: { [ERAS]: put('from: 1286, to: 1500', 'from: 1286, to: 1285') }, says: 'ends before it begins' },
  { kind: 'periods-overlap', change: { [ERAS]: put('from: 1286', 'from: 1280') }, line: 6, says: 'Write from: 1286' },
  { kind: 'periods-gap', change: { [ERAS]: put('from: 1286', 'from: 1300') }, line: 6, says: 'Write from: 1286' },
  { kind: 'era-place-unknown', change: { [ERAS]: put('ends: inclusive', 'applies-to: plain-twon\nends: inclusive') }, line: 3, says: 'Write plain-town.' },
  { kind: 'name-unknown', change: { [ERAS]: put('to: 1285 }', 'to: 1285, rulers: [harold-iii, plain-kign] }') }, line: 5, says: 'plain-kign' },
  { kind: 'set-word-unknown', change: { [ERAS]: put('to: 1285 }', 'to: 1285, realms: [Nowhereland, Plainlnad] }') }, line: 5, says: 'Write Plainland.' },
  { kind: 'era-place-unknown', change: { [ERAS]: put('ends: inclusive', 'applies-to: [Atlantis, Mu]\nends: inclusive') }, line: 3, says: 'Atlantis' },
  { kind: 'set-rule', change: { 'sets/plain-set.yaml': put('realm: Plainland', 'realm: Plainland, date: 2020') }, says: 'yields no place' },
  { kind: 'set-word-unknown', change: { 'sets/plain-set.yaml': put('realm: Plainland', 'realm: Plainlnad') }, says: 'Write Plainland.' },
  { kind: 'set-rule', change: { 'sets/plain-set.yaml': (text) => `${text.replace('one-per: ruler', 'one-per: listed').replace('realm: Plainland', 'kind: coin')}places:\n  - { is: a, where: { kind: medal } }\n` }, says: 'Nothing can fill the place a' },
  { kind: 'name-unknown', change: { 'sets/plain-set.yaml': put('where: { realm: Plainland }', 'where: { mint: plane-town }') }, line: 4, says: 'Write plain-town.' },
  { kind: 'name-unknown', change: { 'sets/plain-set.yaml': put('realm: Plainland', 'realm: Plainland, not: { struck-for: plane-king }') }, line: 4, says: 'Write plain-king.' },
  { kind: 'set-rule', change: { 'sets/plain-set.yaml': (text) => `${text}places: [plain-king, plain-king]\n` }, says: 'plain-king' },
  { kind: 'aim-unreadable', change: { 'sets/plain-set.yaml': put('aim: VF', 'aim: VF\naim-scale: moon') }, line: 5, says: 'There is no grade scale called "moon". Write one of numeric, us, uk' },
  { kind: 'aim-unreadable', change: { 'sets/plain-set.yaml': put('aim: VF', 'aim: very shiny') }, line: 5, says: 'very shiny' },
  { kind: 'exhibit-piece-unknown', change: { [SHOW]: put('[plain-penny]', '[plain-peny]') }, says: 'Write plain-penny.' },
  { kind: 'exhibit-piece-unpublished', change: { [SHOW]: put('[plain-penny]', '[hidden-noble]') }, says: 'publish: yes' },
  { kind: 'exhibit-piece-gone', change: { [PENNY]: fact('status: sold') }, says: 'is sold and no longer with you' },
  ...(['given', 'exchanged', 'lost'] as const).map((status): Row => ({ kind: 'exhibit-piece-gone', change: { [PENNY]: fact(`status: ${status}`) }, says: `is ${status} and no longer with you` })),
  { kind: 'work-unknown', change: { [SHOW]: put('bibliography: [plain-book]', 'bibliography: [plain-bok]') }, line: 10, says: 'Write plain-book.' },
  { kind: 'exhibit-piece-twice', change: { [SHOW]: put('bibliography:', '  - inside: 200 x 200 mm\n    groups: [{ title: Again, pieces: [plain-penny] }]\nbibliography:') }, line: 11, says: 'shown twice' },
  { kind: 'exhibit-piece-twice', change: { [SHOW]: put('[plain-penny]', '[plain-penny, plain-penny]') }, says: 'shown twice' },
  { kind: 'exhibit-type-small', change: { [SHOW]: fact('label: { text: 7 pt }') }, line: 2, says: 'Write at least 8 pt.' },
  { kind: 'case-unreadable', change: { [SHOW]: (text) => text.replace(/inside: .*/u, 'inside: 300 x 200') }, says: '32 3/4 x 20 3/4 x 2 3/4 in' },
  { kind: 'holder-unreadable', change: { [SHOW]: put('pieces: [plain-penny]', 'pieces: [{ piece: plain-penny, holder: slab }]') }, says: 'Write slab 60 x 86 x 7 mm.' },
  { kind: 'position-unreadable', change: { [SHOW]: put('pieces: [plain-penny]', 'pieces: [{ piece: plain-penny, at: top left }]') }, says: 'Write 120 80 mm.' },
  { kind: 'value-wrong', change: { [SHOW]: put('[plain-penny]', '[]') }, says: 'A group shows at least one piece.' },
  { kind: 'name-unknown', change: { [SHOW]: fact('sets: [plain-sett]') }, line: 2, says: 'Write plain-set.' },
  { kind: 'work-unknown', change: { [SHOW]: fact('further-reading: [nroth]') }, line: 2, says: 'nroth.yaml for this book' },
  { kind: 'name-long', change: { [`rulers/${'a'.repeat(81)}.yaml`]: 'name: X\nrealm: Y\nreigns: [{ from: 1000, to: 1001 }]' }, says: 'has 81 letters' },
  { kind: 'name-reserved', change: { 'pieces/constructor/piece.md': '---\nnumber: "77"\ntitle: X\nkind: coin\n---\n' }, says: 'Write "constructor-1"' },
  { kind: 'name-reserved', change: { 'rulers/aux.yaml': 'name: X\nrealm: Y\nreigns: [{ from: 1000, to: 1001 }]' }, says: 'Write "aux-1"' },
  { kind: 'front-matter-open', change: { [PENNY]: (text: string) => text.replace(/\n---\n/, '\n—-\n') }, says: 'Write --- alone on this line' },
  { kind: 'curly-quotes', change: { [PENNY]: (text: string) => text.replace(/^title: .*$/m, 'title: “A plain penny”') }, line: 3, says: 'Write straight ones' },
  { kind: 'control-character', change: { [PENNY]: fact('issuer: a\u009b2Jb') }, line: 2, says: 'Type the line again' },
  { kind: 'image-in-story', change: { [PENNY]: (text) => `${text}\n![the mint](https://example.org/mint.jpg)` }, says: 'write a plain link' },
  { kind: 'private-misspelt', change: { 'private/Ledger.CSV': 'piece,cost\n' }, says: 'Name it ledger.csv.' },
  { kind: 'private-misspelt', change: { 'private/ledgr.xlsx': null, 'private/ledger.xlsx': '\u0000' }, says: 'saved as CSV from your spreadsheet' },
  { kind: 'column-unknown', change: { [LEDGER]: put('seller', 'sellar') }, line: 1, says: 'Write seller.' },
  { kind: 'row-names-nothing', change: { [LEDGER]: put('\nplain-penny', '\nplain-peny') }, line: 2, says: 'Write plain-penny.' },
  { kind: 'cell-unreadable', change: { [GUIDE]: put('120,180', '£120,180') }, line: 2, says: '120.50' },
  { kind: 'guide-place-unknown', change: { [GUIDE]: put('hidden-king', 'hidden-kin') }, line: 2, says: 'Write hidden-king.' },
  { kind: 'date-unreadable', change: { [GROAT]: put('c. 1290', 'one fine day') }, line: 9, says: 'one fine day' },
]; // prettier-ignore

/** Problems that another test provokes, because they need a disk, a photograph, git or a built site. */
const ELSEWHERE: readonly ProblemKind[] = [
  'cabinet-missing', 'picture-unreadable', 'picture-too-small', 'picture-broken', 'picture-too-large', 'crop-outside', 'private-tracked',
  'private-not-ignored', 'private-away', 'file-linked',
  'leak-private', 'leak-unpublished', 'leak-unlisted', 'leak-keeper', 'leak-path', 'leak-in-picture', 'leak-picture-unread', 'leak-unknown-file', 'leak-remote', 'leak-policy',
]; // prettier-ignore

describe('a slip of the pen', () => {
  test.for(ROWS)('$kind is said with what to write instead ($says)', async ({ kind, change, line, says }) => {
    const folder = changed(await markedCabinet(), change);
    const files = folder.files.map((held) => (held.text === '\u0000' ? { ...held, text: null } : held));
    const all = problemsOf({ ...folder, files });
    // No sentence uses a programmer's words.
    for (const problem of all)
      expect(problem.says).not.toMatch(/\b(invalid|unexpected|null|undefined|schema|object|string|NaN)\b/i);
    const found = all.filter((problem) => problem.kind === kind);
    expect(found.map((problem) => problem.says).join('\n')).toContain(says);
    if (line !== undefined) expect(found[0]?.line).toBe(line);
  });

  test('every kind of problem in the table is provoked by a test', () => {
    const provoked = new Set<string>([...ROWS.map(({ kind }) => kind), ...ELSEWHERE]);
    expect(Object.keys(PROBLEMS).filter((kind) => !provoked.has(kind))).toEqual([]);
  });
});

test('the marked cabinet as it stands has no problem', async () => {
  expect(problemsOf(await markedCabinet())).toEqual([]);
});

test('a slip hides no other slip of the same file', async () => {
  const folder = changed(await markedCabinet(), {
    [PENNY]: (text) =>
      text
        .replace('axis: 6h', 'axis: 13h')
        .replace('ruler: plain-king', 'ruler: plane-king')
        .replace('[plain-book 12]', '[plane-book 12]'),
  });
  expect(problemsOf(folder).map(({ kind }) => kind)).toEqual(['name-unknown', 'work-unknown', 'axis-unreadable']);
});

test('all problems of all files come in one run, in file order', async () => {
  const folder = changed(await markedCabinet(), {
    [PENNY]: (text) => text.replace('axis: 6h', 'axis: 13h').replace('weight:', 'wieght:'),
    [MEDAL]: put('kind: medal', 'kind: meddle'),
    [ERAS]: put('from: 1286', 'from: 1280'),
  });
  const found = problemsOf(folder);
  expect(found.map(({ file, field }) => `${file} ${field ?? ''}`)).toEqual([
    `${ERAS} periods.1.from`,
    `${MEDAL} kind`,
    `${PENNY} wieght`,
    `${PENNY} axis`,
  ]);
});
