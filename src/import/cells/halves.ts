import type { UnreadCell } from '../plan/draft.ts';
import { readSpan } from './date-cell.ts';
import { readMeasure } from './measure-cell.ts';
import { readReferences, readReferenceTo } from './reference-cell.ts';
import type { Half, Said } from './cell-result.ts';
import { gather } from './gather.ts';
import type { Gathered, SaidBy } from './gather.ts';
import type { Settings } from '../columns/mapping.ts';

const PAIRS: readonly { readonly halves: readonly [Half, Half]; readonly field: string }[] = [
  { halves: ['date from', 'date to'], field: 'date' },
  { halves: ['height', 'width'], field: 'diameter' },
  { halves: ['reference work', 'reference number'], field: 'references' },
];

/** The field that each half belongs to. */
export const FIELD_OF_HALF: Readonly<Record<Half, string>> = {
  'date from': 'date',
  'date to': 'date',
  height: 'diameter',
  width: 'diameter',
  'reference work': 'references',
  'reference number': 'references',
};

/** The facts that two columns make together: a first and a last year, height and width, a book and a number in it. */
export function joinHalves(row: number, gathered: Gathered, settings: Settings): Gathered {
  return PAIRS.reduce((whole, { halves: [one, other], field }) => {
    const [first, second] = [whole.halves.get(one) ?? null, whole.halves.get(other) ?? null];
    const by = first ?? second;
    if (by === null) return whole;
    const text = [first, second].flatMap((half) => (half === null ? [] : [half.text])).join(' / ');
    const heading = [first, second].flatMap((half) => (half === null ? [] : [half.heading])).join(' + ');
    const said = together(one, first, second, settings);
    return add(
      row,
      whole,
      said.map((each) => ({ said: each, heading, text })),
      field,
    );
  }, gathered);
}

function together(half: Half, first: SaidBy | null, second: SaidBy | null, settings: Settings): readonly Said[] {
  const cell = (by: SaidBy | null) => (by === null ? null : { text: textOf(by), settings });
  const [a, b] = [cell(first), cell(second)];
  if (half === 'date from') return readSpan(a, b, 'date');
  const words = [a, b].flatMap((each) => (each === null ? [] : [each.text]));
  if (half === 'reference work')
    return a === null || b === null ? readReferences(words.join(' ')) : readReferenceTo(a.text, b.text);
  return readMeasure({ text: words.join(' x '), settings, unit: 'mm' }, 'diameter');
}

/** What the two make, beside what the row says already. */
function add(row: number, whole: Gathered, saids: readonly SaidBy[], field: string): Gathered {
  const held: readonly SaidBy[] = whole.facts.has(field)
    ? [{ said: { kind: 'fact', field, value: whole.facts.get(field) ?? '' }, heading: '', text: '' }]
    : [];
  const more = gather(row, [...held, ...saids]);
  const references = [...(whole.names.references ?? []), ...(more.names.references ?? [])];
  return {
    ...whole,
    facts: new Map([...whole.facts, ...more.facts]),
    names: references.length === 0 ? whole.names : { ...whole.names, references },
    unread: [...whole.unread, ...more.unread] satisfies readonly UnreadCell[],
  };
}

function textOf({ said, text }: SaidBy): string {
  return said.kind === 'half' ? said.text : text;
}
