import { beaded, hammered, moved, quartered, rim } from '../die.ts';
import type { Inscription, Recipes } from '../die.ts';
import type { Face } from '../draw-face.ts';
import type { Flan } from '../flan.ts';
import { longCross, threePellets } from '../motifs/crosses.ts';
import { facingBust } from '../motifs/facing.ts';
import type { FacingBust } from '../motifs/facing.ts';
import type { MetalName } from '../metals.ts';
import type { Layer, Strike } from '../relief.ts';
import { bar, crescent, dot, place, round } from '../shapes.ts';
import type { Surface } from '../surface.ts';

const inner = beaded(304);
const outer = beaded(482);

/** What is peculiar to one face of one of these pennies. */
type Own = {
  readonly strike?: Partial<Strike>;
  readonly surface?: Partial<Surface>;
  readonly flan?: Partial<Flan>;
  readonly metal?: MetalName;
  readonly bust?: FacingBust;
  readonly extra?: readonly Layer[];
  readonly pellets?: string;
  /** How this class cuts its N, where it is not round. */
  readonly letterN?: keyof typeof CUTS_OF_N;
};

const CUTS_OF_N = { roman: 'ɴ', reversed: 'И', unbarred: 'ǁ' } as const;

/** A legend with the N of its class. */
function withN(text: string, { letterN }: Own): string {
  return letterN === undefined ? text : text.replaceAll('N', CUTS_OF_N[letterN]);
}

/** The obverse settled in 1279: crowned, facing, between two rings of beads. */
export function edwardObverse(own: Own = {}): (inscription: Inscription) => Face {
  return ({ parts: [text = '+EDW R ANGL DNS hYB'], hand }) =>
    hammered(
      [
        inner,
        outer,
        ...rim(withN(text, own), 'lombardic', hand, { foot: 322, height: 124, space: 16 }),
        ...moved(facingBust(own.bust), 0, 12, 1.22),
        ...(own.extra ?? []),
      ],
      dressed(own),
    );
}

/** The reverse that goes with it, and that lasted two hundred years. */
export function longCrossReverse(own: Own = {}): (inscription: Inscription) => Face {
  return ({ parts: [text = 'CIVI TAS LON DON'], hand }) =>
    hammered(
      [
        inner,
        outer,
        ...quartered(fourWords(withN(text, own)), 'lombardic', hand, { foot: 322, height: 124 }),
        { draw: longCross(), height: 15, round: 17, mode: 'over' },
        { draw: own.pellets ?? threePellets(), height: 20, round: 36 },
        ...(own.extra ?? []),
      ],
      dressed(own),
    );
}

/** A legend in the four quarters: as it stands when it has four words, else cut into four. */
export function fourWords(text: string): string {
  const own = text.split(' ');
  // Four words of very different length would crowd one quarter: the die-cutter ran on.
  if (own.length === 4 && own.every((word) => word.length * 4 < own.join('').length * 1.5)) return text;
  const signs = Array.from(text.replace(/ /g, ''));
  const size = signs.filter((sign) => sign !== '[' && sign !== ']').length / 4;
  let [count, isFaint] = [0, false];
  const words = ['', '', '', ''];
  for (const sign of signs) {
    if (sign === '[' || sign === ']') {
      isFaint = sign === '[';
      continue;
    }
    const at = Math.min(3, Math.floor(count / size));
    words[at] = (words[at] ?? '') + (isFaint ? `[${sign}]` : sign);
    count += 1;
  }
  return words.join(' ');
}

function dressed({ strike, surface, flan, metal }: Own): Parameters<typeof hammered>[1] {
  return {
    ...(strike === undefined ? {} : { strike }),
    ...(metal === undefined ? {} : { metal }),
    surface: { wear: 0.36, ...surface },
    flan: { shape: 'round', uneven: 0.011, ...flan },
  };
}

/** An open quatrefoil in the middle of the cross: the archbishop's mark. */
export const QUATREFOIL: Layer = {
  draw: round(crescent(0, -34, 30, 30, 150, 390, 17, 0.8), 4),
  height: 15,
  mode: 'over',
  round: 8,
};

const star: string = place(round(bar(0, 0, 0, -32, 7, 7, 4), 6) + dot(0, 0, 11), 0, 208);

/** What each class shows of the crown and the drapery, as `types.csv` of the demo says of it. */
const CLASS = {
  '1c': { crown: 'first', bust: 'wedges' },
  '3b': { crown: 'fleurs', bust: 'segment' },
  '3c': { crown: 'spears', bust: 'hollowed' },
  '3e': { crown: 'spears', bust: 'hollowed', face: [1.16, 0.8], hair: 'strands' },
  '3g': { crown: 'spread', bust: 'hollowed', face: [0.9, 0.88] },
  '4a': { crown: 'spread', bust: 'hollowed', face: [0.9, 0.88] },
  '9b': { crown: 'spears', bust: 'wedges', face: [0.92, 0.9], breast: star },
} as const satisfies Readonly<Record<string, FacingBust>>;

