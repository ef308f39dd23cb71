import { adviceFor } from './advice.ts';
import type { CaseToSet, GroupToSet, LabelStyle } from './case-to-plan.ts';
import type { Card } from './card.ts';
import { setCard, setLabel, trimmed } from './card.ts';
import type {
  Box, CaseGroup, CasePlan, Cell, Headings, LabelStand, Misfit, Size,
} from './boxes.ts'; // prettier-ignore
import { inMillimetres, LABEL_STANDS, SPACING } from './boxes.ts';
import { LETTERS_IN_LINE } from './label-checks.ts';
import { depthNotes, slideNotes, tooDeep, tooLargeForHolder } from './holder-checks.ts';
import { layOutCase } from './lay-out-case.ts';
import { widthOfText } from './typeset-text.ts';
import { lettersPerLine } from './type-size.ts';

export type LaidCell = { readonly label: Card; readonly labelBox: Box; readonly faces: readonly Box[] };
export type LaidGroup = {
  readonly heading: Card;
  readonly headingBox: Box;
  /** Null when the group has no text. */
  readonly text: { readonly card: Card; readonly box: Box } | null;
  readonly cells: readonly LaidCell[];
};
/** A case laid at true size, its groups and pieces in the order they came in. */
export type LaidCase = {
  readonly stand: LabelStand;
  readonly groups: readonly LaidGroup[];
  readonly misfits: readonly Misfit[];
  /** What the numbers lying by the pieces stand for; empty where every piece has its label beside it. */
  readonly key: readonly { readonly key: number; readonly says: string }[];
  /** What the plan could not judge, or what its kind of case asks: sentences, none of them a fault of the layout. */
  readonly notes: readonly string[];
  /** Why the labels are on a key where the keeper has not asked for one, and what would bring them back. */
  readonly whyKey: string | null;
};

/** A heading against a label. */
const HEADING_LARGER = 4 / 3;
/** The most of a case's width that a column of headings and texts takes, and the fewest letters it is of use with. */
const COLUMN = { share: 0.32, letters: 18 } as const;

/** As `planCase`, with what would make it fit, tried, after the first thing that does not. */
export function layCase(one: CaseToSet, style: LabelStyle): LaidCase {
  const laid = planCase(one, style);
  const first = laid.misfits.findIndex(isOfSize);
  if (first === -1 && laid.whyKey === null) return laid;
  const advice = adviceFor(one, style, fits);
  return {
    ...laid,
    misfits: laid.misfits.map((misfit, index) =>
      index === first ? { ...misfit, says: `${misfit.says} ${advice}`.trim() } : misfit,
    ),
    whyKey: laid.whyKey === null ? null : `${laid.whyKey} ${advice}`.trim(),
  };
}

/**
 * Sets every label, heading and text of a case and lays all of it out at true size, in the first way in which it fits: labels
 * below, then beside, then on a key; columns kept, then let go; headings in a column of their own, then above. What fits in
 * no way is said.
 */
export function planCase(one: CaseToSet, style: LabelStyle): LaidCase {
  const laid = bestPlan(one, style, style.stand === null ? LABEL_STANDS : [style.stand]);
  return {
    stand: laid.stand,
    misfits: [...laid.plan.misfits, ...tooDeep(one), ...tooLargeForHolder(one), ...tooHighLabels(one, laid, style)],
    notes: [...depthNotes(one), ...slideNotes(one)],
    whyKey:
      laid.stand === 'key' && style.stand === null
        ? 'The labels do not fit by their pieces, so the plan puts them on a key.'
        : null,
    key:
      laid.stand === 'key'
        ? one.groups.flatMap(({ pieces }) => pieces.map(({ key, label }) => ({ key, says: label })))
        : [],
    groups: laid.plan.groups.map((placed, g): LaidGroup => {
      const cards = laid.cards[g] ?? fail();
      return {
        heading: cards.heading,
        headingBox: placed.heading,
        text: cards.text === null || placed.text === null ? null : { card: cards.text, box: placed.text },
        cells: alikeInRows(
          placed.cells.map(({ faces, label }, c) => ({ label: cards.labels[c] ?? fail(), labelBox: label, faces })),
        ),
      };
    }),
  };
}

/** Labels that begin on one line end on one line too. */
function alikeInRows(cells: readonly LaidCell[]): readonly LaidCell[] {
  return cells.map((cell) => {
    const row = cells.filter(({ labelBox }) => Math.abs(labelBox.top - cell.labelBox.top) < 1e-6);
    const height = Math.max(...row.map(({ labelBox }) => labelBox.height));
    return { ...cell, label: { ...cell.label, height }, labelBox: { ...cell.labelBox, height } };
  });
}

/** Whether all of it can be laid in the case, every label by its piece unless the keeper wants a key. */
export function fits(one: CaseToSet, style: LabelStyle): boolean {
  return fitsIn(bestPlan(one, style, style.stand === null ? ['below', 'beside'] : [style.stand]).plan);
}

type Cards = { readonly heading: Card; readonly text: Card | null; readonly labels: readonly Card[] };
type Tried = { readonly stand: LabelStand; readonly plan: CasePlan; readonly cards: readonly Cards[] };

