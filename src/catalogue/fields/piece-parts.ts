import { z } from 'zod';
import { parseDate } from '../../core/dating/parse-date.ts';
import type { DateContext } from '../../core/dating/dating.ts';
import { formatLegend, parseLegend } from '../../core/legends/parse-legend.ts';
import { parseCrop } from '../crop.ts';
import { field, id, orBlank, words } from '../schema/fields.ts';
import { row, shapeOf } from './row.ts';

export const EVIDENCE = [
  'plate-match', 'museum-number', 'document', 'ticket', 'published', 'statement', 'inference',
] as const; // prettier-ignore
const YES_NO = ['yes', 'no'] as const;
const FACES = ['obverse', 'reverse'] as const;
const PICTURES = ['photograph', 'drawing'] as const;

/** What stands on one side of a piece: `obverse`, `reverse`, `edge`. */
export const SIDE = {
  legend: row(field(parseLegend, 'legend-unreadable').optional(), {
    label: 'Legend', control: 'line', reads: 'legend', example: `"+EDW R' ANGL' DNS hYB'"`, print: formatLegend,
    says: 'The letters as they stand: `[ ]` restored, `( )` expanded, `…` lost.',
  }),
  reading: row(words.optional(), {
    label: 'Reading', control: 'line', example: 'Edwardus rex Angliae dominus Hyberniae',
    says: 'The legend written out in full.',
  }),
  design: row(words.optional(), {
    label: 'Design', control: 'line', example: 'Crowned facing bust', says: 'The picture, in a few words.',
  }),
}; // prettier-ignore

export const MAKER = {
  name: row(words, { label: 'Name', control: 'line', example: 'Davi', says: 'Who it was.' }),
  role: row(words, {
    label: 'Role', control: 'line', example: 'moneyer', says: 'moneyer, engraver, medallist, die-sinker, artist.',
  }),
  on: row(z.enum(FACES).optional(), {
    label: 'Of which side', control: 'choice', choices: FACES, example: 'reverse',
    says: 'The side that is this maker’s work, where not both are.',
  }),
}; // prettier-ignore

export const CREDIT = {
  by: row(words.optional(), { label: 'By', control: 'line', example: 'your name', says: 'Who took or drew it.' }),
  what: row(z.enum(PICTURES).optional(), {
    label: 'What it is', control: 'choice', choices: PICTURES, example: 'drawing',
    says: 'What the picture is; a photograph where nothing is said.',
  }),
  licence: row(words.optional(), {
    label: 'Licence', control: 'line', example: 'CC0-1.0', says: 'On what terms others may use it.',
  }),
  alt: row(words.optional(), {
    label: 'In words', control: 'line', example: 'A penny with the king facing',
    says: 'What it shows, for those who do not see it, in your own words.',
  }),
  crop: row(field(parseCrop, 'crop-unreadable').optional(), {
    label: 'Crop', control: 'line', example: '120 80 900 900 px',
    says: 'Where the piece lies in it: from the left, from the top, width, height; in px or %.',
  }),
}; // prettier-ignore

export function foundRows(context: DateContext) {
  return {
    area: row(words.optional(), {
      label: 'Area', control: 'line', example: 'East Riding',
      says: 'As coarse as you are willing to publish; the exact spot belongs in the ledger.',
    }),
    how: row(words.optional(), { label: 'How', control: 'line', example: 'metal detecting', says: 'How it was found.' }),
    when: row(field((text) => parseDate(text, { ...context, dateOf: 'event' }), 'date-unreadable').optional(), {
      label: 'When', control: 'line', reads: 'event', example: '1998', says: 'When it was found.',
    }),
    recorded: row(words.optional(), {
      label: 'Recorded', control: 'line', example: 'yes, with the county', says: 'Where the find is recorded.',
    }),
  }; // prettier-ignore
}

export const DIES = {
  obverse: row(words.optional(), { label: 'Obverse die', control: 'line', example: 'A1', says: 'By your own or a book’s letters.' }),
  reverse: row(words.optional(), { label: 'Reverse die', control: 'line', example: 'b3', says: 'By your own or a book’s letters.' }),
}; // prettier-ignore

/** One thing that was done to a piece made from another. */
export function doneRows(context: DateContext) {
  return {
    what: row(words, { label: 'What', control: 'line', example: 'engraved', says: 'What was done.' }),
    on: row(words.optional(), { label: 'On', control: 'line', example: 'obverse', says: 'On which side.' }),
    date: row(field((text) => parseDate(text, context), 'date-unreadable').optional(), {
      label: 'When', control: 'line', reads: 'date', example: 'c. 1810', says: 'When it was done.',
    }),
    by: row(words.optional(), { label: 'By', control: 'line', example: 'unknown', says: 'By whom.' }),
    for: row(words.optional(), { label: 'For', control: 'line', example: 'Mary Ousegate', says: 'For whom.' }),
  }; // prettier-ignore
}

/** What a piece was before it was made from another. */
export function alteredRows(context: DateContext) {
  const done = doneRows(context);
  return {
    became: row(words.optional(), {
      label: 'Now', control: 'line', example: 'Love token', says: 'What it is now, as its ticket is headed.',
    }),
    host: row(words, { label: 'Host', control: 'line', example: 'Penny of 1797', says: 'The piece it was made from.' }),
    'host-ruler': row(id.optional(), {
      label: 'Host’s ruler', control: 'name', list: 'rulers', example: 'george-iii', says: 'The ruler of the host.',
    }),
    done: row(z.array(z.strictObject(shapeOf(done))), {
      label: 'What was done', control: 'rows', parts: done, example: '[{ what: engraved, on: obverse, date: c. 1810 }]',
      says: 'Each thing done to it.',
    }),
  }; // prettier-ignore
}

/** One link of a provenance. */
export function linkRows(context: DateContext) {
  return {
    when: row(orBlank(field((text) => parseDate(text, { ...context, dateOf: 'event' }), 'date-unreadable')).optional(), {
      label: 'When', control: 'line', reads: 'event', blanks: true, example: '1934', says: 'When it passed.',
    }),
    how: row(words.optional(), {
      label: 'How', control: 'line', example: 'auction',
      says: 'auction, purchase, sale, gift, bequest, inheritance, descent, exchange, transfer, loan, find, or a word of your own.',
    }),
    from: row(words.optional(), { label: 'From', control: 'line', example: 'a fair', says: 'From whom.' }),
    to: row(words.optional(), { label: 'To', control: 'line', example: 'A. Collector', says: 'To whom.' }),
    evidence: row(z.enum(EVIDENCE).optional(), {
      label: 'Evidence', control: 'choice', choices: EVIDENCE, example: 'plate-match',
      says: 'How it is known. All document a date but a statement and an inference.',
    }),
    source: row(words.optional(), { label: 'Source', control: 'line', example: 'sale list', says: 'Where that can be read.' }),
    says: row(words.optional(), { label: 'It says', control: 'line', example: 'lot 318', says: 'The words of the source.' }),
    direct: row(z.enum(YES_NO).optional(), {
      label: 'Passed straight on', control: 'choice', choices: YES_NO, example: 'yes',
      says: '`yes` when it passed straight to the next owner.',
    }),
    possibly: row(z.enum(YES_NO).optional(), {
      label: 'Only possible', control: 'choice', choices: YES_NO, example: 'yes', says: '`yes` when the link is only possible.',
    }),
    dealer: row(z.enum(YES_NO).optional(), {
      label: 'From a dealer', control: 'choice', choices: YES_NO, example: 'yes',
      says: '`yes` when the one it came from was a dealer; the new owner, where no one is named.',
    }),
  }; // prettier-ignore
}
