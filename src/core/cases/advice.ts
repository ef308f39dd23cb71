import { CARD_MARGIN } from './card.ts';
import { LETTERS_IN_LINE } from './label-checks.ts';
import { inCaseUnit } from './furniture.ts';
import type { CaseToSet, LabelStyle } from './case-to-plan.ts';
import { lettersPerLine } from './type-size.ts';

/** A change that makes everything fit, in words a keeper can follow, and the case as it then is. */
export type Remedy = { readonly says: string; readonly cases: readonly CaseToSet[]; readonly style: LabelStyle };

type Fits = (one: CaseToSet, style: LabelStyle) => boolean;

const NAMED = 3;
const WIDTHS = { least: 40, most: 170, step: 5 } as const;
/** Under this a label strains the eye of a judge bending over a case, and is not advised. Our own judgement. */
const LEAST_POINTS = 14;
/** A line of fewer letters is broken after every second word. Our own judgement. */
const LEAST_LETTERS = 18;
const LARGEST = 3000;

/** What would make everything fit, in a sentence; each of it has been tried. Empty when nothing of it helps. */
export function adviceFor(one: CaseToSet, style: LabelStyle, fits: Fits): string {
  const told = remediesFor(one, style, fits).map(({ says }) => says);
  if (told.length === 0) return '';
  const [only] = told;
  return told.length === 1 && only !== undefined
    ? `It fits if you ${only}.`
    : `It fits if you do one of these: ${told.join('; ')}.`;
}

/** The remedies that hold, gentlest first. Each has been laid out and fits. */
export function remediesFor(one: CaseToSet, style: LabelStyle, fits: Fits): readonly Remedy[] {
  const holds = ({ cases, style: other }: Remedy): boolean => cases.every((each) => fits(each, other));
  const first = (remedies: readonly Remedy[]): readonly Remedy[] => {
    const found = remedies.find(holds);
    return found === undefined ? [] : [found];
  };
  const gentle = [
    ...first(freeStand(one, style)),
    ...first(otherWidths(one, style)),
    ...first(movedGroups(one, style)),
    ...first(oneFace(one, style)),
  ].slice(0, NAMED);
  const harder = gentle.length > 0 ? [] : [...first(movedPieces(one, style)), ...first(smallerType(one, style))];
  return [...gentle, ...harder, ...largerCase(one, style, fits)];
}

function freeStand(one: CaseToSet, style: LabelStyle): readonly Remedy[] {
  if (style.stand === null) return [];
  return [
    { says: `take out stand: ${style.stand} and let the plan choose`, cases: [one], style: { ...style, stand: null } },
  ];
}

/** The width nearest to the keeper's own that helps, while its lines can still be followed. */
function otherWidths(one: CaseToSet, style: LabelStyle): readonly Remedy[] {
  const many = Math.floor((WIDTHS.most - WIDTHS.least) / WIDTHS.step) + 1;
  return Array.from({ length: many }, (_, step) => WIDTHS.least + step * WIDTHS.step)
    .filter((width) => {
      const letters = lettersPerLine(width - 2 * CARD_MARGIN, style.points);
      return width !== style.width && letters >= LEAST_LETTERS && letters <= LETTERS_IN_LINE;
    })
    .sort((a, b) => Math.abs(a - style.width) - Math.abs(b - style.width) || b - a)
    .map((width) => ({
      says: `make the labels ${width > style.width ? 'wider' : 'narrower'}, label: { width: ${String(width)} mm }`,
      cases: [one],
      style: { ...style, width },
    }));
}

/** Groups taken from the end into a further case like this one: as few as help. */
function movedGroups(one: CaseToSet, style: LabelStyle): readonly Remedy[] {
  return Array.from({ length: Math.max(0, one.groups.length - 1) }, (_, few) => {
    const [stay, go] = [one.groups.slice(0, -(few + 1)), one.groups.slice(-(few + 1))];
    const names = go.map(({ title }) => `“${title}”`).join(', ');
    return {
      says: `move ${names} to a further case of ${inCaseUnit(one.inside, one.inside.unit)}`,
      cases: [
        { ...one, groups: stay },
        { ...one, groups: go },
      ],
      style,
    };
  });
}

/** Pieces taken from the end of the last group into a further case. */
function movedPieces(one: CaseToSet, style: LabelStyle): readonly Remedy[] {
  const last = one.groups.at(-1);
  if (last === undefined || one.groups.length > 1) return [];
  return Array.from({ length: Math.max(0, last.pieces.length - 1) }, (_, few) => {
    const stay = last.pieces.slice(0, -(few + 1));
    const go = last.pieces.slice(-(few + 1));
    return {
      says: `move the last ${go.length === 1 ? 'piece' : `${String(go.length)} pieces`} to a further case like this`,
      cases: [
        { ...one, groups: [{ ...last, pieces: stay }] },
        { ...one, groups: [{ ...last, pieces: go, text: null }] },
      ],
      style,
    };
  });
}

function oneFace(one: CaseToSet, style: LabelStyle): readonly Remedy[] {
  const both = one.groups.flatMap(({ pieces }) => pieces.filter(({ faces }) => faces.length > 1));
  if (both.length === 0) return [];
  const groups = one.groups.map((group) => ({
    ...group,
    pieces: group.pieces.map((piece) => ({ ...piece, faces: piece.faces.slice(0, 1) })),
  }));
  const names = both.length > 2 ? 'every piece' : both.map(({ title }) => `“${title}”`).join(' and ');
  return [{ says: `show one face of ${names}`, cases: [{ ...one, groups }], style }];
}

function smallerType(one: CaseToSet, style: LabelStyle): readonly Remedy[] {
  return Array.from({ length: Math.max(0, Math.floor(style.points) - LEAST_POINTS) }, (_, step) => {
    const points = Math.floor(style.points) - step - (Number.isInteger(style.points) ? 1 : 0);
    return {
      says: `set the labels smaller, label: { text: ${String(points)} pt }`,
      cases: [one],
      style: { ...style, points },
    };
  }).filter(({ style: { points, width } }) => lettersPerLine(width, points) <= LETTERS_IN_LINE);
}

/** The least case that holds it: higher, or wider, or both. */
function largerCase(one: CaseToSet, style: LabelStyle, fits: Fits): readonly Remedy[] {
  const { width, height } = one.inside;
  const sized = (wide: number, high: number): CaseToSet => ({
    ...one,
    inside: { ...one.inside, width: wide, height: high },
  });
  const least = (from: number, at: (length: number) => CaseToSet): number | null => {
    let [low, high] = [Math.floor(from), LARGEST];
    if (!fits(at(high), style)) return null;
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (fits(at(middle), style)) high = middle;
      else low = middle;
    }
    return high;
  };
  const tell = (wide: number, high: number): readonly Remedy[] => [
    {
      says: `take a case of at least ${inCaseUnit({ width: wide, height: high }, one.inside.unit)} inside`,
      cases: [sized(wide, high)],
      style,
    },
  ];
  const higher = least(height, (high) => sized(width, high));
  if (higher !== null) return tell(width, higher);
  const wider = least(width, (wide) => sized(wide, LARGEST));
  if (wider === null) return [];
  const high = least(Math.min(height, LARGEST - 1), (length) => sized(wider, length));
  return high === null ? [] : tell(wider, Math.max(high, Math.ceil(height)));
}
