import { beforeAll, describe, expect, test } from 'vitest';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { shownExhibit } from '../../../../src/site/models/exhibit/shown-exhibit.ts';
import { withoutName, withholding } from '../../../../src/site/models/paper/anonymous.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

const cleared = (text: string, keeper = 'Hester Mary Layerthorpe', ordinary: readonly string[] = []) =>
  withholding(keeper, new Set(ordinary)).clear(text);

describe('a name withheld', () => {
  // How a name is written in labels, lists of books and thanks. Common practice.
  test.for([
    ['Shown by Hester Mary Layerthorpe.', 'Shown by the exhibitor.'],
    ['By HESTER\nLAYERTHORPE, York', 'By the exhibitor, York'],
    ['H. M. Layerthorpe, Notes', 'The exhibitor, Notes'],
    ['H.M. Layerthorpe', 'The exhibitor'],
    ['Layerthorpe, H. M., Notes', 'The exhibitor, Notes'],
    ['Mrs Layerthorpe’s cabinet', 'The exhibitor’s cabinet'],
    ['bought for the Layerthorpe collection', 'bought for the exhibitor’s collection'],
    ['The Layerthorpe Collection', 'The exhibitor’s Collection'],
    ['Sold to Miss H. Layerthorpe; kept.', 'Sold to the exhibitor; kept.'],
    ['Found by Hester.', 'Found by the exhibitor.'],
    ['Drawn by H. M. L.', 'Drawn by the exhibitor'],
    ['https://layerthorpe.example/pieces/', 'https://the exhibitor.example/pieces/'],
    ['The Layerthorpes', 'The exhibitor'],
  ] as const)('%s', ([written, says]) => expect(cleared(written)).toBe(says));

  test.for(['Chester and Manchester', 'H VII', 'HENRICVS', 'e.g. a penny'])('leaves %s alone', (text) =>
    expect(cleared(text)).toBe(text),
  );

  test('a keeper named as a mint and a king may write of both', () => {
    const words = ['york', 'edward'];
    expect(cleared('Edward I struck at York.', 'Edward York', words)).toBe('Edward I struck at York.');
    expect(cleared('Edward York, of York; E. York', 'Edward York', words)).toBe(
      'The exhibitor, of York; the exhibitor',
    );
    expect(withholding('Edward York', new Set(words)).kept).toEqual(['Edward', 'York']);
  });
});

describe('an exhibit without its keeper', () => {
  let cabinet: Cabinet;
  beforeAll(async () => {
    cabinet = await wholeCabinet('content');
  });

  test('has no part of the name in any text it prints, and says where it stood', () => {
    const [first] = cabinet.lists.exhibits;
    if (first === undefined) expect.fail('The demo has no exhibit.');
    const { keeper } = cabinet.lists.cabinet;
    const whole = shownExhibit(cabinet, first);
    // The name in every text of the exhibit: none may be forgotten, whatever is added to it later.
    const marked = marking(whole, ` by ${keeper}`);
    const { shown, reports } = withoutName(marked, cabinet);
    for (const part of keeper.split(' ')) expect(JSON.stringify(withoutIds(shown))).not.toContain(part);
    expect(shown.keeper).toBeNull();
    const says = reports.join(' ');
    for (const place of [
      'the title',
      'the scope',
      'the statement',
      'the bibliography',
      'the acknowledgements',
      'the label of piece 32',
    ])
      expect(says).toContain(place);
    for (const part of keeper.split(' ')) expect(says).not.toContain(part);
  });

  // In a contest between clubs the name of a club is a name too. Common practice.
  test('is told what the title card still says, which may name a club', () => {
    const [first] = cabinet.lists.exhibits;
    if (first === undefined) expect.fail('The demo has no exhibit.');
    const says = withoutName(shownExhibit(cabinet, first), cabinet).reports.join(' ');
    expect(first.fields['title-card'][0]).toContain('Circle');
    for (const line of first.fields['title-card']) expect(says).toContain(`“${line}”`);
    const bare = { ...first, fields: { ...first.fields, 'title-card': [] } };
    expect(withoutName(shownExhibit(cabinet, bare), cabinet).reports.join(' ')).not.toContain('title card');
  });
});

/** Plain data with the same words after every text that is more than one word. */
function marking<T extends object>(from: T, more: string): T {
  const copy = structuredClone(from);
  const walk = (held: object): void => {
    for (const [key, value] of Object.entries(held) as readonly [string, unknown][])
      if (typeof value === 'string' && key !== 'id') Reflect.set(held, key, value.includes(' ') ? value + more : value);
      else if (typeof value === 'object' && value !== null) walk(value);
  };
  walk(copy);
  return copy;
}

function withoutIds(held: unknown): unknown {
  if (typeof held !== 'object' || held === null) return held;
  return Object.entries(held).map(([key, value]) => (key === 'id' ? '' : withoutIds(value)));
}
