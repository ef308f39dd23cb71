import { mkdirSync, readdirSync, writeFileSync, cpSync } from 'node:fs';
import { join } from 'node:path';

/** What a large cabinet is made of besides its pieces. */
export type LargeCabinet = {
  readonly pieces: number;
  /** Whether each piece has two photographs. The bytes of one are given once. */
  readonly photograph?: Uint8Array;
  /** Sets of one piece a ruler, so many of them. */
  readonly sets?: number;
  /** Types of one series, of which each piece is one; a class for every twenty. */
  readonly types?: number;
};

const WORDS =
  'crowned facing bust left right long short cross pellets angles castle ship lion eagle shield wreath standing seated king bishop rose crescent star sceptre sword globe horse rider anchor harp thistle portcullis sun moon lily annulet quatrefoil trefoil'.split(' '); // prettier-ignore
const GRADES = ['VF', 'EF', 'F', 'GVF', 'NEF', 'Fine', 'VG', 'Fair'];
const METALS = ['silver', 'gold', 'copper', 'billon', 'bronze'];
const HOW = ['purchase', 'auction', 'gift', 'bequest'];

/** The same figures for the same place in the cabinet, on every machine. */
function chanceAt(at: number, salt: number): number {
  let state = (at * 2654435761 + salt * 40503 + 12345) >>> 0;
  state ^= state >>> 16;
  state = Math.imul(state, 0x7feb352d) >>> 0;
  state ^= state >>> 15;
  state = Math.imul(state, 0x846ca68b) >>> 0;
  return ((state ^ (state >>> 16)) >>> 0) / 2 ** 32;
}

/** Rulers who follow one another from the year 1000, seven years each. */
const RULERS = 120;
const REIGN = 7;
const MINTS = 80;
const id = (name: string, at: number): string => `${name}-${at}`;

/**
 * Writes a cabinet of so many invented pieces into a new folder, each other than the last: invented rulers, mints from Norfolk to
 * the Pacific, the denominations, eras and books of the demo, and a ledger of as many rows.
 */
export function writeLargeCabinet(
  folder: string,
  demo: string,
  { pieces, photograph, sets = 3, types = 0 }: LargeCabinet,
): void {
  const put = (file: string, text: string): void => {
    mkdirSync(join(folder, file, '..'), { recursive: true });
    writeFileSync(join(folder, file), text);
  };
  for (const list of ['denominations', 'eras', 'works'])
    cpSync(join(demo, list), join(folder, list), { recursive: true });
  const idsOf = (list: string): readonly string[] =>
    readdirSync(join(folder, list)).map((name) => name.replace(/\.yaml$/, ''));
  const lists = { denominations: idsOf('denominations').filter((one) => one !== 'penny-1797'), works: idsOf('works') };
  put(
    'cabinet.yaml',
    `title: Many
keeper: Nobody In Particular
address: https://example.org/many/
areas:
  - { name: Country 1, in: England }
  - { name: Country 2, in: Wales }
  - { name: England, in: Great Britain }
  - { name: Wales, in: Great Britain }
`,
  );
  for (let at = 0; at < RULERS; at += 1) {
    const from = 1000 + at * REIGN;
    put(
      `rulers/${id('ruler', at)}.yaml`,
      `name: Invented Ruler ${at}\nreigns: [{ from: ${from}, to: ${from + REIGN} }]\n`,
    );
  }
  for (let at = 0; at < MINTS; at += 1) {
    const north = (chanceAt(at, 90) * 60 - 5).toFixed(3);
    const east = (chanceAt(at, 91) * 120 - 8).toFixed(3);
    put(
      `mints/${id('mint', at)}.yaml`,
      `name: Inventedtown ${at}\narea: Region ${at % 9}, Country ${at % 13}\ncoordinates: ${north}, ${east}\nnames: [{ name: Oldname ${at}, from: 1000, to: 1500 }]\n`,
    );
  }
  for (let at = 0; at < sets; at += 1)
    put(`sets/${id('set', at)}.yaml`, `title: One of each ruler, Inventedtown ${at}\none-per: ruler\nwhere: { mint: ${id('mint', at % MINTS)} }\n`); // prettier-ignore
  if (types > 0) for (const [name, text] of Object.entries(seriesOf(types, lists))) put(`types/many/${name}`, text);
  const ledger = ['piece,acquired,cost,value,storage,seller,certificate,notes'];
  for (let at = 0; at < pieces; at += 1) {
    put(`pieces/${id('piece', at)}/piece.md`, pieceText(at, lists, types));
    if (photograph !== undefined)
      for (const face of ['obverse', 'reverse']) writeFileSync(join(folder, 'pieces', id('piece', at), `${face}.jpg`), photograph); // prettier-ignore
    ledger.push(
      `${id('piece', at)},${1950 + (at % 70)}-0${1 + (at % 9)}-15,${10 + (at % 900)}.57 EUR,${30 + (at % 1900)}.13 EUR,"Chest ${at % 9}, drawer ${at % 30}, hole ${at % 60}",Dealer the Inventedth ${at % 400} & Daughters,UG-${100_000_007 + at * 7919},`,
    );
  }
  put('private/ledger.csv', `${ledger.join('\n')}\n`);
}

