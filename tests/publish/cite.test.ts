import { readFile } from 'node:fs/promises';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { bibTeX, cslJson } from '../../src/publish/cite.ts';
import type { Cited } from '../../src/publish/cite.ts';
import { citeWords } from '../../src/site/words/cite.ts';

/** It comes without types. */
async function readerOfReferences(): Promise<{
  readonly Cite: new (text: string) => { readonly data: readonly unknown[] };
}> {
  const names = ['@citation-js/plugin-bibtex', '@citation-js/core'];
  const [, core] = await Promise.all(names.map((name) => import(name) as Promise<unknown>));
  return core as Awaited<ReturnType<typeof readerOfReferences>>;
}

const PENNY: Cited = {
  key: 'york-penny-3b',
  title: 'Penny of Edward I, York, class 3b',
  number: '0123',
  keeper: 'Hester Layerthorpe',
  collection: 'Foss & Ouse Coin Circle: Struck in York',
  address: 'https://example.org/pieces/york-penny-3b/',
  changed: '2026-11-29',
  language: 'en',
};
const BARE: Cited = { ...PENNY, key: 'a-set', number: null, keeper: null, address: null, changed: null };
const HARD: Cited = {
  ...PENNY,
  title: 'Æthelred’s {50%} #1 & £5_$ \\ ~^ “x”',
  keeper: 'Foss {and} Ouse & Co.',
  language: 'de',
};

describe('CSL-JSON', async () => {
  // The schema of Citation Style Language, `csl-data.json` (github.com/citation-style-language/schema, 25 January 2023, MIT).
  const schema = JSON.parse(await readFile('tests/published/csl-data.json', 'utf8')) as object;
  const isValid = new Ajv({ strict: false }).compile(schema);
  const entries = (cited: Cited) => JSON.parse(cslJson(cited)) as Record<string, unknown>[];

  test.for([PENNY, BARE, HARD])('of $title is what the schema allows', (cited) => {
    expect(isValid(entries(cited)), JSON.stringify(isValid.errors)).toBe(true);
  });

  test.for([
    ['a type of our own', { type: 'coin' }],
    ['a field of our own', { weight: '1.38 g' }],
    ['a day as text', { issued: '2026-11-29T00:00:00?' }],
    ['an author as text', { author: 'Hester Layerthorpe' }],
  ] as const)('with %s would be refused', ([, change]) => {
    expect(isValid(entries(PENNY).map((entry) => ({ ...entry, ...change })))).toBe(false);
  });

  test('says who keeps what, where, and when it was last changed', () => {
    expect(entries(PENNY)).toEqual([
      {
        id: 'york-penny-3b',
        type: 'webpage',
        title: PENNY.title,
        author: [{ literal: 'Hester Layerthorpe' }],
        'container-title': PENNY.collection,
        number: '0123',
        issued: { 'date-parts': [[2026, 11, 29]] },
        URL: PENNY.address,
        language: 'en',
      },
    ]);
  });
});

describe('BibTeX', async () => {
  type Read = {
    readonly title?: string;
    readonly author?: readonly { readonly literal?: string; readonly family?: string }[];
    readonly URL?: string;
    readonly note?: string;
    readonly issued?: { readonly 'date-parts': readonly (readonly number[])[] };
  };
  // Read by another program for references (citation.js, its reader of BibTeX).
  const { Cite } = await readerOfReferences();
  const read = (cited: Cited): Read => new Cite(bibTeX(cited)).data[0] as Read;
  const nameOf = ({ author }: Read): string | undefined => author?.[0]?.literal ?? author?.[0]?.family;

  test('is read as it was meant', () => {
    expect(read(PENNY)).toMatchObject({
      title: PENNY.title,
      URL: PENNY.address,
      note: 'No. 0123, last changed 2026-11-29',
    });
    expect(nameOf(read(PENNY))).toBe('Hester Layerthorpe');
    expect(read(PENNY).issued?.['date-parts'][0]?.slice(0, 2)).toEqual([2026, 11]);
  });

  test('keeps every sign of a title and a name that TeX would take for its own', () => {
    expect(read(HARD).title).toBe(HARD.title);
    expect(nameOf(read(HARD))).toBe(HARD.keeper);
  });

  // A brace by its name, where a reader would count it otherwise: BibTeXing (1988), §2.
  test('names the braces of a title, and what it is in, and the month by its three letters', () => {
    const said = bibTeX({ ...PENNY, title: 'a { b } c', changed: '2026-12-01' });
    expect(said).toContain('title = {{a \\textbraceleft{} b \\textbraceright{} c}}');
    expect(said).toContain('howpublished = {Foss \\& Ouse Coin Circle: Struck in York}');
    expect(said).toContain('month = dec');
  });

  test('leaves out what is not known', () => {
    expect(bibTeX(BARE)).not.toMatch(/author|note|year|month|url/);
    expect(read(BARE).title).toBe(BARE.title);
  });
});

test('in words it is one sentence, with the day of the last change', () => {
  expect(citeWords.plain(PENNY)).toBe(
    'Hester Layerthorpe, “Penny of Edward I, York, class 3b”, no. 0123, in Foss & Ouse Coin Circle: Struck in York, last changed 29 November 2026, https://example.org/pieces/york-penny-3b/',
  );
  expect(citeWords.plain(BARE)).toBe(
    '“Penny of Edward I, York, class 3b”, in Foss & Ouse Coin Circle: Struck in York.',
  );
});
