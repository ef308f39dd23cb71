import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitFrontMatter } from '../../../src/catalogue/front-matter.ts';
import { readForm } from '../../../src/catalogue/read-fields.ts';
import { pieceSchema } from '../../../src/catalogue/schema/piece.ts';
import { formatListFile, formatPieceFile } from '../../../src/catalogue/write/write-piece.ts';
import { formatYaml } from '../../../src/catalogue/write/write-yaml.ts';
import type { Written } from '../../../src/catalogue/yaml.ts';
import { readYaml } from '../../../src/catalogue/yaml.ts';
import { texts } from './texts.ts';
import { tries } from '../../tries.ts';

const facts: fc.Arbitrary<Written> = fc.letrec<{ one: Written }>((tie) => ({
  one: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    texts,
    fc.array(tie('one'), { maxLength: 4 }),
    fc.dictionary(fc.oneof(fc.constantFrom('legend', 'number', 'design', 'a b', 'x:'), texts), tie('one'), {
      maxKeys: 4,
    }),
  ),
})).one;

test('Whatever facts are written, the same facts are read', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.stringMatching(/^[a-z]{1,9}$/), facts, { minKeys: 1, maxKeys: 6 }), (fields) => {
      const read = readYaml(formatYaml(fields));
      expect(read).toEqual({ ok: true, value: { ...fields } });
    }),
    { numRuns: tries(1000) },
  );
});

test('Whatever is in a piece file, facts and story come apart again', () => {
  fc.assert(
    fc.property(texts, texts, texts, (title, number, story) => {
      const halves = splitFrontMatter(formatPieceFile({ title, number }, story));
      expect(readYaml(halves?.facts ?? '')).toEqual({ ok: true, value: { title, number } });
      expect(halves?.story).toBe(story.replace(/\r\n?/g, '\n').trim());
    }),
  );
});

describe('Every piece and list file of the demo, written anew, says the same', () => {
  test.for(readdirSync('content/pieces'))('%s', (id) => {
    const halves = splitFrontMatter(readFileSync(`content/pieces/${id}/piece.md`, 'utf8'));
    const read = readYaml(halves?.facts ?? '');
    const fields = read.ok ? (read.value as Record<string, Written>) : {};
    const again = splitFrontMatter(formatPieceFile(fields, halves?.story ?? ''));
    expect(readForm(pieceSchema(), again?.facts ?? '', id)).toEqual(readForm(pieceSchema(), halves?.facts ?? '', id));
    expect(again?.story).toBe(halves?.story);
  });
  test.for(['rulers', 'mints', 'denominations', 'works'] as const)('%s', (kind) => {
    for (const file of readdirSync(`content/${kind}`)) {
      const read = readYaml(readFileSync(`content/${kind}/${file}`, 'utf8'));
      if (read.ok) expect(readYaml(formatListFile(kind, read.value as Record<string, Written>))).toEqual(read);
    }
  });
});

test('A piece file is as a person would write it', () => {
  const story =
    'Bought at the fair in Malton from a man who had three of them in a tobacco tin and would not say where the other two had gone.';
  expect(
    formatPieceFile(
      {
        weight: '1.38 g',
        title: 'Penny of Edward I, York',
        number: '0123',
        date: '1279/1281',
        kind: 'coin',
        ruler: 'edward-i',
        makers: [{ name: 'Oban', role: 'moneyer' }],
        references: ['north 1018', 'withers 23a'],
        obverse: { legend: "+EDW R' ANGL' DNS hYB'", design: 'Crowned facing bust' },
        reverse: {
          legend: 'CIVI TAS EBO RACI',
          design: 'Long cross, three pellets in each angle, and a quatrefoil in the middle of the cross',
        },
        provenance: [
          { when: '1934', how: 'auction', says: 'lot 212, with others' },
          { when: '2011', how: 'purchase' },
        ],
        'as-written': { weight: 'about 1,4?', axis: '6: 30' },
        problem:
          "a crack from the edge to the king's eye: it runs on through the legend, and was filled with wax at some time before it was sold",
      },
      story,
    ),
  ).toBe(`---
number: "0123"
title: Penny of Edward I, York
kind: coin
ruler: edward-i
makers: [{ name: Oban, role: moneyer }]
date: 1279/1281
references: [north 1018, withers 23a]
weight: 1.38 g
problem: >-
  a crack from the edge to the king's eye: it runs on through the legend, and was filled with wax at some time before it
  was sold
obverse: { legend: "+EDW R' ANGL' DNS hYB'", design: Crowned facing bust }
reverse:
  legend: "CIVI TAS EBO RACI"
  design: Long cross, three pellets in each angle, and a quatrefoil in the middle of the cross
provenance:
  - { when: 1934, how: auction, says: "lot 212, with others" }
  - { when: 2011, how: purchase }
as-written: { weight: "about 1,4?", axis: "6: 30" }
---

${story}
`);
});
