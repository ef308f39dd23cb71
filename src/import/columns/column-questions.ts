import { speaksPrivately } from '../../privacy/private-notes.ts';
import type { SheetCell } from '../sheets/sheet.ts';
import type { Reading } from './mapping.ts';
import { parseReading } from './parse-column-rule.ts';
import type { Choice, Question } from './question.ts';
import type { Field } from './targets.ts';

type Asked = {
  readonly asks: string;
  readonly choices: readonly (readonly [answer: string, reading: string])[];
  readonly otherwise: string;
};

/** What is asked of a column whose heading has more than one meaning; the private answer is the one taken in silence. */
const ASKED: Readonly<Record<string, Asked>> = {
  date: {
    asks: 'is it when a piece was struck, or when you bought it?',
    choices: [['struck', 'date'], ['bought (private)', 'ledger acquired']],
    otherwise: 'It is taken for the day you bought it, and stays in the ledger.',
  },
  value: {
    asks: 'is it the value on the piece, what it is worth today, or what you paid?',
    choices: [['on the piece', 'denomination'], ['worth today (private)', 'ledger value'], ['paid (private)', 'ledger cost']],
    otherwise: 'It is taken for what the piece is worth, and stays in the ledger.',
  },
  place: {
    asks: 'is it where you keep a piece, where it was found, where it was struck, or whose piece it is?',
    choices: [
      ['where I keep it (private)', 'ledger storage'], ['exact find spot (private)', 'ledger find-spot'], ['find area, to be published', 'found area'],
      ['mint', 'mint'], ['the region or country of the mint', 'mint area'], ['issuer: a state or country', 'issuer'],
    ],
    otherwise: 'It is kept private.',
  },
  authority: {
    asks: 'is it the ruler, or the realm or issuer a piece belongs to?',
    choices: [['the ruler', 'ruler'], ['the realm, which tells rulers of one name apart', 'realm'], ['the issuer, whoever ruled', 'issuer'], ['private', 'ledger']],
    otherwise: 'It stays in the ledger under its own heading, and no piece has a ruler.',
  },
  country: {
    asks: 'is it the country or realm a piece belongs to, or something of your own?',
    choices: [['the realm, which tells rulers of one name apart', 'realm'], ['where the mint lies, which tells places of one name apart', 'mint area'], ['the issuer, whoever ruled', 'issuer'], ['private', 'ledger']],
    otherwise: 'It stays in the ledger under its own heading, and rulers of one name are distinguished by their dates alone.',
  },
  number: {
    asks: 'is it your inventory number, or a number in a catalogue?',
    choices: [['inventory number', 'number'], ['reference with its book', 'references'], ['neither (private)', 'ledger']],
    otherwise: 'It stays in the ledger under its own heading.',
  },
  provenance: {
    asks: 'may it be published as the history of the piece, or is it yours alone?',
    choices: [['publish it', 'provenance'], ['private: from whom I have it', 'ledger seller'], ['private', 'ledger']],
    otherwise: 'It stays in the ledger under its own heading.',
  },
  description: {
    asks: 'may it be published, and as what?',
    choices: [['as the title', 'title'], ['as the story', 'story'], ['it is the denomination', 'denomination'], ['the obverse', 'obverse design'], ['the legend of the obverse', 'obverse legend'], ['private', 'ledger']],
    otherwise: 'It stays in the ledger under its own heading.',
  },
  type: {
    asks: 'is it the type a piece is a specimen of, by its id in types/, or a description?',
    choices: [['the id of a type in types/', 'type'], ['as the title', 'title'], ['as the story', 'story'], ['it is the denomination', 'denomination'], ['the obverse', 'obverse design'], ['private', 'ledger']],
    otherwise: 'It stays in the ledger under its own heading.',
  },
  ruler: { asks: 'does it hold the rulers, whose names are in your lists?', choices: [['rulers', 'ruler'], ['no (private)', 'ledger']], otherwise: 'It stays in the ledger.' },
  mint: { asks: 'does it hold the mints, whose names are in your lists?', choices: [['mints', 'mint'], ['no (private)', 'ledger']], otherwise: 'It stays in the ledger.' },
  denomination: { asks: 'does it hold the denominations in your lists?', choices: [['denominations', 'denomination'], ['no (private)', 'ledger']], otherwise: 'It stays in the ledger.' },
}; // prettier-ignore

export function fieldQuestion(doubt: string, key: string, example: string, currency: string | null): Question | null {
  const asked = ASKED[doubt];
  if (asked === undefined) return null;
  return {
    id: `column ${key}`,
    asks: `The column "${key}": ${asked.asks}`,
    choices: asked.choices.flatMap(([says, reading]): readonly Choice[] => {
      const read = parseReading(reading);
      if (!read.ok) return [];
      return [
        { answer: says, change: { columns: [{ heading: key, readings: [withCurrency(read.value, currency)] }] } },
      ];
    }),
    example,
    otherwise: asked.otherwise,
  };
}

/** Asks of a column headed by the short name of a book, `KM#` or `RIC`, whether its numbers are that book's. */
export function bookQuestion(key: string, book: string, example: string): Question {
  const ways: readonly (readonly [string, string])[] = [
    [`numbers in the book ${book}`, `reference to ${book}`],
    ['references that name their books themselves', 'references'],
    ['the number of a certificate (private)', 'ledger certificate'],
    ['something else (private)', 'ledger'],
  ];
  return {
    id: `column ${key}`,
    asks: `The column "${key}": does it hold numbers in a book?`,
    choices: ways.flatMap(([says, reading]): readonly Choice[] => {
      const read = parseReading(reading);
      return read.ok ? [{ answer: says, change: { columns: [{ heading: key, readings: [read.value] }] } }] : [];
    }),
    example,
    otherwise: 'It stays in the ledger under its own heading.',
  };
}

function withCurrency(reading: Reading, currency: string | null): Reading {
  const isSum = reading.kind === 'ledger' && (reading.column === 'cost' || reading.column === 'value');
  return isSum && currency !== null && /^[A-Z]{3}$/.test(currency) ? { ...reading, currency } : reading;
}

/** Facts in any words, in which a keeper's notes may stand and would be published as they are. */
const IN_ANY_WORDS: ReadonlySet<string> = new Set([
  'title', 'issuer', 'struck-for', 'problem', 'peculiarities', 'treatments', 'made', 'shape', 'dated', 'tags', 'found area', 'ruler', 'mint',
]); // prettier-ignore

/** Asks once of a column that would be published and speaks here and there as private notes do; null where none of it does. */
export function privateQuestion(field: Field, key: string, cells: readonly SheetCell[]): Question | null {
  if (!IN_ANY_WORDS.has(field)) return null;
  const speaking = cells.filter(({ text }) => speaksPrivately(text) !== null);
  const [first] = speaking;
  if (first === undefined) return null;
  const count = speaking.length === 1 ? 'one of its cells speaks' : `${speaking.length} of its cells speak`;
  return {
    id: `column ${key}`,
    asks: `The column "${key}" would be published as ${field}, and ${count} of ${speaksPrivately(first.text) ?? ''}. May it be?`,
    choices: [
      { answer: `yes, publish it as ${field}`, change: { columns: [{ heading: key, readings: [{ kind: 'field', field }] }] } },
    ],
    example: first.text,
    otherwise: 'It stays in the ledger under its own heading.',
  };
} // prettier-ignore
