import { matchMask, readMask } from '../../core/legends/match-mask.ts';
import { normalLegend } from '../../core/legends/normal-legend.ts';
import { parseLegend } from '../../core/legends/parse-legend.ts';
import { suggestReading } from '../../core/legends/suggest-reading.ts';
import { refuse } from '../../core/outcome.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import { formatReference } from '../../core/references/reference.ts';
import type { Reference, Relation } from '../../core/references/reference.ts';
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

const SAYS: Readonly<Record<Relation, string>> = {
  is: 'the piece is this number',
  'this coin': 'the piece is the very one described under this number',
  'cf.': 'the piece is like this number',
  'var.': 'the piece is a variety of this number',
  'corr.': 'the piece is this number, which it corrects',
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
  const kind = ofOneText('reference', ['cf. north 176', 'RIC II.1² 123?', 'north 1018, spink-2 1385'], (text) => {
    const listed = parseReferences(text, { works });
    const loose = parseReferences(text);
    return answer(listed.ok || !loose.ok ? listed : loose, (all) => {
      const [first] = all.map(fieldsOf);
      return {
        sentence: all.map((read) => sentenceOf(read, works)).join(' '),
        fields: all.length === 1 ? { ...first } : { ...first, references: all.map(fieldsOf) },
      };
    });
  });
  return { ...kind, consults: 'always' };
}

function fieldsOf({ text: _text, named: _named, ...fields }: Reference): Readonly<Record<string, unknown>> {
  return fields;
}

function sentenceOf(read: Reference, works: readonly KnownWork[]): string {
  const { title } = works.find(({ id }) => id === read.work) ?? {};
  const where = title ?? `the work with the key ${read.work}${works.length > 0 ? ', which has no file here' : ''}`;
  return `${formatReference(read)}: ${read.doubtful === true ? 'perhaps ' : ''}${SAYS[read.relation]} in ${where}.`;
}

/** What is written on pieces. */
export const WRITTEN: readonly Kind[] = [legend, mask];
