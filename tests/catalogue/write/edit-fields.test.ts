import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitFrontMatter } from '../../../src/catalogue/front-matter.ts';
import { editFields, editStory } from '../../../src/catalogue/write/edit-fields.ts';
import { PIECE_ORDER } from '../../../src/catalogue/write/write-piece.ts';
import type { Written } from '../../../src/catalogue/yaml.ts';
import { readYaml } from '../../../src/catalogue/yaml.ts';
import { texts } from './texts.ts';
import { tries } from '../../tries.ts';

/** A file that a hand has been in: comments, blank lines, its own order, quotation marks, a text of several lines. */
const BY_HAND = `---
# from the green book
number: "0123"   # as on the ticket
title:   Penny of Edward I, York

weight: 1.38 g # on my own scales
kind: coin
mint: 'york'
problem: >-
  bent, and
  straightened
obverse: { legend: "+EDW R", design: Bust }  # worn
reverse:
  # read twice
  legend: "CIVI TAS"
  design: Cross   # long
provenance:
  - { when: 2011, how: purchase }   # Malton
tags: [a, b]

# the end
---

The story.
`;

const edit = (text: string, path: string, value: Written | null): string => {
  const edited = editFields(text, [{ path: path.split('.'), value }], PIECE_ORDER);
  if (!edited.ok) throw new Error(edited.problem);
  return edited.value;
};
const factsOf = (text: string): Written | null => {
  const read = readYaml(splitFrontMatter(text)?.facts ?? '');
  return read.ok ? read.value : null;
};

describe('One field changed, and nothing else', () => {
  const changes: readonly [path: string, value: Written | null, was: string, becomes: string][] = [
    ['weight', '1.39 g', 'weight: 1.38 g #', 'weight: 1.39 g #'],
    ['number', '0124', '"0123"   #', '"0124"   #'],
    ['title', 'Penny: York', 'title:   Penny of Edward I, York', 'title: "Penny: York"'],
    ['mint', 'london', "mint: 'york'", 'mint: london'],
    ['problem', 'bent', 'problem: >-\n  bent, and\n  straightened\n', 'problem: bent\n'],
    ['obverse.legend', '+EDW REX', '"+EDW R"', '"+EDW REX"'],
    ['obverse.design', 'Bust, crowned', 'design: Bust }', 'design: "Bust, crowned" }'],
    ['reverse.design', 'Long cross', 'design: Cross   #', 'design: Long cross   #'],
    ['tags', ['c'], '[a, b]', '[c]'],
    ['metal', 'silver', 'weight: 1.38 g', 'metal: silver\nweight: 1.38 g'],
    ['obverse.reading', 'Edwardus', 'design: Bust }', 'design: Bust, reading: Edwardus }'],
    ['reverse.reading', 'Civitas', 'Cross   # long\n', 'Cross   # long\n  reading: Civitas\n'],
    ['edge', { legend: 'A' }, 'design: Cross   # long\n', 'design: Cross   # long\nedge: { legend: "A" }\n'],
    ['weight', null, 'weight: 1.38 g # on my own scales\n', ''],
    ['obverse.design', null, ', design: Bust }', ' }'],
    ['obverse.legend', null, 'legend: "+EDW R", ', ''],
    ['reverse.legend', null, '  legend: "CIVI TAS"\n', ''],
    ['provenance', null, 'provenance:\n  - { when: 2011, how: purchase }   # Malton\n', ''],
    ['problem', null, 'problem: >-\n  bent, and\n  straightened\n', ''],
  ];
  test.for(changes)('%s becomes %j', ([path, value, was, becomes]) => {
    const where = path === 'metal' ? 'kind: coin\n' : null;
    if (where === null) expect(edit(BY_HAND, path, value)).toBe(BY_HAND.replace(was, becomes));
    else expect(edit(BY_HAND, path, value)).toBe(BY_HAND.replace("mint: 'york'\n", "mint: 'york'\nmetal: silver\n"));
  });
});

test('The whole list of a provenance is written anew where it stood', () => {
  const links = [
    { when: '1934', how: 'auction' },
    { when: '2011', how: 'purchase' },
  ];
  expect(factsOf(edit(BY_HAND, 'provenance', links))).toMatchObject({ provenance: links });
  expect(edit(BY_HAND, 'provenance', links)).toContain('\ntags: [a, b]\n\n# the end\n---\n\nThe story.\n');
});