export const EDWARDIAN: Readonly<Record<string, Recipes>> = {
  'edward-i-london-penny': {
    obverse: edwardObverse({
      letterN: 'reversed',
      bust: CLASS['1c'],
      strike: { x: 4, y: 2, turn: 2 },
      surface: { wear: 0.3 },
    }),
    reverse: longCrossReverse({ letterN: 'reversed', strike: { x: -6, y: 4, turn: -3 }, surface: { wear: 0.3 } }),
  },
  'edward-i-canterbury-penny': {
    obverse: edwardObverse({
      letterN: 'roman',
      bust: CLASS['4a'],
      strike: { x: -8, y: 6, turn: -5 },
      surface: { wear: 0.5, weak: 0.5, tone: 0.65 },
    }),
    reverse: longCrossReverse({
      letterN: 'roman',
      strike: { x: 8, y: 0, turn: 6 },
      surface: { wear: 0.5, weak: 0.5, tone: 0.65 },
    }),
  },
  'edward-i-bristol-penny': {
    obverse: edwardObverse({
      bust: CLASS['3g'],
      strike: { x: 2, y: -8, turn: 3 },
      surface: { wear: 0.34, tone: 0.7 },
      metal: 'grey',
    }),
    reverse: longCrossReverse({ strike: { x: 6, y: 8, turn: -2 }, surface: { wear: 0.34, tone: 0.7 }, metal: 'grey' }),
  },
  'edward-i-bury-penny': {
    obverse: edwardObverse({
      strike: { x: -10, y: -4, turn: 7 },
      surface: { wear: 0.48 },
      flan: { cracks: [[70, 50]] },
    }),
    reverse: longCrossReverse({ strike: { x: 4, y: 10, turn: -7 }, surface: { wear: 0.48 } }),
  },
  'edward-i-chester-penny': {
    obverse: edwardObverse({
      bust: CLASS['3g'],
      strike: { x: 0, y: 8, turn: -2 },
      surface: { wear: 0.58, scratches: 0.7 },
      flan: { holes: [[8, -338, 34]] },
    }),
    reverse: longCrossReverse({ strike: { x: 0, y: -6, turn: 4 }, surface: { wear: 0.6, scratches: 0.7 } }),
  },
  'edward-i-durham-penny': {
    obverse: edwardObverse({ bust: CLASS['3g'], strike: { x: 6, y: 0, turn: -4 }, surface: { wear: 0.34 } }),
    reverse: longCrossReverse({ strike: { x: -4, y: -8, turn: 2 }, surface: { wear: 0.36 } }),
  },
  'edward-i-lincoln-penny': {
    obverse: edwardObverse({
      bust: CLASS['3c'],
      strike: { x: 64, y: -38, turn: 9 },
      surface: { wear: 0.48 },
      flan: { across: 500, down: 486 },
    }),
    reverse: longCrossReverse({ strike: { x: -54, y: -30, turn: -8 }, surface: { wear: 0.48 } }),
  },
  'edward-i-newcastle-penny': {
    obverse: edwardObverse({ bust: CLASS['3e'], strike: { x: -4, y: 4, turn: 4 }, surface: { wear: 0.3, tone: 0.4 } }),
    reverse: longCrossReverse({ strike: { x: 4, y: -4, turn: -5 }, surface: { wear: 0.32, tone: 0.4 } }),
  },
  'york-penny-3b': {
    obverse: edwardObverse({
      letterN: 'roman',
      bust: CLASS['3b'],
      strike: { x: 6, y: -4, turn: -3 },
      surface: { wear: 0.28, tone: 0.6, weak: 0.35 },
    }),
    reverse: longCrossReverse({ strike: { x: -4, y: 6, turn: 3 }, surface: { wear: 0.28, tone: 0.6, weak: 0.35 } }),
  },
  'york-penny-9b': {
    obverse: edwardObverse({
      letterN: 'unbarred',
      strike: { x: -6, y: 2, turn: 5 },
      surface: { wear: 0.34 },
      bust: CLASS['9b'],
    }),
    reverse: longCrossReverse({ strike: { x: 10, y: 8, turn: -6 }, surface: { wear: 0.55, weak: 0.6 } }),
  },
  'york-archbishop-penny': {
    obverse: edwardObverse({ bust: CLASS['3e'], strike: { x: 2, y: 4, turn: -5 }, surface: { wear: 0.26, tone: 0.5 } }),
    reverse: longCrossReverse({
      strike: { x: 0, y: -4, turn: 4 },
      surface: { wear: 0.26, tone: 0.5 },
      extra: [QUATREFOIL],
    }),
  },
  'edward-i-counterfeit': {
    obverse: (inscription) => ({
      ...edwardObverse({
        metal: 'bronze',
        strike: { x: 8, y: 6, turn: -9, scale: 0.98 },
        bust: { hair: 'bushy' },
        surface: { wear: 0.5, weak: 0.4, grain: 0.6, pits: 0.6, tone: 0.75, dirt: 0.4 },
        flan: { uneven: 0.02, chips: [[58, 46]] },
      })(inscription),
      plate: { metal: 'billon', gone: 0.42 },
    }),
    reverse: (inscription) => ({
      ...longCrossReverse({
        metal: 'bronze',
        strike: { x: -8, y: 4, turn: 10, scale: 0.98 },
        pellets: [40, 128, 232, 318].map((turn, at) => place(threeUneven(at), 0, 0, 1, turn)).join(''),
        surface: { wear: 0.5, weak: 0.4, grain: 0.6, pits: 0.6, tone: 0.75, dirt: 0.4 },
      })(inscription),
      plate: { metal: 'billon', gone: 0.46 },
    }),
  },
};

function threeUneven(at: number): string {
  return dot(4, -112, 30 + at * 2) + dot(-40, -178, 33 - at * 2) + dot(34, -184, 28 + at);
}
