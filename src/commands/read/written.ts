import { matchMask } from '../../core/legends/match-mask.ts';
import { normalLegend } from '../../core/legends/normal-legend.ts';
import { parseLegend } from '../../core/legends/parse-legend.ts';
import { readMask } from '../../core/legends/ring.ts';
import { suggestReading } from '../../core/legends/suggest-reading.ts';
import { refuse } from '../../core/outcome.ts';
import { formatReference } from '../../core/references/format-reference.ts';
import { parseReference } from '../../core/references/parse-reference.ts';
import type { KnownWork } from './consulted.ts';
import { answer, ofOneText } from './kind.ts';
import type { Kind } from './kind.ts';

const SCRIPTS = {
  latin: 'Latin',
  greek: 'Greek',
  cyrillic: 'Cyrillic',
  arabic: 'Arabic',
  hebrew: 'Hebrew',
  runic: 'runic',
  other: 'other',
};

const ASKS_NOTHING =
  'A mask needs at least one letter or ?. Write the letters you can see, ? for one you cannot, * for any run: EBO?ACI.';

const SAYS = {
  is: 'the piece is this number',
  'cf.': 'the piece is like this number',
  'var.': 'the piece is a variety of this number',
  unlisted: 'the piece is not',
};

const legend = ofOneText('legend', ["+EDW R' ANGL' DNS hYB'", 'T[RAIANVS HA]DRIANVS'], (text) =>
  answer(parseLegend(text), (read) => {
    const reading = suggestReading(read);
    const ways = read.direction === 'rtl' ? 'right to left' : 'left to right';
    const proposal = reading === null ? '' : ` Perhaps: ${reading.text} (${reading.sources.join('; ')}).`;
    const normal = normalLegend(text);
    return {
      sentence: `In ${SCRIPTS[read.script]} letters, ${ways}; compared as ${normal}.${proposal}`,
      fields: { normal },
    };
  }),
);

const mask: Kind = {
  name: 'mask',
  args: ['mask', 'legend'],
  examples: [
    ['RACI*CIV', 'CIVI TAS EBO RACI'],
    ['LON?ON', 'CIVI TAS EBO RACI'],
  ],
  read: ([seen = '', whole = '']) => {
    const legible = parseLegend(whole);
    if (legible.ok && readMask(seen, legible.value.script).length === 0) return refuse(ASKS_NOTHING);
    return answer(legible, () => {
      const { matches, at } = matchMask(seen, whole);
      const begins = at === null ? '' : `, from letter ${at + 1} on`;
      return {
        sentence: `${seen} ${matches ? 'can' : 'cannot'} be part of ${normalLegend(whole)}${begins}.`,
        fields: { matches, at },
      };
    });
  },
};

/** The kind for references: by the works of a cabinet, or by the first word where it has no such work. */
export function referenceKind(works: readonly KnownWork[]): Kind {
  const kind = ofOneText('reference', ['cf. north 176', 'ric-3 223-5', 'north 1018 var.'], (text) => {
    const listed = parseReference(text, works);
    const loose = parseReference(text, []);
    return answer(listed.ok || !loose.ok ? listed : loose, (read) => {
      const { title } = works.find(({ id }) => id === read.work) ?? {};
      const where = title ?? `the work with the key ${read.work}${works.length > 0 ? ', which has no file here' : ''}`;
      const { work, number, relation, to } = read;
      return {
        sentence: `${formatReference(read)}: ${SAYS[relation]} in ${where}.`,
        fields: { work, number, relation, ...(to === undefined ? {} : { to }) },
      };
    });
  });
  return { ...kind, consults: 'always' };
}

/** What is written on pieces. */
export const WRITTEN: readonly Kind[] = [legend, mask];