test('The first field of a file that holds comments alone comes below them', () => {
  expect(editFields('# names\n', [{ path: ['mints', 'york'], value: ['York', 'Yorke'] }], [])).toMatchObject({
    value: '# names\nmints:\n  york: [York, Yorke]\n',
  });
});

test('A field in a form that only a person can change is told of, and the file left', () => {
  const text = '---\ntitle: *twice\n---\n';
  expect(editFields(text, [{ path: ['title'], value: 'A' }], PIECE_ORDER)).toMatchObject({ ok: false });
});

/** Any demo piece with a comment here and there, in either kind of line end. */
const FILES = readdirSync('content/pieces').map((id) => readFileSync(`content/pieces/${id}/piece.md`, 'utf8'));
const files = fc.tuple(fc.constantFrom(BY_HAND, ...FILES), fc.nat(30), fc.boolean()).map(([text, at, isWindows]) => {
  const lines = text.split('\n');
  const fields = lines.flatMap((one, index) => (/^[a-z-]+:/.test(one) ? [index] : []));
  const line = fields[at % fields.length] ?? 1;
  const commented = [...lines.slice(0, line), '# a comment', '', ...lines.slice(line)].join('\n');
  return commented.replaceAll('\n', isWindows ? '\r\n' : '\n');
});
const changes = fc.tuple(
  fc.constantFrom('number', 'title', 'kind', 'weight', 'metal', 'problem', 'obverse.legend', 'reverse.design', 'edge.reading', 'as-written.axis', 'tags'),
  fc.oneof(texts, fc.constant(null)),
); // prettier-ignore

test('Whatever is changed, it reads as changed, and every line that held something else is there as it was', () => {
  fc.assert(
    fc.property(files, changes, (text, [path, value]) => {
      const edited = edit(text, path, path === 'tags' && value !== null ? [value] : value);
      const [top = '', below] = path.split('.');
      const kept = (one: string): Record<string, Written> => {
        const fields = Object.entries(factsOf(one) as Record<string, Written>);
        return Object.fromEntries(fields.filter(([field]) => field !== top));
      };
      expect(kept(edited)).toEqual(kept(text));
      if (text.includes('\r\n')) expect(edited.replaceAll('\r\n', '')).not.toContain('\n');
      const now = (factsOf(edited) as Record<string, Written>)[top];
      const read = below === undefined ? now : (now as Record<string, Written> | undefined)?.[below];
      expect(read ?? null).toEqual(path === 'tags' && value !== null ? [value] : value);
      // The bytes before the first and after the last change are those of the file.
      const field = new RegExp(`^${top}:`, 'm');
      const at = field.exec(text)?.index ?? -1;
      if (at !== -1) expect(edited.slice(0, at)).toBe(text.slice(0, at));
      const lines = (one: string): string[] =>
        one.split('\n').filter((line) => !/^\s|^$/.test(line) && !field.test(line));
      if (at !== -1) expect(lines(edited)).toEqual(lines(text));
      else expect(lines(text).every((line) => edited.includes(line))).toBe(true);
    }),
    { numRuns: tries(1000) },
  );
});

test('There and back: a change taken back leaves the file as it was, byte for byte', () => {
  fc.assert(
    fc.property(files, fc.constantFrom('metal', 'thickness', 'issuer', 'as-written'), texts, (text, field, value) => {
      const had = (factsOf(text) as Record<string, Written>)[field];
      fc.pre(had === undefined);
      expect(edit(edit(text, field, value), field, null)).toBe(text);
    }),
  );
});

test('A story is set anew below the same facts', () => {
  expect(editStory(BY_HAND, 'Another.\n\nMore.')).toBe(BY_HAND.replace('The story.', 'Another.\n\nMore.'));
  expect(editStory('---\na: b\n---', 'Told.')).toBe('---\na: b\n---\n\nTold.\n');
  expect(editStory('---\r\na: b\r\n---\r\n', 'Told.')).toBe('---\r\na: b\r\n---\r\n\r\nTold.\r\n');
  expect(editStory(BY_HAND, '')).toBe(BY_HAND.replace('\nThe story.\n', ''));
});
