import { appendFile, cp, mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';

/** What a change is made in: a cabinet, the project that builds it, and chance. */
export type Place = { readonly cabinet: string; readonly project: string; readonly chance: () => number };

/** The same figures from the same beginning on every machine. Source: the mulberry32 generator, public domain. */
export function chanceFrom(beginning: number): () => number {
  let state = beginning >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function pick<Thing>(all: readonly Thing[], chance: () => number): Thing {
  const thing = all[Math.floor(chance() * all.length)];
  if (thing === undefined) throw new Error('There is nothing to pick from.');
  return thing;
}

async function rewrite(file: string, change: (text: string) => string): Promise<void> {
  const text = await readFile(file, 'utf8');
  const changed = change(text);
  if (changed === text) throw new Error(`${file} stayed as it was.`);
  await writeFile(file, changed);
}

/** Pieces that were added and that no exhibit names, by their folders. */
async function pieces(cabinet: string): Promise<readonly string[]> {
  return (await readdir(join(cabinet, 'pieces'))).filter((id) => id.startsWith('extra-')).sort();
}

async function changePiece({ cabinet, chance }: Place, change: (text: string) => string): Promise<void> {
  const all = await pieces(cabinet);
  if (all.length === 0) return;
  await rewrite(join(cabinet, 'pieces', pick(all, chance), 'piece.md'), change);
}

/** A piece like many, with facts that chance gives it; some share a die, a number of a book or a date. */
export async function addPiece({ cabinet, chance }: Place): Promise<void> {
  const number = 100 + Math.floor(chance() * 900_000);
  const folder = join(cabinet, 'pieces', `extra-${number}`);
  await mkdir(folder, { recursive: true });
  await writeFile(
    join(folder, 'piece.md'),
    `---
number: "${number}"
title: Penny of lot ${number}
kind: coin
publish: yes
ruler: ${pick(['plain-king', 'plain-king', 'hidden-king'], chance)}
mint: plain-town
denomination: penny
date: ${1272 + Math.floor(chance() * 90)}
references: [plain-book ${1 + Math.floor(chance() * 9)}]
dies: { obverse: A${Math.floor(chance() * 4)} }
metal: ${pick(['silver', 'billon', 'gold'], chance)}
weight: ${(1 + chance() / 2).toFixed(2)} g
grade: ${pick(['VF', 'F', 'EF'], chance)}
grade-scale: uk
tags: [${pick(['first', 'second'], chance)}]
---
Told of lot ${number}.
`,
  );
}

const photograph = async (chance: () => number): Promise<Buffer> => {
  const colour = `hsl(${Math.floor(chance() * 360)}, 40%, 50%)`;
  const disc = `<svg width="300" height="300"><circle cx="150" cy="150" r="110" fill="${colour}"/></svg>`;
  return sharp({ create: { width: 300, height: 300, channels: 3, background: '#8f9294' } })
    .composite([{ input: Buffer.from(disc) }])
    .jpeg()
    .toBuffer();
};

/** Every kind of change of a cabinet, each a keeper's own; those of `everything` change every page. */
export const CHANGES: Readonly<Record<string, (place: Place) => Promise<void>>> = {
  'an edit': (place) => changePiece(place, (text) => `${text}\nSeen again, ${place.chance().toFixed(9)}.\n`),
  'another weight': (place) =>
    changePiece(place, (text) => text.replace(/weight: .*/, `weight: ${(1 + place.chance()).toFixed(6)} g`)),
  'another title': (place) =>
    changePiece(place, (text) => text.replace(/title: .*/, `title: Penny once called ${place.chance().toFixed(9)}`)),
  'a new piece': addPiece,
  'a deleted piece': async ({ cabinet, chance }) => {
    const all = await pieces(cabinet);
    if (all.length > 2) await rm(join(cabinet, 'pieces', pick(all, chance)), { recursive: true });
  },
  'a new id': async ({ cabinet, chance }) => {
    const old = pick(await pieces(cabinet), chance);
    const now = `extra-${100 + Math.floor(chance() * 900_000)}`;
    await cp(join(cabinet, 'pieces', old), join(cabinet, 'pieces', now), { recursive: true });
    await rm(join(cabinet, 'pieces', old), { recursive: true });
    await rewrite(join(cabinet, 'pieces', now, 'piece.md'), (text) =>
      text.replace(/^(?:formerly: .*\n)?kind:/m, `formerly: ${old}\nkind:`),
    );
  },
  'made private, unlisted or public': (place) =>
    changePiece(place, (text) => {
      const others = ['yes', 'unlisted', 'no'].filter((one) => !text.includes(`publish: ${one}\n`));
      return text.replace(/publish: .*/, `publish: ${pick(others, place.chance)}`);
    }),
  'a renamed ruler': ({ cabinet, chance }) =>
    rewrite(join(cabinet, 'rulers', pick(['plain-king', 'hidden-king'], chance) + '.yaml'), (text) =>
      text.replace(/^name: .*/m, `name: King ${chance().toFixed(9)}`),
    ),
  'a new ruler': ({ cabinet, chance }) =>
    writeFile(
      join(cabinet, 'rulers', `king-${Math.floor(chance() * 1e6)}.yaml`),
      'name: Another king\nrealm: Plainland\nreigns: [{ from: 1400, to: 1410 }]\n',
    ),
  'a moved mint': ({ cabinet, chance }) =>
    rewrite(join(cabinet, 'mints', 'plain-town.yaml'), (text) =>
      text.replace(/coordinates: .*/, `coordinates: "53.${String(Math.floor(chance() * 1e6))}, -1.08"`),
    ),
  'another standard': ({ cabinet, chance }) =>
    rewrite(join(cabinet, 'denominations', 'penny.yaml'), (text) =>
      text.replace(/weight: [\d.]+ g/, `weight: ${(1.2 + chance() / 2).toFixed(6)} g`),
    ),
  'another rule of a set': ({ cabinet, chance }) =>
    rewrite(join(cabinet, 'sets', 'plain-set.yaml'), (text) =>
      text
        .replace(/where: .*/, `where: { realm: Plainland, date: ${1272 + Math.floor(chance() * 20)}/1377 }`)
        .concat(`# ${chance()}\n`),
    ),
  'another text of an exhibit': ({ cabinet, chance }) =>
    rewrite(join(cabinet, 'exhibits', 'small-show', 'exhibit.md'), (text) =>
      text.replace(/text: .*/, `text: There is one, ${chance().toFixed(9)}.`),
    ),
  'another name of a book': ({ cabinet, chance }) =>
    rewrite(join(cabinet, 'works', 'plain-book.yaml'), (text) =>
      text.replace(/short: .*/, `short: Writer ${chance().toFixed(9)}`),
    ),
  'another period': ({ cabinet, chance }) =>
    rewrite(join(cabinet, 'eras', 'plain-eras.yaml'), (text) =>
      text.replace(/name: Early[^,]*/, `name: Early ${chance().toFixed(9)}`),
    ),
  'a photograph': async ({ cabinet, chance }) =>
    writeFile(join(cabinet, 'pieces', pick(await pieces(cabinet), chance), 'obverse.jpg'), await photograph(chance)),
  'a new private value': ({ cabinet, chance }) =>
    rewrite(join(cabinet, 'private', 'ledger.csv'), (text) =>
      text.replace(/MARK-STORAGE[^,]*/, `MARK-STORAGE ${chance().toFixed(9)}`),
    ),
};

/** Changes after which no page may be taken from the last site. */
export const EVERYTHING: Readonly<Record<string, (place: Place) => Promise<void>>> = {
  'cabinet.yaml': ({ cabinet, chance }) =>
    rewrite(join(cabinet, 'cabinet.yaml'), (text) =>
      text.replace(/title: .*/, `title: A cabinet ${chance().toFixed(9)}`),
    ),
  'the public address': ({ cabinet, chance }) =>
    rewrite(join(cabinet, 'cabinet.yaml'), (text) =>
      text.replace(/address: .*/, `address: https://example.org/at-${Math.floor(chance() * 1e6)}/`),
    ),
  'a template': ({ project, chance }) =>
    rewrite(join(project, 'src/site/components/Footer.astro'), (text) =>
      text.replace('<footer', `<footer data-a="${chance()}"`),
    ),
  'a style': ({ project, chance }) =>
    appendFile(
      join(project, 'src/site/styles/base.css'),
      `\n@layer base {\n  .never-${Math.floor(chance() * 1e6)} {\n    color: inherit;\n  }\n}\n`,
    ),
  'the program': ({ project, chance }) =>
    rewrite(join(project, 'src/site/words/piece.ts'), (text) =>
      text.replace("'Date and period", `'Date and period ${Math.floor(chance() * 1e6)}`),
    ),
  'the lock file': ({ project, chance }) =>
    appendFile(join(project, 'package-lock.json'), ' '.repeat(1 + Math.floor(chance() * 5))),
};
