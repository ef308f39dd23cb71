import { describe, expect, test } from 'vitest';
import { NO_ADDRESSES } from '../../../src/catalogue/addresses.ts';
import { handOver } from '../../../src/catalogue/handed-over.ts';
import { readFolder } from '../../../src/catalogue/files.ts';
import { readCabinet } from '../../../src/catalogue/read-cabinet.ts';
import { cutAtWords } from '../../../src/site/find/reason.ts';
import { parseState } from '../../../src/site/find/state.ts';
import { findRecords } from '../../../src/site/models/find/record-of.ts';
import { wholeCabinet } from '../whole-cabinet.ts';
import { finderAsSent } from './sent.ts';

// The demo cabinet, as a visitor finds it. What is expected is in the pieces' own files: dates, weights, references.
const folder = (await readFolder('content')) ?? { at: 'content', files: [] };
handOver({ records: readCabinet(folder).records, photographs: '', hasAddress: true, addresses: NO_ADDRESSES });
const records = await findRecords(await wholeCabinet('content'));
const find = finderAsSent(records);

function found(words: string): { readonly exact: readonly string[]; readonly similar: readonly string[] } {
  const all = find(parseState(`?words=${encodeURIComponent(words)}`)).first(records.length);
  const ids = (isSimilar: boolean): readonly string[] =>
    all.filter(({ similar }) => (similar !== null) === isSimilar).map(({ record }) => record.id);
  return { exact: ids(false), similar: ids(true) };
}

type Row = { readonly asked: string; readonly holds: readonly string[]; readonly not?: readonly string[] };

describe('a date is an interval that the piece meets', () => {
  test.for<Row>([
    { asked: '1280', holds: ['york-penny-3b', 'york-archbishop-penny'], not: ['mary-groat', 'victoria-sovereign-1872'] },
    { asked: '1279-1281', holds: ['york-penny-3b'], not: ['york-penny-9b'] },
    { asked: '13th century', holds: ['york-penny-3b', 'henry-iii-long-cross-york'], not: ['stephen-york-penny'] },
    { asked: '12th century penny', holds: ['stephen-york-penny', 'henry-ii-tealby-penny'], not: ['york-penny-3b'] },
    { asked: 'AD 71', holds: ['vespasian-denarius'], not: ['hadrian-as'] },
    { asked: 'AD 120', holds: ['hadrian-as'], not: ['vespasian-denarius'] },
    { asked: 'AH 294', holds: ['samanid-dirham-cut'], not: ['ottoman-twenty-para'] },
    { asked: 'before 1100', holds: ['harold-ii-pax-penny', 'hadrian-as'], not: ['york-penny-3b', 'mary-groat'] },
    { asked: 'after 1800', holds: ['victoria-sovereign-1872', 'minster-medal-1829'], not: ['william-iii-sixpence'] },
    { asked: '1696 sixpence', holds: ['william-iii-sixpence', 'william-iii-sixpence-second'], not: ['william-iii-sixpence-cleaned'] },
    { asked: '1872', holds: ['victoria-sovereign-1872'], not: ['minster-medal-1829'] },
  ])('$asked', ({ asked, holds, not = [] }) => {
    const { exact } = found(asked);
    expect(exact).toEqual(expect.arrayContaining([...holds]));
    for (const id of not) expect(exact).not.toContain(id);
  });
}); // prettier-ignore

describe('a weight or a size is meant to its last figure', () => {
  test.for<Row>([
    { asked: '1.38 g', holds: ['york-penny-3b'], not: ['york-archbishop-penny', 'viking-cnut-penny'] },
    { asked: '1.3-1.4 g', holds: ['york-penny-3b', 'harold-ii-pax-penny', 'york-archbishop-penny'], not: ['mary-groat'] },
    { asked: '45 mm', holds: ['minster-medal-1829'], not: ['victoria-sovereign-1872'] },
    { asked: '22 mm', holds: ['victoria-sovereign-1872', 'jeton-rose-orb'], not: ['york-penny-3b'] },
    { asked: '7.97 g', holds: ['victoria-sovereign-1872'], not: ['meiji-sen'] },
  ])('$asked', ({ asked, holds, not = [] }) => {
    const { exact } = found(asked);
    expect(exact).toEqual(expect.arrayContaining([...holds]));
    for (const id of not) expect(exact).not.toContain(id);
  });
}); // prettier-ignore