/** A series: its characters, its types with what each shows, and what two books call them. */
function seriesOf(types: number, { works }: Lists): Readonly<Record<string, string>> {
  const marks = Array.from({ length: 8 }, (_, at) => `mark-${at}`);
  const states = WORDS.slice(0, 6);
  const character = (mark: string): string =>
    `  - id: ${mark}\n    label: The ${mark}\n    on: obverse\n    states: [${states.map((state) => `{ id: ${state}, label: ${state} }`).join(', ')}]\n`;
  const rows = Array.from({ length: types }, (_, at) => {
    const own = marks.map((_mark, of) => states[Math.floor(chanceAt(at, 200 + of) * states.length)]);
    return `${id('type', at)},${id('class', Math.floor(at / 20))},variety,Variety ${at},${own.join(',')}`;
  });
  const classes = Array.from({ length: Math.ceil(types / 20) }, (_, at) => `${id('class', at)},,class,Class ${at},${marks.map(() => '').join(',')}`); // prettier-ignore
  const books = Array.from({ length: types }, (_, at) => `${id('type', at)},equal,${works[at % 2]} ${at + 1},,invented,2026-11`); // prettier-ignore
  return {
    'series.yaml': `title: Many types\nsource: [{ work: ${works[0]} }]\nlevels: [class, variety]\ncharacters:\n${marks.map(character).join('')}`,
    'types.csv': `id,broader,level,label,${marks.join(',')}\n${[...classes, ...rows].join('\n')}\n`,
    'concordance.csv': `type,relation,reference,sure,source,date\n${books.join('\n')}\n`,
  };
}

type Lists = Readonly<Record<'denominations' | 'works', readonly string[]>>;

function pieceText(at: number, lists: Lists, types: number): string {
  const pick = <T>(all: readonly T[], salt: number): T => all[Math.floor(chanceAt(at, salt) * all.length)] as T;
  const words = (salt: number, count: number): string =>
    Array.from({ length: count }, (_, one) => pick(WORDS, salt + one)).join(' ');
  const ruler = Math.floor(chanceAt(at, 5) * RULERS);
  const mint = Math.floor(chanceAt(at, 6) * MINTS);
  const year = 1000 + ruler * REIGN + Math.floor(chanceAt(at, 1) * (REIGN - 3));
  const weight = (0.4 + chanceAt(at, 2) * 30).toFixed(2);
  const size = (10 + chanceAt(at, 3) * 35).toFixed(1);
  return `---
number: "${String(at).padStart(5, '0')}"
title: ${pick(lists.denominations, 4)} of Invented Ruler ${ruler}, ${year}, ${words(60, 2)}
kind: coin${types === 0 ? '' : `\ntype: ${id('type', Math.floor(chanceAt(at, 70) * types))}`}
ruler: ${id('ruler', ruler)}
mint: ${id('mint', mint)}
denomination: ${pick(lists.denominations, 4)}
date: ${chanceAt(at, 7) < 0.5 ? year : `${year}/${year + 1 + Math.floor(chanceAt(at, 8) * 2)}`}
references: [${pick(lists.works, 9)} ${1 + Math.floor(chanceAt(at, 10) * 3000)}]
metal: ${pick(METALS, 11)}
weight: ${weight} g
diameter: ${size} mm
axis: ${1 + (at % 12)}h
grade: ${pick(GRADES, 12)}
grade-scale: uk
obverse: { legend: "${words(20, 3).toUpperCase()}", design: ${words(24, 4)} }
reverse: { legend: "${words(28, 3).toUpperCase()}", design: ${words(32, 5)} }
provenance:
  - { when: ${1900 + (at % 60)}, how: ${pick(HOW, 13)}, to: Invented Collector ${at % 90}, evidence: ticket }
  - { when: ${1965 + (at % 50)}, how: ${pick(HOW, 14)}, from: Invented Collector ${at % 90}, evidence: document }
tags: [${pick(WORDS, 15)}]
---

The ${words(40, 2)} is what one sees first; then the ${words(44, 3)}. Piece ${at} came with two others that had the ${words(48, 3)} of Inventedtown ${mint}.

It was compared with the ${words(52, 3)} and found to be ${words(56, 4)}.
`;
}
