import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDate } from '../../../src/core/dating/parse-date.ts';
import { orderLinks, passesDirectly, sameName } from '../../../src/core/provenance/provenance.ts';
import type { Link } from '../../../src/core/provenance/provenance.ts';

function link(how: string, when?: string): Link {
  if (when === undefined) return { how };
  const outcome = parseDate(when);
  return outcome.ok ? { how, when: outcome.value } : expect.fail(outcome.problem);
}

const hows = (links: readonly Link[]) => orderLinks(links).map(({ how }) => how);

describe('a chain is told oldest first (AAM, Guide to Provenance Research, 2001, ch. 1)', () => {
  test('by year, by day within a year, and a year before its days', () => {
    const links = [
      link('bought', '2011'),
      link('sold', '14 May 1934'),
      link('lent', '2 March 1934'),
      link('lot', '1934'),
    ];
    expect(hows(links)).toEqual(['lot', 'lent', 'sold', 'bought']);
  });

  test('a year before Christ before one after', () => {
    expect(hows([link('hoard', 'AD 14'), link('buried', '44 BC')])).toEqual(['buried', 'hoard']);
  });

  test('what has no date stays behind the link it was written after, and first if it was first', () => {
    const links = [link('found'), link('sold', '1934'), link('given'), link('lent', '1920')];
    expect(hows(links)).toEqual(['found', 'lent', 'sold', 'given']);
  });

  test('nothing is lost, and ordering again changes nothing, whatever the dates', () => {
    const year = fc.option(fc.integer({ min: 1000, max: 2020 }).map(String), { nil: undefined });
    fc.assert(
      fc.property(fc.array(year, { maxLength: 12 }), (years) => {
        const links = years.map((when, at) => link(String(at), when));
        const ordered = orderLinks(links);
        expect(new Set(ordered)).toEqual(new Set(links));
        expect(orderLinks(ordered)).toEqual(ordered);
        const dated = ordered.flatMap(({ when }) => (when === undefined ? [] : [when.earliest as number]));
        expect(dated).toEqual(dated.toSorted((a, b) => a - b));
      }),
    );
  });
});

describe('whether a piece passed directly', () => {
  test('by the names, whatever their capitals, stops and articles', () => {
    expect(sameName('The Club Fair', 'club fair')).toBe(true);
    expect(sameName('A. N. Other', 'A N Other')).toBe(true);
    expect(sameName('A. Collector', 'B. Collector')).toBe(false);
    expect(sameName(undefined, undefined)).toBe(false);
  });

  test('unless the keeper says otherwise', () => {
    expect(passesDirectly({ to: 'A. Collector' }, { from: 'A. Collector' })).toBe(true);
    expect(passesDirectly({ to: 'A. Collector', direct: false }, { from: 'A. Collector' })).toBe(false);
    expect(passesDirectly({ to: 'A. Collector', direct: true }, { from: 'B. Collector' })).toBe(true);
    expect(passesDirectly({}, {})).toBe(false);
  });
});