describe('a reference is found in every usual form, and a figure is never another', () => {
  test.for<{ readonly asked: string; readonly first: readonly string[] }>([
    { asked: 'North 1017', first: ['york-penny-3b'] },
    { asked: 'N 1017', first: ['york-penny-3b'] },
    { asked: 'N1017', first: ['york-penny-3b'] },
    { asked: 'north 836', first: ['harold-ii-pax-penny'] },
    { asked: 'N1799', first: ['henry-viii-york-groat'] },
  ])('$asked finds $first', ({ asked, first }) => {
    expect(found(asked).exact.slice(0, first.length)).toEqual(first);
  });

  test.for(['North 1010', 'N1071', '9999', 'North 30.16'])('%s, which no piece has, finds nothing like it', (asked) => {
    expect(found(asked)).toEqual({ exact: [], similar: [] });
  });
});

describe('words as people type them', () => {
  test.for<Row>([
    { asked: 'groats', holds: ['mary-groat', 'henry-viii-york-groat'], not: ['york-penny-3b'] },
    { asked: 'sixpences', holds: ['william-iii-sixpence', 'philip-mary-sixpence'], not: ['mary-groat'] },
    { asked: 'halfgroat', holds: ['sold-henry-vi-half-groat'] },
    { asked: 'denarii', holds: ['vespasian-denarius', 'severus-denarius'], not: ['hadrian-as'] },
    { asked: 'edward 1 penny', holds: ['york-penny-3b'], not: ['mary-groat'] },
    { asked: 'Jorvik', holds: ['viking-cnut-penny'] },
    { asked: '"york" groat', holds: ['henry-viii-york-groat'] },
  ])('$asked', ({ asked, holds, not = [] }) => {
    const { exact } = found(asked);
    expect(exact).toEqual(expect.arrayContaining([...holds]));
    for (const id of not) expect(exact).not.toContain(id);
  });

  test('a word spelled nearly so is distinguished from one that matches, and in quotation marks it is not sought', () => {
    expect(found('vespasain').exact).toEqual([]);
    expect(found('vespasain').similar).toContain('vespasian-denarius');
    expect(found('"vespasain"')).toEqual({ exact: [], similar: [] });
  });
});

// What is expected is in the pieces' own files.
describe('a result says why it is one', () => {
  const why = (words: string, id: string): unknown => {
    const one = find(parseState(`?words=${encodeURIComponent(words)}`)).first(records.length).find(({ record }) => record.id === id); // prettier-ignore
    return one && { marked: cutAtWords(one.record.title, one.by).flatMap(({ text, isMeant }) => (isMeant ? [text] : [])), reasons: one.reasons }; // prettier-ignore
  };

  test('by the words of its title, which are marked', () => {
    expect(why('york penny', 'york-penny-3b')).toEqual({ marked: ['Penny', 'York'], reasons: [] });
    expect(why('aethelstan', 'athelstan-york-penny')).toEqual({ marked: ['Æthelstan'], reasons: [] });
  });

  test('or by what of it holds the word', () => {
    expect(why('osaka', 'meiji-sen')).toEqual({ marked: [], reasons: [{ part: 'mint', words: ['osaka'] }] });
    expect(why('sheriff', 'meiji-sen')).toBeUndefined();
    expect(why('burdale', 'meiji-sen')).toBeUndefined();
    expect(why('penny eboraci', 'york-penny-3b')).toEqual({
      marked: ['Penny'],
      reasons: [{ part: 'legend', words: ['eboraci'] }],
    });
    expect(why('tickets', 'york-penny-3b')).toEqual({ marked: [], reasons: [{ part: 'story', words: ['tickets'] }] }); // prettier-ignore
  });
});
