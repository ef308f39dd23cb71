import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Dating } from '../../../src/core/dating/dating.ts';
import { parseDate } from '../../../src/core/dating/parse-date.ts';
import { analyseChain } from '../../../src/core/provenance/analyse-chain.ts';
import { formatChain } from '../../../src/core/provenance/format-chain.ts';
import type { Link } from '../../../src/core/provenance/provenance.ts';
import { EVIDENCE } from '../../../src/core/provenance/provenance.ts';
import { PRINTED_CHAINS } from '../../published/provenance-rules.ts';

function when(text: string): Dating {
  const outcome = parseDate(text);
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

test.for(PRINTED_CHAINS)('$rule ($source)', ({ links, printed }) => {
  expect(
    formatChain(links.map(({ year, ...link }) => (year === undefined ? link : { ...link, when: when(year) }))),
  ).toBe(printed);
});

describe('Documented before 14 November 1970 (UNESCO Convention, Paris)', () => {
  test.for([
    ['yes', [{ when: '1934', evidence: 'plate-match' }]],
    ['yes', [{ when: '1970-11-13', evidence: 'document' }]],
    ['no', [{ when: '1970-11-14', evidence: 'document' }]],
    ['not known', [{ when: '1970', evidence: 'document' }]],
    ['no', [{ when: '1995', evidence: 'document' }]],
    ['not known', [{ when: '1934', evidence: 'statement' }]],
    [
      'not known',
      [
        { when: '1934', evidence: 'inference' },
        { when: '1995', evidence: 'document' },
      ],
    ],
    ['not known', [{ when: '1934', evidence: 'document', possibly: true }]],
    ['not known', [{ when: '1960/1980', evidence: 'published' }]],
    ['not known', [{ evidence: 'ticket' }, { when: '1995', evidence: 'document' }]],
    ['not known', [{ when: '1934?', evidence: 'ticket' }]],
    ['no', [{ when: '1994', how: 'find', evidence: 'statement' }, { evidence: 'ticket' }]],
    // What is about proves nothing: about 1969 may be 1971.
    ['not known', [{ when: '1897~', evidence: 'ticket' }]],
    ['not known', [{ when: 'c. 1969', evidence: 'ticket' }]],
    ['not known', []],
  ] as const)('%s for %o', ([answer, links]) => {
    const chain: Link[] = links.map((link) => ('when' in link ? { ...link, when: when(link.when) } : link));
    expect(analyseChain(chain).before1970).toBe(answer);
  });
});

test('the earliest documented year is the year by which it is documented', () => {
  const chain: Link[] = [
    { when: when('1897'), evidence: 'statement' },
    { when: when('1911/1914'), evidence: 'published' },
    { when: when('1938'), evidence: 'plate-match' },
  ];
  expect(analyseChain(chain).earliestDocumented).toBe(1914);
  expect(analyseChain([]).earliestDocumented).toBeNull();
});

test('gaps are the breaks between owners, with the years on either side', () => {
  const chain: Link[] = [
    { when: when('1938'), from: 'Captain J. R. Hollinside', to: 'Miss Garrowby' },
    { when: when('1951'), from: 'miss garrowby', to: 'A. Thirkell' },
    { when: when('2008'), to: 'the keeper' },
  ];
  expect(analyseChain(chain).gaps).toEqual([{ after: 1, before: 2, from: 1951, to: 2008 }]);
  expect(analyseChain([{ ...chain[0], direct: false }, { ...chain[1] }]).gaps).toHaveLength(1);
});

test('links fall into the order of time, and one without a date stays behind the one before it', () => {
  const links: Link[] = [{ when: when('1974'), to: 'C' }, { to: 'D' }, { when: when('1934'), to: 'A' }, { to: 'B' }];
  expect(analyseChain(links).links.map(({ to }) => to)).toEqual(['A', 'B', 'C', 'D']);
});

const anyLink = fc.record(
  {
    when: fc.constantFrom('1934', '1970', '1969-12-31', '1995', 'c. 1900', '1950/..').map(when),
    from: fc.constantFrom('A', 'B', 'the keeper'),
    to: fc.constantFrom('A', 'B', 'the keeper'),
    how: fc.constantFrom('auction', 'gift', 'find'),
    evidence: fc.constantFrom(...EVIDENCE),
    possibly: fc.boolean(),
    direct: fc.boolean(),
    dealer: fc.boolean(),
  },
  { requiredKeys: [] },
);

test('any chain is analysed and printed: gaps and direct passages together are the joints, and "yes" always has its proof', () => {
  fc.assert(
    fc.property(fc.array(anyLink, { maxLength: 6 }), (links) => {
      const { gaps, before1970, earliestDocumented } = analyseChain(links);
      expect(gaps.length).toBeLessThan(Math.max(1, links.length));
      if (before1970 === 'yes') expect(earliestDocumented).toBeLessThanOrEqual(1970);
      if (earliestDocumented !== null && earliestDocumented < 1970) expect(before1970).toBe('yes');
      expect(formatChain(links)).not.toMatch(/undefined|;;|\.\.|; \.|^\s/);
    }),
  );
});

/*
 * A chain is written in fields, one for each thing a link says, so it has no text of its own to be read: there is a
 * `formatChain` and no parser, and there and back cannot be asked. What the print may not lose is asked instead.
 */
test('the printed chain keeps every owner, in order, and tells each gap from each direct passage', () => {
  const link = fc.record({ year: fc.integer({ min: 1800, max: 1999 }), direct: fc.boolean(), possibly: fc.boolean() });
  fc.assert(
    fc.property(fc.array(link, { minLength: 1, maxLength: 8 }), (drawn) => {
      const years = drawn.map(({ year }) => year).toSorted((a, b) => a - b);
      const links = drawn.map(({ direct, possibly }, i) => ({
        when: when(String(years[i])),
        to: `Owner${String.fromCharCode(65 + i)}`,
        direct,
        possibly,
      }));
      const printed = formatChain(links);
      expect(printed.match(/Owner[A-H]/g)).toEqual(links.map(({ to }) => to));
      expect(printed.match(/\d{4}/g)).toEqual(years.map(String));
      expect(printed.match(/possibly/gi)?.length ?? 0).toBe(drawn.filter(({ possibly }) => possibly).length);
      const passages = links.slice(0, -1);
      expect(printed.split('; ').length - 1).toBe(passages.filter(({ direct }) => direct).length);
      expect(printed.split('. ').length - 1).toBe(passages.filter(({ direct }) => !direct).length);
    }),
  );
});

test('a way of passing on that has the name of something in JavaScript is said as it was given', () => {
  const links = ['constructor', 'toString', '__proto__'].map((how) => ({ how, to: 'An owner' }));
  for (const link of links) expect(formatChain([link])).toContain(`An owner, ${link.how}`);
});