function bestPlan(one: CaseToSet, style: LabelStyle, stands: readonly LabelStand[]): Tried {
  const tried: Tried[] = [];
  // Text is set once, however many ways are tried.
  const titles = headingsFor(one, style).map((headings) => ({
    headings,
    cards: one.groups.map((group) => titleCards(group, one, style, headings)),
  }));
  const written = one.groups.map(({ pieces }) =>
    pieces.map((piece) => setLabel(piece, style.width, style.points, style.height)),
  );
  const numbers = one.groups.map(({ pieces }) =>
    pieces.map(({ key }) => trimmed(setCard(String(key), style.width, style.points))),
  );
  for (const stand of stands)
    for (const isLoose of [false, true]) {
      const here = titles.map(({ headings, cards: title }): Tried => {
        const labels = stand === 'key' ? numbers : written;
        const cards = title.map((group, g): Cards => ({ ...group, labels: labels[g] ?? fail() }));
        const groups = one.groups.map((group, g) => groupOf(group, cards[g] ?? fail()));
        return { stand, plan: layOutCase(one.inside, groups, { stand, headings, isLoose }), cards };
      });
      const [first, second] = here.filter(({ plan }) => plan.misfits.length === 0);
      if (first !== undefined) return second !== undefined && strays(second.plan) < strays(first.plan) ? second : first;
      tried.push(...here);
    }
  const fitting = tried.filter(({ plan }) => fitsIn(plan));
  const byPieces = tried.filter(({ stand }) => stand !== 'key' || stands.length === 1);
  return leastOver(fitting.length > 0 ? fitting : byPieces);
}

/** How many pieces stand alone in the last row of a group that has more than one. */
function strays({ groups }: CasePlan): number {
  return groups.filter(({ cells }) => {
    const tops = cells.map(({ label }) => label.top);
    const last = Math.max(...tops);
    return tops.some((top) => top < last) && tops.filter((top) => top === last).length === 1;
  }).length;
}

function leastOver(tried: readonly Tried[]): Tried {
  const overOf = ({ plan }: Tried): number => plan.misfits.reduce((sum, { over }) => sum + over, 0);
  return tried.reduce((best, one) => (overOf(one) < overOf(best) - 1e-6 ? one : best));
}

function isOfSize({ kind }: Misfit): boolean {
  return kind === 'wide' || kind === 'high';
}

function fitsIn({ misfits }: CasePlan): boolean {
  return !misfits.some(isOfSize);
}

function headingsFor({ inside }: CaseToSet, style: LabelStyle): readonly Headings[] {
  const column = columnOf(inside.width, style);
  return lettersPerLine(column, style.points) < COLUMN.letters ? ['above'] : ['aside', 'above'];
}

/** Wide enough for a line of letters that is followed with ease, and no wider. */
function readableWidth({ points }: LabelStyle): number {
  return widthOfText('n'.repeat(LETTERS_IN_LINE), points) * 0.8;
}

function columnOf(width: number, style: LabelStyle): number {
  return Math.min(readableWidth(style), (width - 2 * SPACING.edge) * COLUMN.share);
}

function titleCards(
  { title, text }: GroupToSet,
  { inside }: CaseToSet,
  style: LabelStyle,
  headings: Headings,
): Omit<Cards, 'labels'> {
  const room = headings === 'aside' ? columnOf(inside.width, style) : inside.width - 2 * SPACING.edge;
  return {
    heading: trimmed(setCard(title, room, style.points * HEADING_LARGER)),
    text: text === null ? null : trimmed(setCard(text, Math.min(room, readableWidth(style)), style.points)),
  };
}

function groupOf({ title, pieces, at }: GroupToSet, { heading, text, labels }: Cards): CaseGroup {
  return {
    title,
    heading: sizeOf(heading),
    text: text === null ? null : sizeOf(text),
    ...(at === undefined ? {} : { at }),
    cells: pieces.map((one, index): Cell => ({
      piece: one.piece,
      title: one.title,
      faces: one.faces,
      label: sizeOf(labels[index] ?? fail()),
      ...(one.at === undefined ? {} : { at: one.at }),
    })),
  };
}

function sizeOf({ width, height }: Card): Size {
  return { width, height };
}

/** Labels written by hand that are higher than the keeper wants labels to be. */
function tooHighLabels({ groups }: CaseToSet, { cards, stand }: Tried, style: LabelStyle): readonly Misfit[] {
  const most = style.height;
  if (most === null || stand === 'key') return [];
  return groups.flatMap(({ pieces }, g) =>
    pieces.flatMap(({ piece, title }, c): readonly Misfit[] => {
      const over = (cards[g]?.labels[c]?.height ?? 0) - most;
      if (over <= 1e-6) return [];
      const says = `The label of “${title}” is higher than ${inMillimetres(most)} by ${inMillimetres(over)}. Shorten it, or write label: { height: ${inMillimetres(most + over)} }.`;
      return [{ kind: 'label', piece, over, says }];
    }),
  );
}

function fail(): never {
  throw new Error('A plan has not as many groups or cells as its case.');
}
